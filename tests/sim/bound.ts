/**
 * The most any policy can reach with a learner: the Lagrangian bound for somebody who knows the learner's
 * parameters and, from a fact's first answer on, what sort of fact it is. Facts not yet asked cannot be told
 * apart, by nobody. Its value function also serves as control variate: what an answer changes in value, less
 * what it was expected to change, has mean 0 under every policy and takes most of the luck out of a score.
 */
import { columnOf, type GridSize, layGrid, PLANNING, rowOf } from '../../src/core/plan/grid.ts';
import { minimise } from '../../src/core/plan/minimise.ts';
import { lookBack, lookForward, noFlow, programmeFor } from '../../src/core/plan/programme.ts';
import { after, type Memory, recallAfter } from '../../src/core/plan/transition.ts';
import type { Cell } from './cells.ts';
import type { Learner } from './learner.ts';

export interface Bound {
  /** Share of the facts. */
  readonly share: number;
  /** Worth of a memory just after an answer on a day, and of a fact's first answer before it is given. */
  readonly valueAfter: (day: number, memory: Memory) => number;
  readonly valueOfFirst: (day: number) => number;
  /** What it is worth to a fact that the day takes place; null for one never asked. */
  readonly gainOfDay: (day: number, truth: Asked | null) => number;
  readonly prices: Float64Array;
}

/** For runs whose score does not matter. */
export const NO_BOUND: Bound = {
  share: 1,
  valueAfter: () => 0,
  valueOfFirst: () => 0,
  gainOfDay: () => 0,
  prices: new Float64Array(400),
};

/** A true memory and the day of its last answer. */
export type Asked = Memory & { readonly lastDay: number };

const SIZE: GridSize = { stabilities: 72, finerDifficulty: true };
const WIDTHS = [0.02, 0.006, 0.002, 6e-4, 2e-4, 6e-5, 2e-5];
/** At each width at most; and on the fine grid, at the last two widths. */
const EVALUATIONS = 150;
const LAST_EVALUATIONS = 12;
/** Seconds wanted may miss the seconds there are by this share before the next width is taken. */
const TOLERANCE = 0.002;

/** The cell's programme for this learner on a grid. */
function modelOf(cell: Cell, learner: Learner, size: GridSize) {
  const { days: count, facts } = cell;
  const grid = layGrid(learner.truth, count, size);
  const days = Array.from({ length: count }, (_, day) => day);
  const calendar = {
    days,
    attendance: days.map((day) => (day === 0 ? 1 : cell.attendance)),
    seconds: days.map(() => cell.minutes * 60),
    classDay: count,
  };
  const { rightSeconds, wrongSeconds } = cell;
  const p = programmeFor(grid, calendar, {
    rightCost: rightSeconds,
    wrongCost: wrongSeconds,
    rightDays: 0,
    bonus: 0,
  });
  const plane = grid.rows * grid.columns;
  const corners = (memory: Memory) => {
    const c = columnOf(grid, memory.stability);
    const r = rowOf(grid.difficulties, memory.difficulty);
    const cell = r.at * grid.columns + c.at;
    return [
      [cell, (1 - c.part) * (1 - r.part)],
      [cell + 1, c.part * (1 - r.part)],
      [cell + grid.columns, (1 - c.part) * r.part],
      [cell + grid.columns + 1, c.part * r.part],
    ] as const;
  };
  const valueAfter = (day: number, memory: Memory) => {
    let value = 0;
    for (const [at, part] of corners(memory)) value += part * p.value[day * plane + at]!;
    return value;
  };
  const { firstRecall, sorts } = learner;
  const first = sorts.flatMap(({ share, known, missed }) => [
    ...corners(known).map(([at, part]) => [at, part * share * firstRecall] as const),
    ...corners(missed).map(([at, part]) => [at, part * share * (1 - firstRecall)] as const),
  ]);
  const valueOfFirst = (day: number) => {
    let value = 0;
    for (const [at, part] of first) value += part * p.value[day * plane + at]!;
    return value;
  };
  const firstSeconds = wrongSeconds + (rightSeconds - wrongSeconds) * firstRecall;

  const evaluate = (prices: Float64Array, width: number) => {
    lookBack(p, prices, width);
    let worth = 0;
    const gate = new Float64Array(count);
    for (let u = count - 1; u >= 0; u--) {
      const better = valueOfFirst(u) - prices[u]! * firstSeconds - worth;
      const open = better <= -width ? 0 : better >= width ? 1 : (better + width) / (2 * width);
      const gain = better <= -width ? 0 : better >= width ? better : (better + width) ** 2 / (4 * width);
      gate[u] = open;
      worth += calendar.attendance[u]! * gain;
    }
    const flow = noFlow(count);
    let left = 1;
    for (let u = 0; u < count; u++) {
      const asked = left * gate[u]!;
      flow.seconds[u]! += asked * firstSeconds;
      const taken = asked * calendar.attendance[u]!;
      left -= taken;
      if (taken > 0) for (const [at, part] of first) p.entering[u * plane + at]! += taken * part;
    }
    lookForward(p, flow);
    let value = worth;
    const gradient = new Float64Array(count);
    for (let u = 0; u < count; u++) {
      const seconds = calendar.seconds[u]! / facts;
      value += prices[u]! * seconds * calendar.attendance[u]!;
      gradient[u] = prices[u]! * calendar.attendance[u]! * (seconds - flow.seconds[u]!);
    }
    return { value, gradient };
  };

  const enough = (gradient: Float64Array, logs: Float64Array) => {
    let [missed, total] = [0, 0];
    for (const [u, slope] of gradient.entries()) {
      missed += Math.abs(slope);
      total += Math.exp(logs[u]!) * calendar.attendance[u]! * (calendar.seconds[u]! / facts);
    }
    return missed < TOLERANCE * total;
  };
  /** Prices after each width, from the last ones. */
  const settle = (start: Float64Array, width: number, evaluations: number) =>
    minimise((x) => evaluate(x.map(Math.exp), width), start.map(Math.log), { evaluations, enough }).map(
      (log) => Math.max(1e-12, Math.exp(log)),
    );
  return { calendar, evaluate, settle, valueAfter, valueOfFirst, firstSeconds };
}

