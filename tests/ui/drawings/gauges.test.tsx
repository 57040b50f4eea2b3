// @vitest-environment jsdom
import { cleanup, render, screen } from '@testing-library/react';
import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import {
  DEPTH_GAUGE_INCH,
  DEPTH_GAUGE_MM,
  DIAL_INCH,
  DIAL_MM,
  type Instrument,
  MICROMETER_INCH,
  MICROMETER_MM,
  valueShown,
} from '../../../src/core/measure/instrument.ts';
import type { Drawing, Scale } from '../../../src/core/questions/drawing.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { DrawingView } from '../../../src/ui/drawings/DrawingView.tsx';
import { layoutDial, type Printed, type Tick } from '../../../src/ui/drawings/dial-layout.ts';
import { layoutMicrometer } from '../../../src/ui/drawings/micrometer-layout.ts';
import { layoutVernier, type Strip } from '../../../src/ui/drawings/vernier-layout.ts';
import { makeSay } from '../../../src/words/words.ts';
import { shippedDecks } from '../../units.ts';

afterEach(cleanup);

const scaleOf = ({ unit, division, divisions }: Instrument): Scale => ({
  unit,
  division: String(division.valueOf()),
  divisions,
});

/** Any reading of the instrument. */
const anyReading = ({ steps, divisions }: Instrument) =>
  fc.record({ steps: fc.nat(steps - 1), divisions: fc.nat(divisions - 1) });
const valueAt = (instrument: Instrument, reading: { steps: number; divisions: number }): number => {
  const value = valueShown(instrument, reading);
  if (!value.ok) throw new Error(value.error.code);
  return value.value.valueOf();
};
const each = (instrument: Instrument, check: (reading: { steps: number; divisions: number }) => void) =>
  fc.assert(fc.property(anyReading(instrument), check), { numRuns: 60, seed: 11 });

/** The printed number whose middle lies nearest. */
const nearest = (numbers: readonly Printed[], x: number) =>
  numbers.toSorted((a, b) => Math.abs(a.x - x) - Math.abs(b.x - x))[0]!;

const apart = (numbers: readonly Printed[], width: number, height: number) => {
  for (const [index, one] of numbers.entries())
    for (const other of numbers.slice(index + 1))
      expect(
        Math.abs(one.x - other.x) >= width || Math.abs(one.y - other.y) >= height,
        `"${one.text}" lies on "${other.text}"`,
      ).toBe(true);
};

describe.each([
  ['metric', DIAL_MM],
  ['inch', DIAL_INCH],
])('%s dial indicator', (_, instrument) => {
  test('DR4 the two hands, measured off the drawing, give the reading', () => {
    each(instrument, (reading) => {
      const { hand, counter, ticks } = layoutDial(scaleOf(instrument), reading);
      expect(ticks).toHaveLength(instrument.divisions);
      const past = Math.round((hand / 360) * ticks.length);
      // The counter's hand lies between two numbers, as far on as the large hand is round.
      const turns = (counter.hand / 360) * counter.ticks.length;
      expect(turns - Math.floor(turns + 1e-9)).toBeCloseTo(past / ticks.length, 6);
      expect(valueAt(instrument, { steps: Math.floor(turns + 1e-9), divisions: past })).toBeCloseTo(
        valueAt(instrument, reading),
        9,
      );
    });
  });

  test('zero is at the top, a quarter turn on the right', () => {
    const { ticks, middle, radius } = layoutDial(scaleOf(instrument), { steps: 0, divisions: 0 });
    expect(ticks[0]).toMatchObject({ x1: middle.x, y1: middle.y - radius, rank: 'numbered' });
    expect(ticks[25]!.x1).toBeCloseTo(middle.x + radius, 9);
  });

  test('numbers lie clear of each other, of every tick and of the counter', () => {
    const { numbers, counter, ticks } = layoutDial(scaleOf(instrument), { steps: 3, divisions: 40 });
    apart([...numbers, ...counter.numbers], 8, 12);
    for (const { x, y } of numbers)
      for (const { x2, y2 } of ticks) expect(Math.hypot(x - x2, y - y2)).toBeGreaterThan(7);
  });
});

test('a 1.12 mm dial: hand past 10 by two divisions, counter past 1', () => {
  const { hand, counter } = layoutDial(scaleOf(DIAL_MM), { steps: 1, divisions: 12 });
  expect(hand).toBeCloseTo(43.2, 9);
  expect(counter.hand).toBeCloseTo(40.32, 9);
});

