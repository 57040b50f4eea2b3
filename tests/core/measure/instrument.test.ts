import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  DEPTH_GAUGE_INCH,
  DEPTH_GAUGE_MM,
  DIAL_INCH,
  DIAL_MM,
  type Instrument,
  MICROMETER_INCH,
  MICROMETER_MM,
  nearestDivision,
  reachOf,
  readingAt,
  stepOf,
  travelBetween,
  valueShown,
} from '../../../src/core/measure/instrument.ts';
import { rational } from '../../../src/core/rational.ts';
import { exact, given, refusal } from '../../results.ts';

const ALL = [DIAL_MM, DIAL_INCH, MICROMETER_MM, MICROMETER_INCH, DEPTH_GAUGE_MM, DEPTH_GAUGE_INCH];

describe('readings and values', () => {
  test.each<[title: string, instrument: Instrument, steps: number, divisions: number, value: string]>([
    ['dial, mm: past zero once, then 12 (arithmetic)', DIAL_MM, 1, 12, '1.12'],
    ['dial, mm: less than a turn (arithmetic)', DIAL_MM, 0, 12, '0.12'],
    ['dial, inch: a turn is 0.100 (arithmetic)', DIAL_INCH, 2, 34, '0.234'],
    [
      'micrometer, mm: 5 and a half on the sleeve, 28 on the thimble (textbook example, from memory)',
      MICROMETER_MM,
      11,
      28,
      '5.78',
    ],
    [
      'micrometer, inch: 0.200 and three lines, 1 on the thimble (textbook example, from memory)',
      MICROMETER_INCH,
      11,
      1,
      '0.276',
    ],
    ['depth gauge, mm: 63 on the main scale, line 21 (arithmetic)', DEPTH_GAUGE_MM, 63, 21, '63.42'],
    ['depth gauge, inch: 2.450 on the main scale, line 7 (arithmetic)', DEPTH_GAUGE_INCH, 98, 7, '2.457'],
  ])('%s', (_, instrument, steps, divisions, value) => {
    expect(given(valueShown(instrument, { steps, divisions })).toFraction()).toBe(exact(value).toFraction());
    expect(readingAt(instrument, exact(value))).toEqual({ ok: true, value: { steps, divisions } });
  });

  test.each<[Instrument, step: string, reach: string]>([
    // as the instruments are usually made, from memory
    [DIAL_MM, '1', '10'],
    [DIAL_INCH, '0.1', '1'],
    [MICROMETER_MM, '0.5', '25'],
    [MICROMETER_INCH, '0.025', '1'],
    [DEPTH_GAUGE_MM, '1', '200'],
    [DEPTH_GAUGE_INCH, '0.025', '8'],
  ])('$kind in $unit: one step and the whole scale', (instrument, step, reach) => {
    expect(stepOf(instrument).equals(exact(step))).toBe(true);
    expect(reachOf(instrument).equals(exact(reach))).toBe(true);
  });

  test('what is shown is read back, on every instrument', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ALL), fc.nat(), fc.nat(), (instrument, s, d) => {
        const reading = { steps: s % instrument.steps, divisions: d % instrument.divisions };
        expect(given(readingAt(instrument, given(valueShown(instrument, reading))))).toEqual(reading);
      }),
    );
  });

  test('a dial that was not zeroed: later less earlier (arithmetic)', () => {
    const travel = travelBetween(DIAL_MM, { steps: 2, divisions: 85 }, { steps: 3, divisions: 30 });
    expect(given(travel).toFraction()).toBe('9/20');
  });

  test('between two lines the nearer is read, a half going up (by hand)', () => {
    const nearest = (value: string) => nearestDivision(DIAL_MM, exact(value)).toFraction();
    expect(['0.124', '0.125', '0.126'].map(nearest)).toEqual(['3/25', '13/100', '13/100']);
  });
});

describe('refused: readings no such instrument can show', () => {
  test.each<[title: string, instrument: Instrument, steps: number, divisions: number, code: string]>([
    ['a full turn counted as divisions', DIAL_MM, 0, 100, 'divisions-off-scale'],
    ['a half division', MICROMETER_MM, 0, 0.5, 'divisions-off-scale'],
    ['beyond the thimble', MICROMETER_INCH, 0, 25, 'divisions-off-scale'],
    ['below zero', DIAL_MM, 0, -1, 'divisions-off-scale'],
    ['more turns than the dial has', DIAL_MM, 11, 0, 'steps-off-scale'],
    ['past the end of the sleeve', MICROMETER_MM, 50, 1, 'steps-off-scale'],
  ])('%s', (_, instrument, steps, divisions, code) => {
    expect(refusal(valueShown(instrument, { steps, divisions }))).toBe(code);
    expect(refusal(travelBetween(instrument, { steps: 0, divisions: 0 }, { steps, divisions }))).toBe(code);
  });

  test('values off the scale or between its lines', () => {
    expect(refusal(readingAt(MICROMETER_MM, exact('25.01')))).toBe('value-off-scale');
    expect(refusal(readingAt(DIAL_MM, rational(-1, 100)))).toBe('value-off-scale');
    expect(refusal(readingAt(DIAL_MM, exact('0.125')))).toBe('between-divisions');
    expect(refusal(readingAt(MICROMETER_MM, exact('25')))).toBeNull();
  });
});
