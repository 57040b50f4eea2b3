/**
 * Today's drill on the way to the class date: the facts whose asking today buys the most recall at class, drawn
 * from a plan over all days left that is made anew each day. Pure: the same request gives the same plan.
 * docs/spec/plan.md.
 */
import type { FactId } from '../questions/question.ts';
import { randomFrom, seedOf } from '../random.ts';
import { calendarOf, MOST_BOUND_DAYS } from './calendar.ts';
import { drawToday } from './draw.ts';
import { type GridSize, PLANNING } from './grid.ts';
import { solvePrices } from './prices.ts';
import { boundAt, evaluate, type Outcome, type PlanFact, type Problem, problemOf } from './problem.ts';
import { type PlanRequest, pricesOn, type Solved, solve } from './solve.ts';

export interface PlannedFact {
  readonly fact: FactId;
  /** Expected seconds, and chance that it is known today. */
  readonly seconds: number;
  readonly recall: number;
  readonly first: boolean;
}

export interface Plan {
  /** What to ask today, most worth per second first. */
  readonly facts: readonly PlannedFact[];
  /** What to go on with when time is left. */
  readonly reserve: readonly PlannedFact[];
  /** Expected share of the facts' weight recalled at class when the plan is kept. */
  readonly forecast: number;
  /** No way of practising in this time reaches a higher share, by the memory model. */
  readonly bound: number;
  /** Facts never asked so far that the days left have no room for, the first to be dropped last. */
  readonly leftOut: readonly FactId[];
  /** Price per second by local day: what one more second would be worth, in facts times weight. */
  readonly prices: ReadonlyMap<number, number>;
}

/** The problem without bonuses, so that its Lagrangian speaks of recall alone. */
const withoutRightDays = (facts: readonly PlanFact[]) => facts.map(({ rightDays, ...fact }) => fact);

function leftOutOf(facts: readonly PlanFact[], problem: Problem, { flow, touched }: Outcome): PlanFact[] {
  const { seconds, attendance } = problem.calendar;
  const total = (of: ArrayLike<number>) => attendance.reduce((sum, chance, u) => sum + chance * of[u]!, 0);
  // Seconds wanted beyond those there are (prices are settled to a tolerance) ask nobody.
  const over = Math.max(1, total(flow.seconds) / Math.max(1, total(seconds)));
  const out: PlanFact[] = [];
  for (const [g, { memory, count }] of problem.asks.groups.entries()) {
    if (memory) continue;
    const dropped = Math.round(count * (1 - touched[g]! / (touched[g]! > 0.999 ? 1 : over)));
    out.push(...problem.members[g]!.slice(count - dropped).map((place) => facts[place]!));
  }
  return out.sort((a, b) => b.weight - a.weight || facts.indexOf(a) - facts.indexOf(b));
}

/** Evaluations to find prices for recall alone, from those of a plan that has other wishes as well. */
const BARE_EFFORT = { first: 0, again: 8 };

/** The bound at the plan's prices: of recall alone, and with every practice day by itself. */
function boundOf(request: PlanRequest, solved: Solved, size: GridSize): number {
  const { problem, prices: settled, pricesByDay, width } = solved;
  const { w, today, classDay, practice } = request;
  if (pricesByDay.size === 0) return boundAt(problem, new Float64Array(0), 0);
  const wishes = request.facts.some(({ rightDays }) => rightDays);
  const facts = wishes ? withoutRightDays(request.facts) : request.facts;
  let prices = pricesByDay;
  if (wishes) {
    const bare = problemOf(w, facts, calendarOf(practice, today, classDay), today, size);
    const found = solvePrices(bare, Float64Array.from(prices.values()), BARE_EFFORT);
    prices = new Map([...prices.keys()].map((day, u) => [day, found[u]!]));
  }
  const calendar = calendarOf(practice, today, classDay, MOST_BOUND_DAYS);
  const whole = calendar.days.length === problem.calendar.days.length;
  const all = whole && !wishes ? problem : problemOf(w, facts, calendar, today, size);
  const days = calendar.days.map((offset) => today + offset);
  const bound = Math.min(problem.weight, boundAt(all, pricesOn(prices, days), 0));
  // What is drawn and told stands on the problem as it was solved, not as the bound left it.
  if (all === problem) evaluate(problem, settled, width);
  return bound;
}

/** The plan for today. Without a practice day left, nothing is drawn and the forecast is what stays by itself. */
export function planToday(request: PlanRequest, size: GridSize = PLANNING): Plan {
  return planFrom(request, solve(request, size), size);
}

/** The same from the request solved at this size. */
export function planFrom(request: PlanRequest, solved: Solved, size: GridSize = PLANNING): Plan {
  const { today, facts } = request;
  const { problem, prices, pricesByDay, width } = solved;
  const { flow } = solved.outcome;
  const share = (amount: number) => (problem.weight > 0 ? amount / problem.weight : 0);
  const bound = share(boundOf(request, solved, size));
  // Prices are settled to a tolerance: seconds wanted beyond those there are must not buy recall in the forecast.
  const { seconds, attendance } = problem.calendar;
  const unpaid = prices.reduce(
    (sum, price, u) => sum + price * attendance[u]! * (flow.seconds[u]! - seconds[u]!),
    0,
  );
  const random = randomFrom(seedOf('plan', request.seed, today));
  const draw =
    problem.calendar.days[0] === 0
      ? drawToday(problem, prices, width, random)
      : { drawn: [], reserve: [], price: 0 };
  const planned = ({ place, seconds, recall }: (typeof draw.drawn)[number]): PlannedFact => ({
    fact: facts[place]!.id,
    seconds,
    recall,
    first: facts[place]!.memory === null,
  });
  return {
    facts: draw.drawn.map(planned),
    reserve: draw.reserve.map(planned),
    forecast: Math.min(bound, share(flow.recalled - unpaid)),
    bound,
    leftOut: leftOutOf(facts, problem, solved.outcome).map(({ id }) => id),
    prices: pricesByDay,
  };
}
