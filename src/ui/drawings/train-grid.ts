/**
 * The squared paper a gear train is drawn on, before any distance is known: gearsets are columns, with lanes
 * for upright lines before, between and after them; heights are rows, from the case at the top to the axis.
 * Lines of different shafts may cross at a point but never share a stretch or a corner; the grid keeps that.
 */
import type { Member } from '../../core/gears/train.ts';

/** Rows from the top: brakes, tracks outside the rings, the gears with spare rows between, tracks inside. */
export interface Rows {
  readonly top: number;
  readonly ring: number;
  readonly carrier: number;
  readonly sun: number;
  readonly bottom: number;
}

export interface Grid {
  readonly width: number;
  readonly height: number;
  readonly rows: Rows;
  /** Column of each gearset, in order. */
  readonly sets: readonly number[];
  /** Gearset in this column, or -1 for a lane. */
  readonly setAt: readonly number[];
  /** 1 where no line may go. */
  readonly blocked: Uint8Array;
  /** Net that runs level through a node, or FREE. A net that ends, bends or branches there holds both. */
  readonly level: Int16Array;
  /** Net that runs upright through a node, or FREE. */
  readonly upright: Int16Array;
}

export const FREE = -1;

/** How much room to draw in; the layout tries again with more when lines find no way. */
export interface Room {
  readonly lanes: number;
  readonly outside: number;
  readonly between: number;
  readonly inside: number;
}

export const node = (grid: Grid, column: number, row: number): number => row * grid.width + column;
export const columnOf = (grid: Grid, at: number): number => at % grid.width;
export const rowOf = (grid: Grid, at: number): number => Math.floor(at / grid.width);

export function makeGrid(setCount: number, room: Room): Grid {
  const setAt: number[] = [];
  const sets: number[] = [];
  const lanes = () => setAt.push(...Array.from({ length: room.lanes }, () => -1));
  lanes();
  for (let set = 0; set < setCount; set++) {
    sets.push(setAt.length);
    setAt.push(set);
    lanes();
  }
  const ring = 1 + room.outside;
  const carrier = ring + room.between + 1;
  const sun = carrier + room.between + 1;
  const rows = { top: 0, ring, carrier, sun, bottom: sun + room.inside };
  const width = setAt.length;
  const height = rows.bottom + 1;
  const grid: Grid = {
    width,
    height,
    rows,
    sets,
    setAt,
    blocked: new Uint8Array(width * height),
    level: new Int16Array(width * height).fill(FREE),
    upright: new Int16Array(width * height).fill(FREE),
  };
  for (const column of sets) {
    for (let row = ring + 1; row < sun; row++) {
      if (row !== carrier) grid.blocked[node(grid, column, row)] = 1;
    }
  }
  return grid;
}

/** Where a member of a gearset meets the lines. */
export function memberNode(grid: Grid, set: number, member: Member): number {
  return node(grid, grid.sets[set]!, grid.rows[member]);
}

/** True when the net may end, bend or branch here. */
export function holds(grid: Grid, at: number, net: number): boolean {
  const { level, upright } = grid;
  return (
    !grid.blocked[at] &&
    (level[at] === FREE || level[at] === net) &&
    (upright[at] === FREE || upright[at] === net)
  );
}

/** True when nothing at all is here. */
export const isEmpty = (grid: Grid, at: number): boolean =>
  !grid.blocked[at] && grid.level[at] === FREE && grid.upright[at] === FREE;