describe.each([
  // Last number uncovered and lines after it, by hand: 7.5 mm is 5, then 6 and 7 and one half line.
  ['metric', MICROMETER_MM, { steps: 15, divisions: 39 }, '5', 5, 10],
  // 0.275 in is 2 tenths and three lines of 0.025 in.
  ['inch', MICROMETER_INCH, { steps: 11, divisions: 17 }, '2', 3, 4],
])('%s micrometer', (_, instrument, reading, number, after, perNumber) => {
  const laid = (at = reading) =>
    layoutMicrometer({ kind: 'micrometer', scale: scaleOf(instrument), reading: at });

  test('the last number and the lines after it can be counted', () => {
    const { lines, numbers } = laid();
    const numbered = lines.findLastIndex(({ rank }) => rank === 'numbered');
    expect(nearest(numbers, lines[numbered]!.x1).text).toBe(number);
    expect(lines.length - 1 - numbered).toBe(after);
  });

  test('DR4 the sleeve is to scale, and the thimble line at the datum is the right one', () => {
    each(instrument, (at) => {
      const { lines, datum, thimble, thimbleLines, thimbleNumbers } = laid(at);
      expect(lines.length).toBeGreaterThan(0);
      const last = lines.at(-1)!;
      // Thimble edge beyond the last line, in steps, is the thimble's part of a turn.
      const pitch = lines.length > 1 ? last.x1 - lines.at(-2)!.x1 : undefined;
      if (pitch) expect((thimble.edge - last.x1) / pitch).toBeCloseTo(at.divisions / instrument.divisions, 6);
      const onDatum = thimbleLines.filter(({ y1 }) => Math.abs(y1 - datum.y1) < 0.01);
      expect(onDatum).toHaveLength(1);
      // Counted from the nearest printed number, upwards being more.
      const printed = thimbleNumbers.map(({ text, y }) => ({ line: Number(text), y }));
      const below = printed.filter(({ y }) => y >= datum.y1 - 0.01).toSorted((a, b) => a.y - b.y)[0]!;
      for (const { y } of printed)
        expect(
          thimbleLines.some(
            ({ y1, rank }) => rank === 'numbered' && Math.abs(y1 - rimHeight(y, thimble, datum.y1)) < 0.01,
          ),
        ).toBe(true);
      const between = thimbleLines.filter(
        ({ y1 }) => y1 > datum.y1 + 0.01 && y1 < rimHeight(below.y, thimble, datum.y1) - 0.01,
      ).length;
      const counted = below.line + (Math.abs(below.y - datum.y1) < 0.01 ? 0 : between + 1);
      expect(counted % instrument.divisions).toBe(at.divisions);
    });
  });

  test('at least one number is seen unless the thimble stands at the start', () => {
    each(instrument, (at) => {
      if (at.steps >= perNumber) expect(laid(at).numbers.length).toBeGreaterThan(0);
    });
  });

  test('numbers lie clear of each other', () => {
    each(instrument, (at) => {
      apart(laid(at).numbers, 9, 12);
      apart(laid(at).thimbleNumbers, 9, 11);
    });
  });
});

/** A number stands where its line meets the body; the same line starts nearer the datum at the rim. */
const rimHeight = (y: number, { rim, radius }: { rim: number; radius: number }, datum: number) =>
  datum + ((y - datum) * rim) / radius;

const meeting = ({ main, vernier }: Strip): Tick[] =>
  vernier.filter(({ x1 }) => main.some((line) => Math.abs(line.x1 - x1) < 0.01));

