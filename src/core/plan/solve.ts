/** A request solved: prices for the days left, and what all facts then do. */
import { calendarOf, type PracticeDay } from './calendar.ts';
import { type GridSize, PLANNING } from './grid.ts';
import { type Effort, LEAST_WIDTH, type Settled, solvePrices, usualEffort } from './prices.ts';
import { evaluate, type Outcome, type PlanFact, type Problem, problemOf } from './problem.ts';

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

export interface Solved {
  readonly problem: Problem;
  readonly prices: Float64Array;
  readonly pricesByDay: ReadonlyMap<number, number>;
  /** How far decisions are rounded off. */
  readonly width: number;
  readonly outcome: Outcome;
}

/** A price for each day: that of the nearest day with one. */
export function pricesOn(known: ReadonlyMap<number, number>, days: readonly number[]): Float64Array {
  const entries = [...known];
  return Float64Array.from(
    days,
    (day) =>
      entries.reduce((best, entry) => (Math.abs(entry[0] - day) < Math.abs(best[0] - day) ? entry : best))[1],
  );
}

const nothingToPrice = (days: number): Settled => ({ prices: new Float64Array(days), width: LEAST_WIDTH });

export function solve(request: PlanRequest, size: GridSize = PLANNING): Solved {
  const { w, today, classDay, facts } = request;
  const calendar = calendarOf(request.practice, today, classDay);
  const problem = problemOf(w, facts, calendar, today, size);
  const days = calendar.days.map((offset) => today + offset);
  const start = request.prices && request.prices.size > 0 ? pricesOn(request.prices, days) : null;
  const effort = request.effort ?? usualEffort(days.length);
  const { prices, width } =
    days.length > 0 && facts.length > 0 ? solvePrices(problem, start, effort) : nothingToPrice(days.length);
  return {
    problem,
    prices,
    pricesByDay: new Map(days.map((day, u) => [day, prices[u]!])),
    width,
    outcome: evaluate(problem, prices, width),
  };
}
