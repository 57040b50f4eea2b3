import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeDecimal } from '../../../src/core/rational.ts';
import {
  convert,
  convertDifference,
  decimalsFor,
  printedAlike,
  show,
} from '../../../src/core/units/convert.ts';
import { amountOf, makeQuantity, parseQuantity, parseUnit } from '../../../src/core/units/quantity.ts';
import { UNITS, type UnitSymbol } from '../../../src/core/units/units.ts';
import { exact, given, refusal } from '../../results.ts';

const SYMBOLS = Object.keys(UNITS) as UnitSymbol[];

describe('reading what people write', () => {
  test.each<[text: string, value: string, unit: UnitSymbol]>([
    ['0.15 mm', '0.15', 'mm'],
    ['0.15mm', '0.15', 'mm'],
    ['12 ft-lb', '12', 'lbf·ft'],
    ['12 in-lbs', '12', 'lbf·in'],
    ['25 Nm', '25', 'N·m'],
    ['25 N·m', '25', 'N·m'],
    ['-40°F', '-40', '°F'],
    ['80 ℃', '80', '°C'],
    ['1/16 in', '1/16', 'in'],
    ['0.010"', '0.010', 'in'],
    ['4.0 kg/cm2', '4.0', 'kgf/cm²'],
    ['8  US  qt', '8', 'US qt'],
    ['11 \u2126', '11', 'Ω'],
    ['11 ohms', '11', 'Ω'],
    ['3.5 kΩ', '3.5', 'kΩ'],
    ['60 PSI', '60', 'psi'],
  ])('%s', (text, value, unit) => {
    expect(parseQuantity(text)).toEqual({ ok: true, value: { value, unit } });
  });

  test.each([
    ['twelve N·m', 'number-unreadable'],
    ['', 'number-unreadable'],
    ['1,5 mm', 'number-unreadable'],
    ['1.2.3 mm', 'number-unreadable'],
    ['3/0 mm', 'number-unreadable'],
    ['12', 'unit-unknown'],
    ['12 furlongs', 'unit-unknown'],
    ['12 mpa', 'unit-unknown'],
    ['8 qt', 'unit-ambiguous'],
    ['40 lbs', 'unit-ambiguous'],
  ])('refused: "%s" is %s', (text, code) => {
    expect(refusal(parseQuantity(text))).toBe(code);
  });

  test('what cannot be read is quoted: the figure, or all of it', () => {
    const textOf = (text: string) => {
      const result = parseQuantity(text);
      return result.ok ? null : result.error.text;
    };
    expect([textOf('1.2.3 mm'), textOf('twelve N·m'), textOf('12 furlongs')]).toEqual([
      '1.2.3',
      'twelve N·m',
      'furlongs',
    ]);
  });

  test('a quart names both quarts it may be', () => {
    expect(parseUnit('quarts')).toEqual({
      ok: false,
      error: { code: 'unit-ambiguous', text: 'quarts', among: ['US qt', 'imp qt'] },
    });
  });

  test('what is made is read back as it was, figure and all', () => {
    const value = fc
      .tuple(fc.integer({ min: -999, max: 999_999 }), fc.stringMatching(/^(\.\d{1,6}|\/[1-9]\d{0,3}|)$/))
      .map(([whole, rest]) => `${whole}${rest}`);
    fc.assert(
      fc.property(value, fc.constantFrom(...SYMBOLS), (text, unit) => {
        const quantity = { value: text, unit };
        expect(parseQuantity(makeQuantity(quantity))).toEqual({ ok: true, value: quantity });
      }),
    );
  });

  test('the amount is exact', () => {
    expect(given(amountOf({ value: '0.1', unit: 'mm' })).toFraction()).toBe('1/10');
    expect(refusal(amountOf({ value: '0,1', unit: 'mm' }))).toBe('number-unreadable');
  });
});

describe('what is shown', () => {
  // arithmetic from the exact factors
  test.each<
    [value: string, from: UnitSymbol, to: UnitSymbol, decimals: number, shown: string, rounded: boolean]
  >([
    ['0.15', 'mm', 'in', 3, '0.006', true],
    ['0.005', 'in', 'mm', 3, '0.127', false],
    ['0.005', 'in', 'mm', 2, '0.13', true],
    ['392', 'kPa', 'psi', 0, '57', true],
    ['80', '°C', '°F', 0, '176', false],
    ['12', 'lbf·ft', 'lbf·in', 0, '144', false],
  ])('%s %s in %s with %d places', (value, unit, to, decimals, shown, rounded) => {
    expect(show({ value, unit }, to, decimals)).toEqual({
      ok: true,
      value: { value: shown, unit: to, rounded },
    });
  });

  test.each<[value: string, from: UnitSymbol, to: UnitSymbol, decimals: number]>([
    ['0.15', 'mm', 'in', 4],
    ['0.005', 'in', 'mm', 2],
    ['25', 'N·m', 'lbf·ft', 1],
    ['12', 'lbf·ft', 'N·m', 0],
    ['250', 'psi', 'kPa', 0],
    ['0.15', 'mm', 'mm', 2],
    ['250', 'kPa', 'psi', 1],
  ])('%s %s in %s needs places so as not to be coarser: %d (worked by hand)', (value, unit, to, decimals) => {
    expect(decimalsFor({ value, unit }, to)).toEqual({ ok: true, value: decimals });
  });

  test('a step or tolerance only stretches', () => {
    expect(given(convertDifference(exact('9'), '°F', '°C')).toFraction()).toBe('5');
    expect(refusal(convertDifference(exact('9'), '°F', 'V'))).toBe('kinds-differ');
  });
});

describe('one value printed in two units, each column rounded by itself', () => {
  test.each<[one: string, other: string, alike: boolean, source: string]>([
    ['392 kPa', '57 psi', true, 'Toyota underdrive page'],
    ['392 kPa', '4.0 kgf/cm²', true, 'Toyota underdrive page'],
    ['186 kPa', '1.9 kgf/cm²', true, 'Toyota direct-clutch page'],
    ['186 kPa', '27 psi', true, 'Toyota direct-clutch page'],
    ['206 kPa', '30 psi', true, 'Toyota direct-clutch page'],
    ['206 kPa', '2.1 kgf/cm²', true, 'Toyota direct-clutch page'],
    ['0.14 mm', '0.006 in', true, 'Honda thrust clearance; arithmetic'],
    ['0.21 mm', '0.008 in', true, 'Honda thrust clearance; arithmetic'],
    ['0.21 mm', '0.006 in', false, 'the wrong end of the same band'],
    ['12 lbf·ft', '12 N·m', false, 'arithmetic'],
    ['1/8 in', '3.2 mm', true, 'arithmetic: 3.175'],
    ['1/8 in', '3.3 mm', false, 'arithmetic'],
  ])('%s and %s: %s (%s)', (one, other, alike) => {
    const [a, b] = [given(parseQuantity(one)), given(parseQuantity(other))];
    expect(printedAlike(a, b)).toEqual({ ok: true, value: alike });
    expect(printedAlike(b, a)).toEqual({ ok: true, value: alike });
  });

  test('0.006–0.008 in is not 0.14–0.21 mm to the third decimal: a reading is judged in its own column', () => {
    const inMm = (inches: string) => makeDecimal(given(convert(exact(inches), 'in', 'mm')), 4);
    expect([inMm('0.006'), inMm('0.008')]).toEqual(['0.1524', '0.2032']);
    const reading = exact('0.145');
    expect(reading.gte(exact('0.14'))).toBe(true);
    expect(reading.gte(exact(inMm('0.006')))).toBe(false);
  });
});
