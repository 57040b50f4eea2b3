/**
 * A seat in half section: the part drawn a little clear of the pocket it lies in, so that both faces are seen.
 * Everything is laid out with the front at the left and the axis below, then turned as the unit lies. Bore, outer
 * diameter and thickness are to one scale where the deck states them; the way down to the axis is broken.
 */
import type { ShownSeat } from '../../core/questions/describe/seats.ts';
import type { FrontAt } from '../../core/questions/drawing.ts';
import { type End, exactIn } from '../../core/unit/record.ts';
import type { Spot } from './spots.ts';
import type { Point } from './train-shapes.ts';

/** Along the axis, rearward; and out from the broken axis. */
export interface Along {
  readonly a: number;
  readonly r: number;
}

/** A rectangle by its corners along and out. */
export interface Patch {
  readonly from: Along;
  readonly to: Along;
}

export interface SeatLayout {
  readonly width: number;
  readonly height: number;
  /** From along-and-out to the page. */
  readonly place: (at: Along) => Point;
  readonly blocks: Readonly<Record<End, readonly Along[]>>;
  /** The part's own room, covered or not. */
  readonly part: Patch;
  /** Drawing units for a millimetre; null when not to scale. */
  readonly perMm: number | null;
  /** The axis, its two ends named there. */
  readonly axis: readonly [Along, Along];
  readonly names: Readonly<Record<End, Point>>;
  readonly ends: Readonly<Record<End, Point>>;
  readonly spots: readonly Spot[];
  readonly isLevel: boolean;
  readonly eye: Readonly<Record<End, Point>>;
}

/** Radial length, and most and least thickness, of the part as drawn. */
const RADIAL = 112;
const THICKEST = 54;
const THINNEST = 14;
/** Clear of the pocket on each side, depth of the bodies, length of a pilot's shoulder. */
const CLEAR = 7;
const BODY = 64;
const OVER = 16;
/** From the axis to where the part begins. */
const BREAK = 44;
const WIDTH = 276;
const NAME = 50;
const END = 18;

function sizesOf({ seat }: ShownSeat): { thickness: number; perMm: number | null } {
  if (!seat.size) return { thickness: 28, perMm: null };
  const mm = (of: 'inner' | 'outer' | 'thickness') => exactIn(seat.size![of], 'mm').valueOf();
  const radial = (mm('outer') - mm('inner')) / 2;
  const perMm = Math.min(RADIAL / radial, THICKEST / mm('thickness'));
  const thickness = mm('thickness') * perMm;
  return thickness < THINNEST ? { thickness: THINNEST, perMm: null } : { thickness, perMm };
}

/** Thin parts are drawn thicker than they are, and those without a size at a usual one. */
export const isToScale = (shown: ShownSeat): boolean => sizesOf(shown).perMm !== null;

/** A body beside the part, with a shoulder over or under it where it centres the part. */
function blockOf(end: End, shown: ShownSeat, thickness: number, radial: number): Along[] {
  const { pilot } = shown.sides[end];
  const facing = shown.sides[end === 'front' ? 'rear' : 'front'].pilot;
  const face = thickness / 2 + CLEAR;
  const sign = end === 'front' ? -1 : 1;
  const at = (a: number, r: number): Along => ({ a: sign * a, r });
  const [low, high] = [BREAK - OVER, BREAK + radial + OVER];
  // Reaches over most of the part, and stays clear of the body opposite.
  const reach = face - CLEAR - thickness * (pilot?.at === facing?.at ? 0.42 : 0.62);
  const back = face + BODY;
  if (!pilot) return [at(back, low), at(face, low), at(face, high), at(back, high)];
  return pilot.at === 'inner'
    ? [
        at(back, low),
        at(reach, low),
        at(reach, BREAK - 2),
        at(face, BREAK - 2),
        at(face, high),
        at(back, high),
      ]
    : [
        at(back, low),
        at(face, low),
        at(face, BREAK + radial + 2),
        at(reach, BREAK + radial + 2),
        at(reach, high),
        at(back, high),
      ];
}

export function layoutSeat(
  shown: ShownSeat,
  front: FrontAt,
  places: readonly { readonly end: End; readonly number: number }[],
): SeatLayout {
  const { thickness, perMm } = sizesOf(shown);
  const radial =
    perMm && shown.seat.size
      ? ((exactIn(shown.seat.size.outer, 'mm').valueOf() - exactIn(shown.seat.size.inner, 'mm').valueOf()) /
          2) *
        perMm
      : RADIAL;
  const isLevel = front === 'left' || front === 'right';
  const sign = front === 'left' || front === 'up' ? 1 : -1;
  const half = thickness / 2 + CLEAR + BODY;
  const out = BREAK + radial + OVER;
  const height = isLevel ? NAME + out + END + 8 : 2 * (half + NAME);
  const place = ({ a, r }: Along): Point =>
    isLevel ? { x: WIDTH / 2 + sign * a, y: height - END - 8 - r } : { x: 60 + r, y: height / 2 + sign * a };
  const at = (end: End, a: number, r: number) => place({ a: end === 'front' ? -a : a, r });
  const each = <T>(make: (end: End) => T): Record<End, T> => ({ front: make('front'), rear: make('rear') });
  const body = thickness / 2 + CLEAR + BODY / 2;
  return {
    width: WIDTH,
    height,
    place,
    blocks: each((end) => blockOf(end, shown, thickness, radial)),
    part: { from: { a: -thickness / 2, r: BREAK }, to: { a: thickness / 2, r: BREAK + radial } },
    perMm,
    axis: [
      { a: -half - 4, r: 0 },
      { a: half + 4, r: 0 },
    ],
    names: each((end) => {
      const point = at(end, isLevel ? body + 2 : half + NAME / 2, isLevel ? out + 23 : BREAK);
      return isLevel ? point : { x: WIDTH / 2, y: point.y };
    }),
    ends: each((end) => (isLevel ? at(end, half - 2, -13) : at(end, half - 6, -8))),
    eye: each((end) => (isLevel ? at(end, half + 15, out / 2) : at(end, half - 8, out + 30))),
    spots: places.map(({ end, number }) => ({
      id: end,
      label: String(number),
      ...at(end, body, BREAK + radial / 2),
    })),
    isLevel,
  };
}

export const pathOf = (points: readonly Along[], place: SeatLayout['place']): string =>
  `M${points
    .map(place)
    .map(({ x, y }) => `${x.toFixed(2)} ${y.toFixed(2)}`)
    .join('L')}Z`;

/** A rectangle by its ends along and out, as a closed line of points. */
export const patch = (a1: number, r1: number, a2: number, r2: number): Along[] => [
  { a: a1, r: r1 },
  { a: a2, r: r1 },
  { a: a2, r: r2 },
  { a: a1, r: r2 },
];
