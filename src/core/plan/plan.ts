/**
 * Today's drill on the way to the class date: the facts whose asking today buys the most recall at class, drawn
 * from a plan over all days left that is made anew each day. Pure: the same request gives the same plan.
 * docs/spec/plan.md.
 */
import type { FactId } from '../questions/question.ts';
import { randomFrom, seedOf } from '../random.ts';
import { drawToday } from './draw.ts';
import { type GridSize, PLANNING } from './grid.ts';
import type { Outcome, PlanFact, Problem } from './problem.ts';
import { type PlanRequest, type Solved, solve } from './solve.ts';

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
  /** Facts never asked so far that the days left have no room for, the first to be dropped last. */
  readonly leftOut: readonly FactId[];
  /** Price per second by local day: what one more second would be worth, in facts times weight. */
  readonly prices: ReadonlyMap<number, number>;
}

function leftOutOf(facts: readonly PlanFact[], problem: Problem, { flow, touched }: Outcome): FactId[] {
  const { seconds, attendance } = problem.calendar;
  const total = (of: ArrayLike<number>) => attendance.reduce((sum, chance, u) => sum + chance * of[u]!, 0);
  // Seconds wanted beyond those there are (prices are settled to a tolerance) ask nobody.
  const over = Math.max(1, total(flow.seconds) / Math.max(1, total(seconds)));
  const out: number[] = [];
  for (const [g, { memory, count }] of problem.asks.groups.entries()) {
    if (memory) continue;
    const dropped = Math.round(count * (1 - touched[g]! / (touched[g]! > 0.999 ? 1 : over)));
    out.push(...problem.members[g]!.slice(count - dropped));
  }
  return out.sort((a, b) => facts[b]!.weight - facts[a]!.weight || a - b).map((place) => facts[place]!.id);
}

/** The plan for today. Without a practice day left, nothing is drawn and the forecast is what stays by itself. */
export function planToday(request: PlanRequest, size: GridSize = PLANNING): Plan {
  return planFrom(request, solve(request, size));
}

/** The same from the request solved. */
export function planFrom(request: PlanRequest, solved: Solved): Plan {
  const { today, facts } = request;
  const { problem, prices, pricesByDay, width } = solved;
  const { flow } = solved.outcome;
  const share = (amount: number) => (problem.weight > 0 ? amount / problem.weight : 0);
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
    forecast: Math.min(1, share(flow.recalled - unpaid)),
    leftOut: leftOutOf(facts, problem, solved.outcome),
    prices: pricesByDay,
  };
}
