/** Solenoids on the grid of the valve body's face, a thumb apart. */
import type { ShownValveBody } from '../../core/questions/describe/harness.ts';
import { TARGET } from './spots.ts';
import type { Point } from './train-shapes.ts';

export interface ValveBodyLayout {
  readonly width: number;
  readonly height: number;
  readonly plate: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  /** Middle of the solenoid at this place of the grid. */
  readonly at: (place: { readonly row: number; readonly column: number }) => Point;
}

const NARROW = 276;
const ROW = 86;
const MARGIN = 12;

export function layoutValveBody({
  rows,
  columns,
}: Pick<ShownValveBody, 'rows' | 'columns'>): ValveBodyLayout {
  const pitch = Math.max(TARGET + 2, (NARROW - 2 * MARGIN) / Math.max(1, columns));
  const width = Math.max(NARROW, columns * pitch + 2 * MARGIN);
  const height = rows * ROW + 2 * 8;
  return {
    width,
    height,
    plate: { x: 3, y: 3, width: width - 6, height: height - 6 },
    at: ({ row, column }) => ({ x: MARGIN + (column - 0.5) * pitch, y: 8 + (row - 1) * ROW + 36 }),
  };
}
