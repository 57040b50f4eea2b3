/** Numbered places on a drawing, in its own units: the ring with the number, and what its leader points at. */
import type { Point } from './train-shapes.ts';

export interface Spot extends Point {
  /** Id that a tap gives. */
  readonly id: string;
  readonly label: string;
  /** A figure under the ring. */
  readonly under?: string;
  /** Where the leader ends; none when the ring sits on the thing itself. */
  readonly at?: Point;
  /** Where it bends on the way there. */
  readonly via?: Point;
}

/** Side of what a thumb can hit, in CSS pixels at the drawing's smallest size. */
export const TARGET = 44;
/** From a ring's middle to the foot of the figure under it. */
export const UNDER = 25;

/**
 * Middles of things of these sizes, set in a row as near to where they are wanted as the others let them: in order,
 * without overlap, between `low` and `high` where there is room. Wanted places must not fall.
 */
export function spread(
  wanted: readonly number[],
  sizes: readonly number[],
  low: number,
  high: number,
): number[] {
  interface Run {
    readonly wants: readonly number[];
    readonly sizes: readonly number[];
    readonly top: number;
    readonly length: number;
  }
  const settle = (wants: readonly number[], own: readonly number[]): Run => {
    const length = own.reduce((sum, size) => sum + size, 0);
    let before = 0;
    let sum = 0;
    for (const [index, want] of wants.entries()) {
      sum += want - (before + own[index]! / 2);
      before += own[index]!;
    }
    return { wants, sizes: own, length, top: Math.max(low, Math.min(sum / wants.length, high - length)) };
  };
  const runs: Run[] = [];
  for (const [index, want] of wanted.entries()) {
    let run = settle([want], [sizes[index]!]);
    for (let last = runs.at(-1); last && last.top + last.length > run.top; last = runs.at(-1)) {
      runs.pop();
      run = settle([...last.wants, ...run.wants], [...last.sizes, ...run.sizes]);
    }
    runs.push(run);
  }
  return runs.flatMap((run) => {
    let at = run.top;
    return run.sizes.map((size) => {
      at += size;
      return at - size / 2;
    });
  });
}
