/**
 * Reads a stick drawing back by eye, as it were: from where lines touch, and from nothing else, finds which
 * parts are joined. Lines that merely cross are apart unless a dot stands on the crossing.
 */
import type { Train } from '../../../src/core/gears/train.ts';
import { CASE } from '../../../src/core/gears/train.ts';
import type { Label, Point, Segment, TrainLayout } from '../../../src/ui/drawings/train-shapes.ts';

export interface Drawn extends Segment {
  /** The part this line belongs to by its shape; undefined for a plain line of a shaft. */
  readonly part?: string;
}

/** Every line that carries a part or a shaft; planets mesh and are left out. */
export function drawnLines(layout: TrainLayout): Drawn[] {
  const lines: Drawn[] = layout.shafts.flatMap((shaft) => shaft.lines.map((line) => ({ ...line })));
  const add = (part: string, line: Segment) => lines.push({ ...line, part });
  add('input', layout.input);
  add('output', layout.output);
  if (layout.housing) add(CASE, layout.housing);
  for (const { bar } of layout.grounds) add(CASE, bar);
  for (const { set, ring, sun, carrier } of layout.sets) {
    add(`${set.id}.ring`, ring);
    add(`${set.id}.sun`, sun);
    for (const line of carrier) add(`${set.id}.carrier`, line);
  }
  for (const { element, bars } of layout.elements) {
    add(`${element.id}.first`, bars[0]);
    add(`${element.id}.second`, bars[1]);
  }
  return lines;
}

const near = 0.01;
const within = (value: number, a: number, b: number) =>
  value >= Math.min(a, b) - near && value <= Math.max(a, b) + near;
export const passes = (line: Segment, { x, y }: Point) =>
  within(x, line.x1, line.x2) && within(y, line.y1, line.y2);
const endsOf = ({ x1, y1, x2, y2 }: Segment): Point[] => [
  { x: x1, y: y1 },
  { x: x2, y: y2 },
];

/** True when an end of one lies on the other, or they lie on each other. */
export const touch = (a: Segment, b: Segment): boolean =>
  endsOf(a).some((end) => passes(b, end)) || endsOf(b).some((end) => passes(a, end));

/** The point where a level and an upright line meet, or undefined. */
export function crossing(a: Segment, b: Segment): Point | undefined {
  const level = [a, b].find((line) => line.y1 === line.y2);
  const upright = [a, b].find((line) => line !== level && line.x1 === line.x2);
  if (!level || !upright) return undefined;
  const at = { x: upright.x1, y: level.y1 };
  return passes(level, at) && passes(upright, at) ? at : undefined;
}

/** The group of each line: lines of one group are joined on paper. */
export function joinLines(layout: TrainLayout, lines: readonly Drawn[]): number[] {
  const dots = layout.shafts.flatMap((shaft) => shaft.dots);
  const group = lines.map((_, index) => index);
  const find = (index: number): number => (group[index] === index ? index : find(group[index]!));
  for (const [i, a] of lines.entries()) {
    for (const [j, b] of lines.entries()) {
      if (j <= i) continue;
      const at = crossing(a, b);
      const dotted =
        at !== undefined && dots.some((dot) => Math.abs(dot.x - at.x) < 1 && Math.abs(dot.y - at.y) < 1);
      if (touch(a, b) || dotted || (a.part !== undefined && a.part === b.part)) group[find(i)] = find(j);
    }
  }
  return lines.map((_, index) => find(index));
}

/** Parts that the drawing joins, each group sorted, groups sorted. */
export function readTrain(layout: TrainLayout): string[][] {
  const lines = drawnLines(layout);
  const groups = new Map<number, Set<string>>();
  for (const [index, group] of joinLines(layout, lines).entries()) {
    const parts = groups.get(group) ?? new Set();
    groups.set(group, parts);
    const { part } = lines[index]!;
    if (part) parts.add(part);
  }
  return [...groups.values()]
    .map((parts) => [...parts].sort())
    .sort((a, b) => (a.join() < b.join() ? -1 : 1));
}

/** The same for the train itself. Which bar of an element is drawn first is the layout's choice. */
export function partsOf(train: Train, layout: TrainLayout): string[][] {
  const parts = new Map<string, string[]>();
  const put = (shaft: string, part: string) => parts.set(shaft, [...(parts.get(shaft) ?? []), part]);
  put(train.input, 'input');
  put(train.output, 'output');
  for (const set of train.gearsets) {
    for (const member of ['ring', 'sun', 'carrier'] as const) put(set[member].shaft, `${set.id}.${member}`);
  }
  for (const element of train.elements) {
    const { shafts } = layout.elements.find((shape) => shape.element.id === element.id)!;
    if ([...shafts].sort().join() !== [...element.between].sort().join()) {
      throw new Error(`${element.id} is drawn between ${shafts.join(' and ')}`);
    }
    put(shafts[0], `${element.id}.first`);
    put(shafts[1], `${element.id}.second`);
  }
  if (parts.has(CASE)) put(CASE, CASE);
  return [...parts.values()].map((list) => list.sort()).sort((a, b) => (a.join() < b.join() ? -1 : 1));
}

export const labelsOf = (layout: TrainLayout): Label[] => [
  ...layout.sets.flatMap((set) => set.captions),
  ...layout.elements.map((element) => element.label),
  layout.inputLabel,
  layout.outputLabel,
];
