/**
 * Finds the price of a second on each practice day: the prices at which the facts, each planning for itself,
 * together want no more than the seconds there are. They minimise the Lagrangian; prices move as logarithms, so
 * they stay positive, and on a problem rounded off over `width`, so that it is smooth.
 */
import { minimise } from './minimise.ts';
import { evaluate, type Problem } from './problem.ts';

/** Rounding-off as a share of what an ask costs at the middle day's price, and its least, in facts. */
const RELATIVE_WIDTH = 0.015;
const LEAST_WIDTH = 1e-4;

/** Rounding-off while the prices are still unknown, in facts. */
const FIRST_WIDTHS = [0.02, 0.005];
const LEAST_PRICE = 1e-9;

/** Seconds wanted may miss the seconds there are by this share, each day weighed by its price. */
const TOLERANCE = 0.01;

/**
 * Evaluations at most: at each of the first widths and at the final one, when no prices are given; and from
 * given prices. What a day's plan leaves unsettled, the next day's takes further.
 */
export interface Effort {
  readonly first: number;
  readonly again: number;
}

/** An evaluation takes time as the square of the days. */
const MANY_DAYS = 30;
export const usualEffort = (days: number): Effort => ({ first: 40, again: days > MANY_DAYS ? 12 : 40 });

/** The final width depends on the prices, so it is settled in rounds. */
const ROUNDS = 2;

const meanCost = ({ asks }: Problem): number => {
  let [sum, count] = [0, 0];
  for (const group of asks.groups) {
    sum += group.count * (0.75 * group.rightCost + 0.25 * group.wrongCost);
    count += group.count;
  }
  return count > 0 ? sum / count : 1;
};

/** How far decisions are rounded off at these prices. */
export function widthAt(problem: Problem, prices: Float64Array): number {
  const middle = prices.toSorted()[prices.length >> 1] ?? 0;
  return Math.min(FIRST_WIDTHS[0]!, Math.max(LEAST_WIDTH, RELATIVE_WIDTH * middle * meanCost(problem)));
}

function improve(
  problem: Problem,
  prices: Float64Array,
  width: number,
  evaluations: number,
  tolerance: number,
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
  return minimise(at, logs, evaluations, enough).map((log) => Math.max(LEAST_PRICE, Math.exp(log)));
}

/** Prices per second for the practice days, from `start` when a solved neighbour is known. */
export function solvePrices(
  problem: Problem,
  start: Float64Array | null,
  { first, again }: Effort = usualEffort(problem.calendar.days.length),
): Float64Array {
  let prices = start;
  if (!prices) {
    prices = new Float64Array(problem.calendar.days.length).fill(0.03 / meanCost(problem));
    for (const width of FIRST_WIDTHS) prices = improve(problem, prices, width, first, 5 * TOLERANCE);
  }
  for (let round = 0; round < ROUNDS; round++)
    prices = improve(problem, prices, widthAt(problem, prices), start ? again : first, TOLERANCE);
  return prices;
}

/** Prices for a bound that is shown: rounding-off goes down in steps until it no longer matters. */
export function tightenPrices(problem: Problem, prices: Float64Array, evaluations: number): Float64Array {
  let tight = prices;
  for (let width = widthAt(problem, prices) / 3; width > 1e-5; width /= 3)
    tight = improve(problem, tight, width, evaluations, TOLERANCE / 10);
  return tight;
}
