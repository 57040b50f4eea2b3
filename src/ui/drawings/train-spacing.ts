/**
 * Gives rows and columns their distances: as tight as lines, gears, bars and labels allow, with the play that
 * is left in a column shared to both sides. Only what is drawn takes room.
 */
import { columnOf, rowOf } from './train-grid.ts';
import type { Placement } from './train-place.ts';
import type { ShaftRuns } from './train-runs.ts';
import { SIZE, textWidth } from './train-shapes.ts';

/** At least this far from the first place to the second. */
type Gap = readonly [number, number, number];

/** Room kept beside a column, over a range of rows. */
interface Room {
  readonly column: number;
  readonly left: number;
  readonly right: number;
  readonly from: number;
  readonly to: number;
}

/** Least distance between two parallel lines. */
const TRACK = 8;
const CLEAR = 4;
/** Ring to planet pin, and pin to sun. */
const GEAR = 29;

/** Tightest positions that keep all gaps, `places` in rising order and the first at 0. */
function tightest(places: readonly number[], gaps: readonly Gap[]): Map<number, number> {
  const at = new Map<number, number>();
  for (const place of places) {
    const least = gaps.filter(([, to]) => to === place).map(([from, , gap]) => at.get(from)! + gap);
    at.set(place, Math.max(0, ...least));
  }
  return at;
}

const neighbours = (places: readonly number[], gap: number): Gap[] =>
  places.slice(1).map((place, index) => [places[index]!, place, gap]);

/** Height of each used row below the first. */
export function spaceRows(placement: Placement, shafts: readonly ShaftRuns[]): Map<number, number> {
  const { rows } = placement.grid;
  const used = new Set<number>([rows.ring, rows.carrier, rows.sun, rows.bottom]);
  for (const run of shafts.flatMap((shaft) => shaft.runs)) {
    for (const row of run.isLevel ? [run.on] : [run.from, run.to]) used.add(row);
  }
  const places = [...used].sort((a, b) => a - b);
  const gaps = neighbours(places, TRACK);
  gaps.push([rows.ring, rows.carrier, GEAR], [rows.carrier, rows.sun, GEAR]);
  if (used.has(0)) gaps.push([0, places[1]!, SIZE.bar + 6]);
  const bars = [
    ...placement.clutches.map(({ row }) => ({ row, above: SIZE.bar + SIZE.line })),
    ...placement.grounds.map(({ at }) => ({ row: rowOf(placement.grid, at), above: SIZE.bar })),
  ];
  for (const { row, above } of bars) {
    for (const other of places) {
      if (other < row - 1) gaps.push([other, row, (other < row - 2 ? above : SIZE.bar) + CLEAR]);
      if (other > row + 1) gaps.push([row, other, SIZE.bar + CLEAR]);
    }
    for (const lower of bars) {
      if (lower.row > row + 2) gaps.push([row, lower.row, SIZE.bar + lower.above + CLEAR]);
      else if (lower.row === row + 2) gaps.push([row, lower.row, SIZE.line + CLEAR / 2]);
    }
  }
  return tightest(places, gaps);
}

function roomsOf(placement: Placement, shafts: readonly ShaftRuns[], captions: readonly number[]): Room[] {
  const { grid, clutches, grounds, brakes } = placement;
  const half = TRACK / 2;
  const rooms: Room[] = [];
  const keep = (column: number, left: number, right: number, from: number, to: number) =>
    rooms.push({ column, left, right, from, to });
  for (const { isLevel, on, from, to } of shafts.flatMap((shaft) => shaft.runs)) {
    if (!isLevel) keep(on, half, half, from, to);
    else for (const end of [from, to]) keep(end, half, half, on, on);
  }
  // The words over the input and output arrows.
  keep(0, 0, 2, grid.rows.ring, grid.rows.bottom);
  keep(grid.width - 1, 2, 0, grid.rows.ring, grid.rows.bottom);
  for (const [set, column] of grid.sets.entries()) {
    const body = SIZE.pin + 4;
    keep(column, body, body, grid.rows.ring, grid.rows.sun);
    const text = captions[set]! / 2 + 3;
    keep(column, text, text, grid.height, grid.height);
  }
  for (const { element, column, row } of clutches) {
    const text = (textWidth(element.id) - SIZE.gap) / 2 + 2;
    keep(column, text, 0, row - 2, row - 1);
    keep(column + 1, 0, text, row - 2, row - 1);
    keep(column, half + 1, 0, row - 1, row + 1);
    keep(column + 1, 0, half + 1, row - 1, row + 1);
  }
  for (const { at } of grounds) {
    const row = rowOf(grid, at);
    keep(columnOf(grid, at), half + SIZE.hatch, half + SIZE.hatch, row - 1, row + 1);
  }
  for (const [id, at] of brakes) {
    const text = Math.max(SIZE.bar + 1, textWidth(id) / 2) + 2;
    keep(columnOf(grid, at), text, text, -1, 0);
  }
  return rooms;
}

export interface Columns {
  readonly x: ReadonlyMap<number, number>;
  /** How far things reach beyond the first and the last column. */
  readonly left: number;
  readonly right: number;
}

/** Place of each used column right of the first; `captions` are the widths of what stands under each set. */
export function spaceColumns(
  placement: Placement,
  shafts: readonly ShaftRuns[],
  captions: readonly number[],
): Columns {
  const { grid, clutches } = placement;
  const rooms = roomsOf(placement, shafts, captions);
  const used = new Set([0, grid.width - 1, ...rooms.map(({ column }) => column)]);
  const places = [...used].sort((a, b) => a - b);
  const gaps = neighbours(places, 0);
  for (const a of rooms) {
    for (const b of rooms) {
      if (a.column < b.column && a.from <= b.to && b.from <= a.to) {
        gaps.push([a.column, b.column, a.right + b.left]);
      }
    }
  }
  for (const { column } of clutches) gaps.push([column, column + 1, SIZE.gap]);
  const early = tightest(places, gaps);
  const end = Math.max(...early.values());
  const mirrored = gaps.map(([from, to, gap]): Gap => [-to, -from, gap]);
  const late = tightest(places.map((place) => -place).reverse(), mirrored);
  const middle = (place: number) => Math.round((early.get(place)! + end - late.get(-place)!) / 2);
  const x = new Map(places.map((place) => [place, middle(place)]));
  return {
    x,
    left: Math.max(0, ...rooms.map((room) => room.left - x.get(room.column)!)),
    right: Math.max(0, ...rooms.map((room) => x.get(room.column)! + room.right - x.get(grid.width - 1)!)),
  };
}
