import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  CASE,
  ELEMENT_KINDS,
  type Element,
  type Gearset,
  MEMBERS,
  type Train,
} from '../../../src/core/gears/train.ts';
import { layoutTrain } from '../../../src/ui/drawings/train-layout.ts';
import type { Point, Segment, TrainLayout } from '../../../src/ui/drawings/train-shapes.ts';
import { TAG_RADIUS, tagShafts } from '../../../src/ui/drawings/train-tags.ts';
import { PUBLISHED, shippedDecks } from '../../units.ts';
import {
  crossing,
  drawnLines,
  joinLines,
  labelsOf,
  partsOf,
  passes,
  readTrain,
  touch,
} from './read-drawing.ts';

const WORDS = { input: 'in', output: 'out' };
const WITH_TEETH = {
  ...WORDS,
  under: (set: Gearset) => [`ring ${set.ring.teeth}`, `sun ${set.sun.teeth}`],
};
const TRAINS: (readonly [string, Train])[] = [
  ...PUBLISHED.map((train) => [train.id, train] as const),
  ...shippedDecks().map((deck) => [deck.id, deck.train] as const),
];

/** Members and ports on one shaft, by the names that read-drawing gives them. */
const partsOn = (train: Train, shaft: string): string[] => [
  ...(train.input === shaft ? ['input'] : []),
  ...(train.output === shaft ? ['output'] : []),
  ...train.gearsets.flatMap((set) =>
    MEMBERS.filter((member) => set[member].shaft === shaft).map((member) => `${set.id}.${member}`),
  ),
];

/** What must hold for any train drawn. */
function expectSound(train: Train, layout: TrainLayout): void {
  expect(readTrain(layout)).toEqual(partsOf(train, layout));

  const lines = drawnLines(layout);
  const groups = joinLines(layout, lines);
  const apart = ({ x1, y1, x2, y2 }: Segment, other: Segment) => {
    const across =
      Math.max(x1, x2) < Math.min(other.x1, other.x2) || Math.max(other.x1, other.x2) < Math.min(x1, x2);
    const dx = Math.max(
      0,
      Math.min(x1, x2) - Math.max(other.x1, other.x2),
      Math.min(other.x1, other.x2) - Math.max(x1, x2),
    );
    const dy = Math.max(
      0,
      Math.min(y1, y2) - Math.max(other.y1, other.y2),
      Math.min(other.y1, other.y2) - Math.max(y1, y2),
    );
    return across ? Math.hypot(dx, dy) : Math.max(dx, dy);
  };
  for (const [i, a] of lines.entries()) {
    for (const [j, b] of lines.entries()) {
      if (j <= i || groups[i] === groups[j] || crossing(a, b)) continue;
      expect(apart(a, b), `${JSON.stringify(a)} and ${JSON.stringify(b)}`).toBeGreaterThanOrEqual(4);
    }
  }

  for (const { lines: own, dots } of layout.shafts) {
    for (const dot of dots) {
      const ends = own.filter((line) => passes(line, dot));
      expect(ends.length, 'lines that meet at a dot').toBeGreaterThan(1);
      for (const other of layout.shafts) {
        if (other.lines !== own) expect(other.lines.some((line) => passes(line, dot))).toBe(false);
      }
    }
  }

  const labels = labelsOf(layout);
  for (const [index, label] of labels.entries()) {
    expect(label.x).toBeGreaterThanOrEqual(0);
    expect(label.x + label.width).toBeLessThanOrEqual(layout.width);
    expect(label.y + label.height).toBeLessThanOrEqual(layout.height);
    for (const other of labels.slice(index + 1)) {
      const clear =
        label.x + label.width <= other.x ||
        other.x + other.width <= label.x ||
        label.y + label.height <= other.y ||
        other.y + other.height <= label.y;
      expect(clear, `"${label.text}" lies on "${other.text}"`).toBe(true);
    }
    for (const line of [...lines, layout.axis]) {
      const clear =
        Math.max(line.x1, line.x2) < label.x ||
        Math.min(line.x1, line.x2) > label.x + label.width ||
        Math.max(line.y1, line.y2) < label.y ||
        Math.min(line.y1, line.y2) > label.y + label.height;
      expect(clear, `"${label.text}" lies on ${JSON.stringify(line)}`).toBe(true);
    }
  }
}

