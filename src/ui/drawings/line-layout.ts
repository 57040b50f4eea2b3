/**
 * The shaft line pulled apart along its axis, which runs down the page: bodies as blocks, the seats between them,
 * names to the right, numbered places to the left. Not to scale, but seats are as wide as their diameters compare.
 */
import type { LineEntry, PlaceAt, SeatSide, ShownSeat } from '../../core/questions/describe/seats.ts';
import { type End, exactIn } from '../../core/unit/record.ts';
import type { Spot } from './spots.ts';
import { TARGET } from './spots.ts';
import { wrapText } from './wrap.ts';

export const BODY_SHAPES = ['plain', 'drum', 'gear'] as const;
export type BodyShape = (typeof BODY_SHAPES)[number];

interface Row {
  readonly top: number;
  readonly bottom: number;
  readonly lines: readonly string[];
  readonly isLit: boolean;
}

export type LineRow =
  | (Row & { readonly is: 'body'; readonly id: string; readonly shape: BodyShape; readonly half: number })
  | (Row & {
      readonly is: 'seat';
      readonly id: string;
      readonly shown: ShownSeat;
      /** Inner and outer radius as drawn. */
      readonly inner: number;
      readonly outer: number;
      /** The sides as they lie on the page. */
      readonly up: SeatSide;
      readonly down: SeatSide;
    });

export interface LineLayout {
  readonly width: number;
  readonly height: number;
  readonly axis: number;
  readonly names: number;
  readonly rows: readonly LineRow[];
  readonly spots: readonly Spot[];
  /** Which end of the unit is at the head of the page. */
  readonly head: End;
}

const WIDTH = 276;
const BODY = 28;
const SEAT = 30;
const LINE = 13;
const HEAD = 24;
const HALF: Readonly<Record<BodyShape, number>> = { plain: 40, drum: 50, gear: 45 };
/** Radius of the largest seat, and sizes of one that states none or is covered. */
const WIDEST = 40;
const NOMINAL = { inner: 18, outer: 34 } as const;

const shapeOf = (belongsTo: readonly string[] = []): BodyShape =>
  belongsTo.some((ref) => ref.startsWith('gearset:'))
    ? 'gear'
    : belongsTo.some((ref) => ref.startsWith('element:'))
      ? 'drum'
      : 'plain';

const mm = (seat: ShownSeat['seat'], of: 'inner' | 'outer') => exactIn(seat.size![of], 'mm').valueOf();

export interface LineWords {
  readonly nameOf: (entry: LineEntry) => string;
  readonly placesOf: (id: string) => readonly PlaceAt[];
}

export function layoutLine(
  entries: readonly LineEntry[],
  front: 'up' | 'down',
  { nameOf, placesOf }: LineWords,
): LineLayout {
  const idOf = (entry: LineEntry) => (entry.is === 'body' ? entry.body.id : entry.seat.id);
  const numbered = entries.some((entry) => placesOf(idOf(entry)).length > 0);
  const axis = numbered ? 108 : 62;
  const names = axis + 62;
  const widest = Math.max(
    ...entries.map((entry) => (entry.is === 'seat' && entry.seat.size ? mm(entry.seat, 'outer') : 0)),
  );
  const head: End = front === 'up' ? 'front' : 'rear';
  const foot: End = front === 'up' ? 'rear' : 'front';
  const ordered = front === 'up' ? entries : entries.toReversed();

  let y = HEAD;
  const spots: Spot[] = [];
  const rows = ordered.map((entry): LineRow => {
    const id = idOf(entry);
    const lines = wrapText(nameOf(entry), WIDTH - names, 4);
    const places = placesOf(id).toSorted((a, b) =>
      a.end === b.end ? 0 : a.end === head || b.end === foot ? -1 : 1,
    );
    const own = entry.is === 'body' ? BODY : SEAT;
    const room =
      Math.max(own, lines.length * LINE + 2, places.length * TARGET) + (entry.is === 'body' ? 4 : 8);
    const middle = y + room / 2;
    const top = middle - own / 2;
    const bottom = middle + own / 2;
    y += room;
    const sized = entry.is === 'seat' && entry.seat.size !== undefined && !entry.isCovered;
    const inner = sized ? (mm(entry.seat, 'inner') / widest) * WIDEST : NOMINAL.inner;
    const outer = sized ? (mm(entry.seat, 'outer') / widest) * WIDEST : NOMINAL.outer;
    const reach = entry.is === 'body' ? HALF[shapeOf(entry.body.belongsTo)] : outer;
    for (const [index, { number, end }] of places.entries()) {
      const level = end === null ? middle : end === head ? top + 4 : bottom - 4;
      spots.push({
        id: end === null ? id : `${id}/${end}`,
        label: String(number),
        x: 24,
        y: middle + (index - (places.length - 1) / 2) * TARGET,
        via: { x: axis - WIDEST - 8, y: level },
        at: { x: axis - reach + 3, y: level },
      });
    }
    const row = { top, bottom, lines, isLit: entry.isLit, id };
    if (entry.is === 'body') {
      const shape = shapeOf(entry.body.belongsTo);
      return { ...row, is: 'body', shape, half: HALF[shape] };
    }
    return {
      ...row,
      is: 'seat',
      shown: entry,
      inner,
      outer,
      up: entry.sides[head],
      down: entry.sides[foot],
    };
  });
  return { width: WIDTH, height: y + HEAD, axis, names, rows, spots, head };
}
