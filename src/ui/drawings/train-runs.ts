/** Joins the single steps of a shaft into straight runs, and finds where its lines branch. */
import { columnOf, type Grid, rowOf } from './train-grid.ts';
import type { Placement } from './train-place.ts';
import type { Step } from './train-route.ts';

export interface Run {
  readonly isLevel: boolean;
  /** Row of a level run, column of an upright one. */
  readonly on: number;
  /** Columns of a level run, rows of an upright one. */
  readonly from: number;
  readonly to: number;
}

export interface ShaftRuns {
  readonly shaft: string;
  readonly runs: readonly Run[];
  /** Nodes where three or four lines meet. */
  readonly branches: readonly number[];
}

/** The steps between the bars of clutches and the nodes beside them. */
function stubsOf({ grid, clutches }: Placement, shaft: string): Step[] {
  return clutches.flatMap(({ column, row, left, right }): Step[] => {
    const bar = row * grid.width + column;
    return [
      ...(left === shaft ? [[bar - 1, bar] as const] : []),
      ...(right === shaft ? [[bar + 1, bar + 2] as const] : []),
    ];
  });
}

function runsOf(grid: Grid, steps: readonly Step[]): Run[] {
  const marks = new Map<string, { isLevel: boolean; on: number; lows: Set<number> }>();
  for (const [a, b] of steps) {
    const isLevel = Math.abs(a - b) === 1;
    const low = Math.min(a, b);
    const on = isLevel ? rowOf(grid, low) : columnOf(grid, low);
    const mark = marks.get(`${isLevel}/${on}`) ?? { isLevel, on, lows: new Set() };
    mark.lows.add(isLevel ? columnOf(grid, low) : rowOf(grid, low));
    marks.set(`${isLevel}/${on}`, mark);
  }
  return [...marks.values()].flatMap(({ isLevel, on, lows }) =>
    [...lows]
      .filter((low) => !lows.has(low - 1))
      .map((from) => {
        let to = from + 1;
        while (lows.has(to)) to++;
        return { isLevel, on, from, to };
      }),
  );
}

export function shaftRuns(placement: Placement): ShaftRuns[] {
  const { grid } = placement;
  const gears = new Set(
    grid.sets.flatMap((column) =>
      [grid.rows.ring, grid.rows.carrier, grid.rows.sun].map((row) => row * grid.width + column),
    ),
  );
  return placement.lines.map(({ shaft, steps }) => {
    const all = [...steps, ...stubsOf(placement, shaft)];
    const degree = new Map<number, number>();
    for (const step of all) for (const at of step) degree.set(at, (degree.get(at) ?? 0) + 1);
    const branches = [...degree].filter(([at, count]) => count > 2 && !gears.has(at)).map(([at]) => at);
    return { shaft, runs: runsOf(grid, all), branches };
  });
}