describe.each(TRAINS)('%s', (_, train) => {
  const layout = layoutTrain(train, WORDS);

  test('lines join exactly what the train joins, and no label lies on anything', () => {
    expectSound(train, layout);
  });

  test('so they do with tooth counts', () => {
    const counted = layoutTrain(train, WITH_TEETH);
    expectSound(train, counted);
    expect(counted.sets.map((set) => set.captions.map((caption) => caption.text))).toEqual(
      train.gearsets.map((set) => [set.id, `ring ${set.ring.teeth}`, `sun ${set.sun.teeth}`]),
    );
  });

  test('fits a page 320 px wide with text of 11 px', () => {
    const page = 320 - 2 * 15 - 2 * 2 - 2 * 4.25;
    expect((layout.width * 11) / 12).toBeLessThanOrEqual(page + 0.5);
  });

  test('draws the same twice', () => {
    expect(layoutTrain(structuredClone(train), WORDS)).toEqual(layout);
  });

  test('a balloon for any one shaft, on or beside it and over nothing else that is numbered', () => {
    const shafts = layout.shafts.map(({ shaft }) => shaft).filter((shaft) => shaft !== CASE);
    const away = (line: Segment, { x, y }: Point) =>
      Math.hypot(
        Math.max(Math.min(line.x1, line.x2) - x, 0, x - Math.max(line.x1, line.x2)),
        Math.max(Math.min(line.y1, line.y2) - y, 0, y - Math.max(line.y1, line.y2)),
      );
    for (const shaft of shafts) expect(tagShafts(layout, [shaft])[0], shaft).not.toBeNull();
    const tags = tagShafts(layout, shafts);
    for (const [index, tag] of tags.entries()) {
      if (!tag) continue;
      for (const { shaft, lines } of layout.shafts) {
        if (shaft === shafts[index] || shaft === CASE) continue;
        for (const line of lines) expect(away(line, tag)).toBeGreaterThanOrEqual(TAG_RADIUS);
      }
      for (const label of labelsOf(layout)) {
        const box = { x1: label.x, y1: label.y, x2: label.x + label.width, y2: label.y + label.height };
        expect(away(box, tag), label.text).toBeGreaterThanOrEqual(TAG_RADIUS);
      }
      const parts = partsOn(train, shafts[index]!);
      const plain = layout.shafts.filter((one) => one.shaft === shafts[index]).flatMap((one) => one.lines);
      const own = drawnLines(layout).filter((line) => line.part && parts.includes(line.part));
      expect([...plain, ...own].some((line) => passes(line, tag.on))).toBe(true);
    }
  });
});

const SHAFTS = ['a', 'b', 'c', 'd', 'e', 'in', 'out'] as const;
const shaft = fc.constantFrom(...SHAFTS, CASE);
const anyTrain: fc.Arbitrary<Train> = fc
  .record({
    gearsets: fc.array(
      fc.record({
        kind: fc.constantFrom('simple' as const, 'double-pinion' as const),
        members: fc.tuple(shaft, shaft, shaft),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    elements: fc.array(
      fc.record({
        kind: fc.constantFrom(...ELEMENT_KINDS),
        between: fc.tuple(fc.constantFrom(...SHAFTS), shaft),
        name: fc.constantFrom('', 'front', 'x'),
      }),
      { maxLength: 7 },
    ),
  })
  .map(({ gearsets, elements }) => ({
    input: 'in',
    output: 'out',
    gearsets: gearsets.map(
      ({ kind, members: [sun, ring, carrier] }, index): Gearset => ({
        id: `P${index + 1}`,
        kind,
        sun: { shaft: sun, teeth: 30 },
        ring: { shaft: ring, teeth: 70 },
        carrier: { shaft: carrier },
      }),
    ),
    elements: elements
      .filter(({ between: [first, second] }) => first !== second)
      .map(({ kind, between, name }, index): Element => ({ id: `E${index}${name}`, kind, between })),
  }));

describe('any train at all, sensible or not', () => {
  test('lines join exactly what the train joins, and no label lies on anything', () => {
    fc.assert(
      fc.property(anyTrain, (train) => expectSound(train, layoutTrain(train, WORDS))),
      { numRuns: 25, seed: 7 },
    );
  });
});

describe('reading a drawing back', () => {
  const train = PUBLISHED.find(({ id }) => id === 'lepelletier-6-a')!;

  test('a line moved onto a neighbour is found', () => {
    const layout = layoutTrain(train, WORDS);
    const [first, ...others] = layout.shafts;
    const moved: TrainLayout = {
      ...layout,
      shafts: [{ ...first!, lines: [...first!.lines, others.at(-1)!.lines[0]!] }, ...others],
      grounds: [],
    };
    expect(readTrain(moved)).not.toEqual(partsOf(train, layout));
  });

  test('a line left out is found', () => {
    const layout = layoutTrain(train, WORDS);
    const broken = { ...layout, shafts: layout.shafts.map((one) => ({ ...one, lines: one.lines.slice(1) })) };
    expect(readTrain(broken)).not.toEqual(partsOf(train, layout));
  });

  test('two lines that only cross are apart', () => {
    const level = { x1: 0, x2: 10, y1: 5, y2: 5 };
    const upright = { x1: 5, x2: 5, y1: 0, y2: 10 };
    expect(touch(level, upright)).toBe(false);
    expect(crossing(level, upright)).toEqual({ x: 5, y: 5 });
  });
});
