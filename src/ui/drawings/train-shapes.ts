/** What a laid-out train consists of, in CSS pixels at natural size; y grows downward. */
import type { Element, Gearset, Member } from '../../core/gears/train.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A level or an upright line. */
export interface Segment {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

export interface Label {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface SetShape {
  readonly set: Gearset;
  readonly x: number;
  readonly ring: Segment;
  readonly sun: Segment;
  /** The carrier's own lines: a pin through each planet, and cheeks that join two pins. */
  readonly carrier: readonly Segment[];
  readonly planets: readonly { readonly top: number; readonly bottom: number; readonly pin: number }[];
  /** Id, then what the caller wants under it. */
  readonly captions: readonly Label[];
}

export interface ShaftShape {
  readonly shaft: string;
  readonly lines: readonly Segment[];
  /** Where three or four lines of the shaft meet, gears left out. */
  readonly dots: readonly Point[];
}

export interface ElementShape {
  readonly element: Element;
  /** Shaft of each bar. */
  readonly shafts: readonly [string, string];
  /** Two facing bars: upright between shafts; level at the case, the case's own bar first. */
  readonly bars: readonly [Segment, Segment];
  readonly label: Label;
}

export interface GroundShape {
  readonly set: number;
  readonly member: Member;
  readonly bar: Segment;
  /** The side on which the hatching lies: 1 is right. */
  readonly side: 1 | -1;
}

export interface TrainLayout {
  readonly width: number;
  readonly height: number;
  readonly axis: Segment;
  /** The housing along the top; null when nothing hangs from it. */
  readonly housing: Segment | null;
  readonly sets: readonly SetShape[];
  /** A member fixed to the case has lines of its own, under the shaft "case". */
  readonly shafts: readonly ShaftShape[];
  readonly elements: readonly ElementShape[];
  readonly grounds: readonly GroundShape[];
  readonly input: Segment;
  readonly output: Segment;
  readonly inputShaft: string;
  readonly outputShaft: string;
  readonly inputLabel: Label;
  readonly outputLabel: Label;
}

/** Measures shared by layout and drawing. */
export const SIZE = {
  font: 12,
  line: 14,
  /** Half the length of ring and sun, planet faces, carrier pins, and element bars. */
  ring: 11,
  planet: 7,
  pin: 12,
  bar: 8,
  /** Between two facing bars. */
  gap: 8,
  /** Between a planet and the gear it meshes with. */
  mesh: 4,
  /** Of the input and output lines. */
  arrow: 24,
  margin: 2,
  hatch: 6,
} as const;

/** Width to keep for a text: generous, so that what fits here fits in any face. */
export const textWidth = (text: string): number => Math.ceil(text.length * SIZE.font * 0.6) + 1;

export const level = (x1: number, x2: number, y: number): Segment => ({ x1, y1: y, x2, y2: y });
export const upright = (x: number, y1: number, y2: number): Segment => ({ x1: x, y1, x2: x, y2 });

export const labelAt = (text: string, middle: number, top: number): Label => ({
  text,
  x: middle - textWidth(text) / 2,
  y: top,
  width: textWidth(text),
  height: SIZE.line,
});
