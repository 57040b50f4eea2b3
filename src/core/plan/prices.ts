/**
 * Finds the price of a second on each practice day: the prices at which the facts, each planning for itself,
 * together want no more than the seconds there are. They minimise the Lagrangian; prices move as logarithms, so
 * they stay positive, and on a problem rounded off over `width`, so that it is smooth.
 */
import { minimise } from './minimise.ts';
import { evaluate, type Problem } from './problem.ts';

/** Rounding-off as a share of what an ask costs at the middle day's price, and its least, in facts. */
const RELATIVE_WIDTH = 0.015;
export const LEAST_WIDTH = 1e-4;

/** Rounding-off while the prices are still unknown, in facts. */
const FIRST_WIDTHS = [0.02, 0.005];
const LEAST_PRICE = 1e-9;

/** Seconds wanted may miss the seconds there are by this share, each day weighed by its price, if nothing else is said. */
const TOLERANCE = 0.01;

/** By how many times its own share a price that rises lowers the seconds wanted, roughly, at the final width. */
const ELASTICITY = 30;

/**
 * Evaluations at most: at each of the first widths and at the final one, when no prices are given; and from
 * given prices. What a day's plan leaves unsettled, the next day's takes further.
 */
export interface Effort {
  readonly first: number;
  readonly again: number;
  readonly tolerance?: number;
}

/** An evaluation takes time as the square of the days. */
const MANY_DAYS = 28;
export const usualEffort = (days: number): Effort => ({ first: 30, again: days > MANY_DAYS ? 8 : 24 });
/** For what is told, not asked for at once. */
export const PATIENT: Effort = { first: 30, again: 40, tolerance: 0.003 };

const meanCost = ({ asks }: Problem): number => {
  let [sum, count] = [0, 0];
  for (const group of asks.groups) {
    sum += group.count * (0.75 * group.rightCost + 0.25 * group.wrongCost);
    count += group.count;
  }
  return count > 0 ? sum / count : 1;
};

/** How far decisions are rounded off at these prices. */
function widthAt(problem: Problem, prices: Float64Array): number {
  const middle = prices.toSorted()[prices.length >> 1] ?? 0;
  return Math.min(FIRST_WIDTHS[0]!, Math.max(LEAST_WIDTH, RELATIVE_WIDTH * middle * meanCost(problem)));
}

function improve(
  problem: Problem,
  prices: Float64Array,
  width: number,
  evaluations: number,
  tolerance: number,
  near = false,
): Float64Array {
  const { seconds, attendance } = problem.calendar;
  const scale = 1 / Math.max(problem.weight, 1e-12);
  const at = (logs: Float64Array) => {
    const tried = logs.map(Math.exp);
    const { bound, flow } = evaluate(problem, tried, width);
    return {
      value: bound * scale,
      gradient: tried.map((price, u) => price * attendance[u]! * (seconds[u]! - flow.seconds[u]!) * scale),
    };
  };
  const enough = (gradient: Float64Array, logs: Float64Array) => {
    let [missed, total] = [0, 0];
    for (const [u, slope] of gradient.entries()) {
      missed += Math.abs(slope);
      total += Math.exp(logs[u]!) * attendance[u]! * seconds[u]! * scale;
    }
    return missed < tolerance * total;
  };
  const logs = prices.map((price) => Math.log(Math.max(price, LEAST_PRICE)));
  const inverse = prices.map(
    (price, u) =>
      1 / (ELASTICITY * scale * Math.max(price, LEAST_PRICE) * Math.max(1e-3, attendance[u]! * seconds[u]!)),
  );
  return minimise(at, logs, { evaluations, enough, ...(near && { inverse }) }).map((log) =>
    Math.max(LEAST_PRICE, Math.exp(log)),
  );
}

export interface Settled {
  /** Per second, for each practice day. */
  readonly prices: Float64Array;
  /** How far decisions were rounded off when the prices were found: at another width they do not balance. */
  readonly width: number;
}

/** Prices for the practice days, from `start` when a solved neighbour is known. */
export function solvePrices(
  problem: Problem,
  start: Float64Array | null,
  { first, again, tolerance = TOLERANCE }: Effort = usualEffort(problem.calendar.days.length),
): Settled {
  if (start) {
    const width = widthAt(problem, start);
    return { prices: improve(problem, start, width, again, tolerance, true), width };
  }
  let prices: Float64Array = new Float64Array(problem.calendar.days.length).fill(0.03 / meanCost(problem));
  for (const width of FIRST_WIDTHS) prices = improve(problem, prices, width, first, 5 * TOLERANCE);
  // The final width depends on the prices.
  prices = improve(problem, prices, widthAt(problem, prices), first, tolerance, true);
  const width = widthAt(problem, prices);
  return { prices: improve(problem, prices, width, first, tolerance, true), width };
}

/** Prices for a bound that is shown: rounding-off goes down in steps until it no longer matters. */
export function tightenPrices(problem: Problem, prices: Float64Array, evaluations: number): Float64Array {
  let tight = prices;
  for (let width = widthAt(problem, prices) / 3; width > 1e-5; width /= 3)
    tight = improve(problem, tight, width, evaluations, TOLERANCE / 10, true);
  return tight;
}
