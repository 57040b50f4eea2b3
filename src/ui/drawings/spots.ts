/** Numbered places on a drawing, in its own units: the ring with the number, and what its leader points at. */
import type { Point } from './train-shapes.ts';

export interface Spot extends Point {
  /** Id that a tap gives. */
  readonly id: string;
  readonly label: string;
  /** Where the leader ends; none when the ring sits on the thing itself. */
  readonly at?: Point;
}

/** Side of what a thumb can hit, in CSS pixels at the drawing's smallest size. */
export const TARGET = 44;
/** Radius of the ring that is seen. */
export const RING = 12;

/**
 * Middles of `count` targets of this size around the wanted ones, in order and without overlap: each stays as near
 * to where it is wanted as the others let it. Wanted places must rise. Sorted runs that touch are moved as one.
 */
export function spread(wanted: readonly number[], size: number, low: number, high: number): number[] {
  interface Run {
    readonly wants: readonly number[];
    /** Middle of its first. */
    readonly start: number;
  }
  const settle = (wants: readonly number[]): Run => {
    const mean = wants.reduce((sum, want, index) => sum + want - index * size, 0) / wants.length;
    const most = high - size / 2 - (wants.length - 1) * size;
    return { wants, start: Math.max(low + size / 2, Math.min(mean, most)) };
  };
  const runs: Run[] = [];
  for (const want of wanted) {
    let run = settle([want]);
    for (
      let last = runs.at(-1);
      last && last.start + last.wants.length * size > run.start;
      last = runs.at(-1)
    ) {
      runs.pop();
      run = settle([...last.wants, ...run.wants]);
    }
    runs.push(run);
  }
  return runs.flatMap(({ wants, start }) => wants.map((_, index) => start + index * size));
}