export function boundOf(cell: Cell, learner: Learner): Bound {
  const { days: count } = cell;
  const { wrongSeconds, rightSeconds } = cell;
  // Any prices give a bound: they are found on the planner's grid and only finished on the fine one.
  const coarse = modelOf(cell, learner, PLANNING);
  const tried: Float64Array[] = [new Float64Array(count).fill(0.03 / rightSeconds)];
  for (const width of WIDTHS) tried.push(coarse.settle(tried.at(-1)!, width, EVALUATIONS));
  const { calendar, evaluate, settle, valueAfter, valueOfFirst, firstSeconds } = modelOf(cell, learner, SIZE);
  let share = Number.POSITIVE_INFINITY;
  let best = tried[0]!;
  const consider = (prices: Float64Array) => {
    const { value } = evaluate(prices, 1e-12);
    if (value < share) [share, best] = [value, prices];
  };
  for (const prices of tried.slice(-3)) consider(prices);
  for (const width of WIDTHS.slice(-2)) consider(settle(best, width, LAST_EVALUATIONS));
  evaluate(best, 1e-12);
  const askOn = (u: number, truth: Asked | null) => {
    if (!truth) return valueOfFirst(u) - best[u]! * firstSeconds;
    const gap = u - truth.lastDay;
    if (gap < 1) return Number.NEGATIVE_INFINITY;
    const r = recallAfter(learner.truth, gap, truth.stability);
    const [known, missed] = [true, false].map((side) => after(learner.truth, truth, gap, side));
    return (
      r * valueAfter(u, known!) +
      (1 - r) * valueAfter(u, missed!) -
      best[u]! * (wrongSeconds + (rightSeconds - wrongSeconds) * r)
    );
  };
  const gainOfDay = (day: number, truth: Asked | null) => {
    let worth = truth ? recallAfter(learner.truth, count - truth.lastDay, truth.stability) : 0;
    for (let u = count - 1; u > day; u--)
      worth += calendar.attendance[u]! * Math.max(0, askOn(u, truth) - worth);
    return Math.max(0, askOn(day, truth) - worth);
  };
  return { share, valueAfter, valueOfFirst, gainOfDay, prices: best };
}