describe.each([
  ['metric', DEPTH_GAUGE_MM, 10],
  ['inch', DEPTH_GAUGE_INCH, 1],
])('%s depth gauge', (_, instrument, numberStep) => {
  const laid = (reading: { steps: number; divisions: number }) =>
    layoutVernier({ kind: 'depth-gauge', scale: scaleOf(instrument), reading }, ['zero', 'lens']);
  const perNumber = instrument.unit === 'mm' ? 10 : 4;

  test('the zero lies to scale between main lines that are numbered beside it', () => {
    each(instrument, (reading) => {
      const { zero } = laid(reading);
      const first = zero.vernier[0]!;
      const number = nearest(zero.mainNumbers, first.x1);
      const pitch = zero.main[1]!.x1 - zero.main[0]!.x1;
      const steps = (Number(number.text) / numberStep) * perNumber + (first.x1 - number.x) / pitch;
      expect(steps).toBeCloseTo(reading.steps + reading.divisions / instrument.divisions, 6);
    });
  });

  test('DR4 one vernier line meets a main line under the lens, and can be counted from a number', () => {
    each(instrument, (reading) => {
      const { lens } = laid(reading);
      const met = meeting(lens);
      // On the zero the last line of the vernier meets one as well, but it lies far off.
      expect(met).toHaveLength(1);
      const numbered = nearest(lens.vernierNumbers, met[0]!.x1);
      const gap = lens.vernier[1]!.x1 - lens.vernier[0]!.x1;
      const perTenth = instrument.unit === 'mm' ? instrument.divisions / 10 : 1;
      const line = Number(numbered.text) * perTenth + Math.round((met[0]!.x1 - numbered.x) / gap);
      expect(line).toBe(reading.divisions);
    });
  });

  test('the line that meets is not always in the middle of the lens', () => {
    const offsets = new Set<number>();
    each(instrument, (reading) => {
      const { lens } = laid(reading);
      offsets.add(Math.round(meeting(lens)[0]!.x1 - (lens.left + lens.right) / 2));
    });
    expect(offsets.size).toBeGreaterThan(2);
  });
});

describe('in words', () => {
  const deck = shippedDecks()[0]!;
  const say = makeSay(deck);
  const unit = makeUnit(deck);
  const told = (drawing: Drawing): string => {
    cleanup();
    render(<DrawingView drawing={drawing} unit={unit} say={say} />);
    return screen
      .getAllByRole('listitem')
      .map((line) => line.textContent)
      .join(' ');
  };
  const draw =
    (kind: 'dial' | 'micrometer' | 'depth-gauge', instrument: Instrument) =>
    (reading: { steps: number; divisions: number }) =>
      ({ kind, scale: scaleOf(instrument), reading }) as Drawing;

  test.each([
    [
      'dial',
      draw('dial', DIAL_MM)({ steps: 1, divisions: 12 }),
      'Small hand of the counter: between 1 and 2. Large hand: 2 divisions past 10.',
    ],
    [
      'micrometer',
      draw('micrometer', MICROMETER_MM)({ steps: 15, divisions: 39 }),
      'Uncovered on the sleeve: number 5, 2 whole-millimetre lines after it, and the half-millimetre line after the last of them. At the datum line the thimble stands 4 divisions past 35.',
    ],
    [
      'inch micrometer',
      draw('micrometer', MICROMETER_INCH)({ steps: 11, divisions: 17 }),
      'Uncovered on the sleeve: number 2, 3 lines after it. At the datum line the thimble stands 2 divisions past 15.',
    ],
    [
      'depth gauge',
      draw('depth-gauge', DEPTH_GAUGE_MM)({ steps: 63, divisions: 21 }),
      'The zero of the vernier is past the main line 3 after number 60. The vernier line that meets a main line is one line after number 4.',
    ],
  ])('%s: as far as it can be seen, and no further', (_, drawing, words) => {
    expect(told(drawing)).toContain(words);
  });

  test.each([
    ['dial', DIAL_MM],
    ['micrometer', MICROMETER_INCH],
    ['depth-gauge', DEPTH_GAUGE_MM],
  ] as const)('DR7 of a %s never say the value', (kind, instrument) => {
    fc.assert(
      fc.property(anyReading(instrument), (reading) => {
        // Below one coarse step the value is a part of the scale's own words.
        fc.pre(reading.steps > 0 && reading.divisions > 0);
        const value = valueAt(instrument, reading);
        const text = told(draw(kind, instrument)(reading));
        for (const places of [1, 2, 3]) {
          const shown = value.toFixed(places);
          if (Number(shown) !== value) continue;
          expect(text.split(/[^\d.]+/)).not.toContain(shown);
        }
      }),
      { numRuns: 15, seed: 3 },
    );
  });

  test('both faces of a move are told', () => {
    const text = told({
      kind: 'dial',
      scale: scaleOf(DIAL_MM),
      start: { steps: 0, divisions: 88 },
      reading: { steps: 1, divisions: 34 },
    });
    expect(text).toContain('between 0 and 1. Large hand: 8 divisions past 80.');
    expect(text).toContain('between 1 and 2. Large hand: 4 divisions past 30.');
    expect(screen.getAllByRole('img').map((image) => image.querySelector('title')!.textContent)).toEqual([
      'Dial indicator, Before',
      'Dial indicator, After',
    ]);
  });
});
