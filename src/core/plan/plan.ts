/**
 * Today's drill on the way to the class date: the facts whose asking today buys the most recall at class, drawn
 * from a plan over all days left that is made anew each day. Pure: the same request gives the same plan.
 * docs/spec/plan.md.
 */
import type { FactId } from '../questions/question.ts';
import { randomFrom, seedOf } from '../random.ts';
import { calendarOf, type PracticeDay } from './calendar.ts';
import { drawToday } from './draw.ts';
import { type GridSize, PLANNING } from './grid.ts';
import { type Effort, solvePrices, USUAL_EFFORT, widthAt } from './prices.ts';
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

function startFrom(request: PlanRequest, days: readonly number[]): Float64Array | null {
  const known = [...(request.prices ?? [])].sort((a, b) => a[0] - b[0]);
  if (known.length === 0) return null;
  return Float64Array.from(days, (offset) => {
    const day = request.today + offset;
    const nearest = known.reduce((best, entry) =>
      Math.abs(entry[0] - day) < Math.abs(best[0] - day) ? entry : best,
    );
    return nearest[1];
  });
}

/** The plan for today. Without a practice day left, nothing is drawn and the forecast is what stays by itself. */
export function planToday(request: PlanRequest, size: GridSize = PLANNING): Plan {
  const { w, today, classDay, facts } = request;
  const calendar = calendarOf(request.practice, today, classDay);
  const problem = problemOf(w, facts, calendar, today, size);
  const share = (amount: number) => (problem.weight > 0 ? amount / problem.weight : 0);
  const prices =
    calendar.days.length > 0 && facts.length > 0
      ? solvePrices(problem, startFrom(request, calendar.days), request.effort ?? USUAL_EFFORT)
      : new Float64Array(calendar.days.length);
  const safety = facts.some(({ rightDays }) => rightDays);
  const bare = safety ? problemOf(w, withoutRightDays(facts), calendar, today, size) : problem;
  const bound = share(boundAt(bare, prices, 0));
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
    prices: new Map(calendar.days.map((offset, u) => [today + offset, prices[u]!])),
  };
}
