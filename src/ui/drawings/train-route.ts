/**
 * Finds the lines of one shaft on the grid: the cheapest way from what is already joined to the nearest part
 * that is not, until all are joined. Cost counts length, bends and crossings in whole numbers, so that equal
 * input gives equal drawings. Dijkstra with a queue of buckets; a state is a node and the way it was entered.
 */
import { FREE, type Grid, holds } from './train-grid.ts';

export const COST = { lane: 1, set: 6, row: 2, bend: 7, branch: 4, crossing: 22 } as const;

/** A straight step of one node, from and to. */
export type Step = readonly [number, number];

const RIGHT = 0;
const DOWN = 1;
const LEFT = 2;
const UP = 3;

const NEVER = 0x3fffffff;

/** Distances from a net's lines to every state, node × 4 + direction; `from` leads back to the start. */
export interface Field {
  readonly net: number;
  readonly distance: Int32Array;
  /** The state before, or -2 - node where the way begins. */
  readonly from: Int32Array;
  /** The first state that `isGoal` accepted, or -1. */
  readonly goal: number;
}

/**
 * Spreads out from `starts`, cheapest first, and stops at the first node that `isGoal` accepts; without
 * `isGoal` every reachable state gets its distance. A node of the net that is not among the starts can be
 * reached but not passed.
 */
export function spread(
  grid: Grid,
  net: number,
  starts: ReadonlySet<number>,
  isGoal?: (at: number, level: boolean) => boolean,
): Field {
  const { width, height, blocked, level, upright, setAt } = grid;
  const free = FREE;
  const distance = new Int32Array(width * height * 4).fill(NEVER);
  const from = new Int32Array(width * height * 4);
  const buckets: (number[] | undefined)[] = [];
  let last = -1;
  const offset = [1, width, -1, -width];
  const enter = (at: number, direction: number, cost: number, back: number) => {
    const column = at % width;
    const to = at + offset[direction]!;
    const isLevel = (direction & 1) === 0;
    if (isLevel) {
      if (at < width || (direction === RIGHT ? column + 1 === width : column === 0)) return;
    } else if (to < 0 || to >= blocked.length) return;
    if (blocked[to] || starts.has(to)) return;
    const along = isLevel ? level[to]! : upright[to]!;
    if (along !== free && along !== net) return;
    const across = isLevel ? upright[to]! : level[to]!;
    let total = cost + (isLevel ? COST.lane : COST.row);
    if (isLevel && (setAt[column] !== -1 || setAt[to % width] !== -1)) total += COST.set - COST.lane;
    if (across !== free && across !== net) {
      if (along === net) return;
      total += COST.crossing;
    }
    const state = to * 4 + direction;
    if (total >= distance[state]!) return;
    distance[state] = total;
    from[state] = back;
    if (total > last) last = total;
    const bucket = buckets[total];
    if (bucket) bucket.push(state);
    else buckets[total] = [state];
  };
  const mayStop = (at: number) =>
    (level[at] === free || level[at] === net) && (upright[at] === free || upright[at] === net);
  for (const start of starts) {
    if (!mayStop(start)) continue;
    const branchUp = level[start] === free ? 0 : COST.branch;
    const branchAcross = upright[start] === free ? 0 : COST.branch;
    for (const direction of [RIGHT, DOWN, LEFT, UP]) {
      enter(start, direction, direction & 1 ? branchUp : branchAcross, -2 - start);
    }
  }
  for (let cost = 0; cost <= last; cost++) {
    const bucket = buckets[cost];
    if (!bucket) continue;
    for (const state of bucket) {
      if (distance[state] !== cost) continue;
      const at = state >> 2;
      const direction = state & 3;
      const stops = mayStop(at);
      if (stops && isGoal?.(at, (direction & 1) === 0)) return { net, distance, from, goal: state };
      if (level[at] === net || upright[at] === net) continue;
      enter(at, direction, cost, state);
      if (!stops) continue;
      enter(at, (direction + 1) & 3, cost + COST.bend, state);
      enter(at, (direction + 3) & 3, cost + COST.bend, state);
    }
  }
  return { net, distance, from, goal: -1 };
}

/** The steps that lead to a state, from the start outwards. */
export function stepsTo(field: Field, goal: number): Step[] {
  const steps: Step[] = [];
  let state = goal;
  while (state >= 0) {
    const back = field.from[state]!;
    steps.push([back >= 0 ? back >> 2 : -2 - back, state >> 2]);
    state = back;
  }
  return steps.reverse();
}

/** Cheapest way for a stub to arrive at a node and go on level to the right or left; NEVER when there is none. */
export function costOfStub(grid: Grid, field: Field, at: number, goesRight: boolean): number {
  const straight = field.distance[at * 4 + (goesRight ? RIGHT : LEFT)]!;
  const turned = Math.min(field.distance[at * 4 + UP]!, field.distance[at * 4 + DOWN]!) + COST.bend;
  return holds(grid, at, field.net) ? Math.min(straight, turned) : NEVER;
}

export const isReachable = (cost: number): boolean => cost < NEVER;

/** Writes steps into the grid: straight runs hold one direction, ends, bends and branches both. */
export function occupy(grid: Grid, net: number, steps: readonly Step[], ends: Iterable<number>): void {
  const axes = new Map<number, number>();
  for (const [from, to] of steps) {
    const axis = Math.abs(from - to) === 1 ? 1 : 2;
    for (const at of [from, to]) axes.set(at, (axes.get(at) ?? 0) | axis);
  }
  const degree = new Map<number, number>();
  for (const step of steps) for (const at of step) degree.set(at, (degree.get(at) ?? 0) + 1);
  for (const [at, axis] of axes) {
    const straight = degree.get(at) === 2 && axis !== 3;
    if (!straight || axis === 1) grid.level[at] = net;
    if (!straight || axis === 2) grid.upright[at] = net;
  }
  for (const at of ends) {
    grid.level[at] = net;
    grid.upright[at] = net;
  }
}
