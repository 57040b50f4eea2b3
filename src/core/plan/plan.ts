/**
 * Today's drill on the way to the class date: the facts whose asking today buys the most recall at class, drawn
 * from a plan over all days left that is made anew each day. Pure: the same request gives the same plan.
 * docs/spec/plan.md.
 */
import type { FactId } from '../questions/question.ts';
import { randomFrom, seedOf } from '../random.ts';
import { calendarOf, MOST_BOUND_DAYS, type PracticeDay } from './calendar.ts';
import { drawToday } from './draw.ts';
import { type GridSize, PLANNING } from './grid.ts';
import { type Effort, solvePrices, usualEffort, widthAt } from './prices.ts';
import { boundAt, evaluate, type PlanFact, type Problem, problemOf } from './problem.ts';

export interface PlanRequest {
  /** The 21 memory parameters. */
  readonly w: readonly number[];
  readonly today: number;
  /** Local day of the class; practice ends the day before. */
  readonly classDay: number;
  readonly practice: readonly PracticeDay[];
  /** In the order they are to be met where nothing else decides. */
  readonly facts: readonly PlanFact[];
  readonly seed: number;
  /** Prices of an earlier plan for the same class, to start from. */
  readonly prices?: ReadonlyMap<number, number>;
  readonly effort?: Effort;
}

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

function leftOutOf(facts: readonly PlanFact[], problem: Problem, touched: Float64Array): PlanFact[] {
  const out: PlanFact[] = [];
  for (const [g, { memory, count }] of problem.asks.groups.entries()) {
    if (memory) continue;
    const dropped = Math.round(count * (1 - touched[g]!));
    out.push(...problem.members[g]!.slice(count - dropped).map((place) => facts[place]!));
  }
  return out.sort((a, b) => b.weight - a.weight || facts.indexOf(a) - facts.indexOf(b));
}

/** A price for each day: that of the nearest day with one. */
function pricesOn(known: ReadonlyMap<number, number>, days: readonly number[]): Float64Array {
  const entries = [...known];
  return Float64Array.from(
    days,
    (day) =>
      entries.reduce((best, entry) => (Math.abs(entry[0] - day) < Math.abs(best[0] - day) ? entry : best))[1],
  );
}

/** The bound at the plan's prices: of recall alone, and with every practice day by itself. */
function boundOf(
  request: PlanRequest,
  problem: Problem,
  prices: ReadonlyMap<number, number>,
  size: GridSize,
): number {
  const { w, today, classDay, facts, practice } = request;
  const bonus = facts.some(({ rightDays }) => rightDays);
  const calendar = calendarOf(practice, today, classDay, MOST_BOUND_DAYS);
  const whole = calendar.days.length === problem.calendar.days.length;
  const bare = bonus || !whole ? problemOf(w, withoutRightDays(facts), calendar, today, size) : problem;
  const days = calendar.days.map((offset) => today + offset);
  return boundAt(bare, prices.size > 0 ? pricesOn(prices, days) : new Float64Array(0), 0);
}

/** The plan for today. Without a practice day left, nothing is drawn and the forecast is what stays by itself. */
export function planToday(request: PlanRequest, size: GridSize = PLANNING): Plan {
  const { w, today, classDay, facts } = request;
  const calendar = calendarOf(request.practice, today, classDay);
  const problem = problemOf(w, facts, calendar, today, size);
  const share = (amount: number) => (problem.weight > 0 ? amount / problem.weight : 0);
  const days = calendar.days.map((offset) => today + offset);
  const start = request.prices && request.prices.size > 0 ? pricesOn(request.prices, days) : null;
  const effort = request.effort ?? usualEffort(days.length);
  const prices =
    days.length > 0 && facts.length > 0 ? solvePrices(problem, start, effort) : new Float64Array(days.length);
  const pricesByDay = new Map(days.map((day, u) => [day, prices[u]!]));
  const bound = share(boundOf(request, problem, pricesByDay, size));
  const width = widthAt(problem, prices);
  const { flow, touched } = evaluate(problem, prices, width);
  const random = randomFrom(seedOf('plan', request.seed, today));
  const draw =
    calendar.days[0] === 0 ? drawToday(problem, prices, width, random) : { drawn: [], reserve: [], price: 0 };
  const planned = ({ place, seconds, recall }: (typeof draw.drawn)[number]): PlannedFact => ({
    fact: facts[place]!.id,
    seconds,
    recall,
    first: facts[place]!.memory === null,
  });
  return {
    facts: draw.drawn.map(planned),
    reserve: draw.reserve.map(planned),
    forecast: share(flow.recalled),
    bound,
    leftOut: leftOutOf(facts, problem, touched).map(({ id }) => id),
    prices: pricesByDay,
  };
}
