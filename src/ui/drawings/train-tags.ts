/** Places for numbered balloons on chosen shafts, clear of every other line, gear and label. */
import { CASE, MEMBERS } from '../../core/gears/train.ts';
import type { Point, Segment, TrainLayout } from './train-shapes.ts';
import { SIZE } from './train-shapes.ts';

export const TAG_RADIUS = 8;

/** How far a balloon may stand off its line: on it, touching it, or on a short leader. */
const OFFSETS = [0, TAG_RADIUS, -TAG_RADIUS, 13, -13, 20, -20];

export interface Tag extends Point {
  /** The point of the shaft it belongs to. */
  readonly on: Point;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const around = ({ x1, y1, x2, y2 }: Segment, by: number): Box => ({
  left: Math.min(x1, x2) - by,
  right: Math.max(x1, x2) + by,
  top: Math.min(y1, y2) - by,
  bottom: Math.max(y1, y2) + by,
});

const touches = ({ left, right, top, bottom }: Box, { x, y }: Point, radius: number): boolean =>
  x > left - radius && x < right + radius && y > top - radius && y < bottom + radius;

/** All lines of a shaft, gears and carrier pins on it included. */
function linesOf(layout: TrainLayout, shaft: string): Segment[] {
  return [
    ...layout.shafts.filter((one) => one.shaft === shaft).flatMap((one) => one.lines),
    ...(layout.inputShaft === shaft ? [layout.input] : []),
    ...(layout.outputShaft === shaft ? [layout.output] : []),
    ...layout.sets.flatMap(({ set, ring, sun, carrier }) => [
      ...(set.ring.shaft === shaft ? [ring] : []),
      ...(set.sun.shaft === shaft ? [sun] : []),
      ...(set.carrier.shaft === shaft ? carrier : []),
    ]),
  ];
}

/** What a balloon must keep clear of: gears, elements, words, and the lines of `others`. */
function obstacles(layout: TrainLayout, others: readonly string[]): Box[] {
  const labels = [
    ...layout.sets.flatMap((set) => set.captions),
    ...layout.elements.map((element) => element.label),
    layout.inputLabel,
    layout.outputLabel,
  ];
  return [
    ...others.flatMap((other) => linesOf(layout, other)).map((line) => around(line, 2)),
    ...layout.elements.flatMap(({ bars }) => bars.map((bar) => around(bar, 2))),
    ...layout.grounds.map(({ bar }) => around(bar, SIZE.hatch)),
    ...layout.sets.flatMap(({ x, planets }) =>
      planets.map(({ top, bottom }) => ({ left: x - SIZE.planet, right: x + SIZE.planet, top, bottom })),
    ),
    ...labels.map(({ x, y, width, height }) => ({ left: x, right: x + width, top: y, bottom: y + height })),
    around(layout.axis, 0),
    ...(layout.housing ? [around(layout.housing, SIZE.hatch)] : []),
  ];
}

/** Places along a line, or beside it at `off`, from its middle outwards. */
function tagsBy({ x1, y1, x2, y2 }: Segment, off: number): Tag[] {
  const count = 2 * Math.ceil((Math.abs(x2 - x1) + Math.abs(y2 - y1)) / 4);
  const isLevel = y1 === y2;
  const tags = Array.from({ length: count + 1 }, (_, step): Tag => {
    const share = count === 0 ? 0 : step / count;
    const on = { x: x1 + (x2 - x1) * share, y: y1 + (y2 - y1) * share };
    return { on, x: on.x + (isLevel ? 0 : off), y: on.y + (isLevel ? off : 0) };
  });
  const middle = tags[count / 2]!;
  const distance = (at: Point) => Math.abs(at.x - middle.x) + Math.abs(at.y - middle.y);
  return tags.sort((a, b) => distance(a) - distance(b));
}

/** True when balloon and leader keep clear of a box. */
function isClear(box: Box, tag: Tag): boolean {
  const leader = [0.25, 0.5, 0.75].map((share) => ({
    x: tag.on.x + (tag.x - tag.on.x) * share,
    y: tag.on.y + (tag.y - tag.on.y) * share,
  }));
  return !touches(box, tag, TAG_RADIUS) && leader.every((at) => !touches(box, at, 0));
}

const lengthOf = ({ x1, y1, x2, y2 }: Segment): number => Math.abs(x2 - x1) + Math.abs(y2 - y1);

function shaftsOf(layout: TrainLayout): string[] {
  const members = layout.sets.flatMap(({ set }) => MEMBERS.map((member) => set[member].shaft));
  const shafts = layout.shafts.map((one) => one.shaft);
  return [...new Set([CASE, layout.inputShaft, layout.outputShaft, ...shafts, ...members])];
}

/**
 * One place for each shaft, in order: on the middle of its longest line where that is free, else on or beside
 * any of its lines, at the worst over a line of a shaft that gets no balloon; null where there is none.
 */
export function tagShafts(layout: TrainLayout, shafts: readonly string[]): (Tag | null)[] {
  const taken: Tag[] = [];
  const all = shaftsOf(layout);
  return shafts.map((shaft) => {
    const isApart = (tag: Tag) =>
      tag.x >= TAG_RADIUS &&
      tag.x <= layout.width - TAG_RADIUS &&
      taken.every((other) => Math.hypot(other.x - tag.x, other.y - tag.y) > 2 * TAG_RADIUS + 2);
    const lines = linesOf(layout, shaft).sort((a, b) => lengthOf(b) - lengthOf(a));
    for (const others of [all, shafts]) {
      const inTheWay = others.filter((other) => other !== shaft);
      const boxes = obstacles(layout, inTheWay);
      for (const off of OFFSETS) {
        for (const line of lines) {
          const tag = tagsBy(line, off).find(
            (one) => isApart(one) && boxes.every((box) => isClear(box, one)),
          );
          if (!tag) continue;
          taken.push(tag);
          return tag;
        }
      }
    }
    return null;
  });
}
