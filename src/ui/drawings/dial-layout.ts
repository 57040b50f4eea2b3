/** A dial indicator's face: divisions clockwise from the top, a small counter for whole turns. */
import { COUNTER_TURNS, DIAL_NUMBERED } from '../../core/questions/describe/gauges.ts';
import type { DialDrawing } from '../../core/questions/drawing.ts';
import type { Point, Segment } from './train-shapes.ts';

/** By length: each division, each fifth, each numbered one. */
export const RANKS = ['division', 'fifth', 'numbered'] as const;
export type Rank = (typeof RANKS)[number];

export interface Tick extends Segment {
  readonly rank: Rank;
}

export interface Printed extends Point {
  readonly text: string;
}

export interface DialFace {
  readonly middle: Point;
  readonly radius: number;
  readonly ticks: readonly Tick[];
  readonly numbers: readonly Printed[];
  /** Degrees clockwise from the top. */
  readonly hand: number;
}

export interface DialLayout extends DialFace {
  readonly width: number;
  readonly height: number;
  /** Radii of the bezel, of the hand's tip and of the counter's ground. */
  readonly bezel: number;
  readonly tip: number;
  readonly counter: DialFace;
  readonly legend: Printed;
}

const SIZE = 268;
const RADIUS = 122;
const COUNTER = 24;

/** A point so many degrees clockwise from the top. */
export function around({ x, y }: Point, degrees: number, radius: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return { x: x + radius * Math.sin(angle), y: y - radius * Math.cos(angle) };
}

const rankOf = (index: number, numbered: number): Rank =>
  index % numbered === 0 ? 'numbered' : numbered === DIAL_NUMBERED && index % 5 === 0 ? 'fifth' : 'division';

const TICK: Readonly<Record<Rank, number>> = { division: 9, fifth: 13, numbered: 18 };

function faceOf(
  middle: Point,
  radius: number,
  count: number,
  numbered: number,
  hand: number,
  scale: number,
  outward: number,
): DialFace {
  const apart = 360 / count;
  const indexes = Array.from({ length: count }, (_, index) => index);
  return {
    middle,
    radius,
    hand,
    ticks: indexes.map((index) => {
      const rank = rankOf(index, numbered);
      const from = around(middle, index * apart, radius);
      const to = around(middle, index * apart, radius - TICK[rank] * scale);
      return { x1: from.x, y1: from.y, x2: to.x, y2: to.y, rank };
    }),
    numbers: indexes
      .filter((index) => index % numbered === 0)
      .map((index) => ({
        ...around(middle, index * apart, radius + outward),
        text: String(index),
      })),
  };
}

/** One face showing a reading. The counter's hand creeps on with the large one, as a geared hand does. */
export function layoutDial(
  { division, divisions, unit }: DialDrawing['scale'],
  { steps, divisions: past }: DialDrawing['reading'],
): DialLayout {
  const middle = { x: SIZE / 2, y: SIZE / 2 };
  const turns = (steps % COUNTER_TURNS) + past / divisions;
  const lower = { x: middle.x, y: middle.y + 43 };
  return {
    width: SIZE,
    height: SIZE,
    bezel: RADIUS + 9,
    tip: RADIUS - TICK.division + 2,
    ...faceOf(middle, RADIUS, divisions, DIAL_NUMBERED, (past / divisions) * 360, 1, -31),
    counter: faceOf(lower, COUNTER, COUNTER_TURNS, 1, (turns / COUNTER_TURNS) * 360, 0.42, 8),
    legend: { x: middle.x, y: middle.y - 34, text: `${division} ${unit}` },
  };
}
