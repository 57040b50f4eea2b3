import fc from 'fast-check';
import { create, unitDependencies } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { makeDecimal, type Rational, rational } from '../../../src/core/rational.ts';
import { convert } from '../../../src/core/units/convert.ts';
import { compatible, KINDS, kindOf, UNITS, type UnitSymbol, unitsOf } from '../../../src/core/units/units.ts';
import { exact, given, refusal } from '../../results.ts';

const SYMBOLS = Object.keys(UNITS) as UnitSymbol[];

const converted = (value: string, from: UnitSymbol, to: UnitSymbol): Rational =>
  given(convert(exact(value), from, to));

/** Rounded to as many places as the expected text states. */
const shownLike = (expected: string, value: Rational) =>
  makeDecimal(value, expected.split('.')[1]?.length ?? 0);

describe('factors that are exact by definition', () => {
  test.each<[from: UnitSymbol, to: UnitSymbol, factor: string, source: string]>([
    ['in', 'mm', '25.4', 'NIST SP 811 App. B, inch of 1959; from memory'],
    ['ft', 'm', '0.3048', 'NIST SP 811 App. B; from memory'],
    ['lb', 'kg', '0.45359237', 'NIST SP 811 App. B; from memory'],
    ['kgf', 'N', '9.80665', 'standard gravity; from memory'],
    ['lbf', 'N', '4.4482216152605', 'product of pound and standard gravity; a public unit test asserts it'],
    ['lbf·ft', 'N·m', '1.3558179483314004', 'arithmetic: lbf × 0.3048 m'],
    ['kgf·m', 'N·m', '9.80665', 'quoted second-hand from NIST'],
    ['bar', 'kPa', '100', 'NIST SP 811; from memory'],
    ['kgf/cm²', 'kPa', '98.0665', 'quoted second-hand from NIST'],
    ['US qt', 'L', '0.946352946', 'arithmetic: 231 in³ / 4'],
    ['imp qt', 'L', '1.1365225', 'imperial gallon 4.54609 L, from memory; a quarter of it'],
    ['lbf·ft', 'lbf·in', '12', 'arithmetic'],
  ])('1 %s is exactly this many %s: %s (%s)', (from, to, factor) => {
    expect(converted('1', from, to).toFraction()).toBe(exact(factor).toFraction());
  });

  test.each<[from: UnitSymbol, to: UnitSymbol, printed: string, source: string]>([
    ['lbf·ft', 'N·m', '1.355818', 'NIST SP 811, quoted second-hand'],
    ['lbf·in', 'N·m', '0.1129848', 'NIST SP 811, quoted second-hand'],
    ['lbf·in', 'N·m', '0.1129848290276167', 'arithmetic: lbf × 25.4 mm'],
    ['psi', 'kPa', '6.894757', 'NIST SP 811; from memory'],
    ['psi', 'kPa', '6.894757293168361', 'arithmetic: lbf / in²'],
  ])('1 %s in %s as printed: %s (%s)', (from, to, printed) => {
    expect(shownLike(printed, converted('1', from, to))).toBe(printed);
  });
});

describe('values, by arithmetic from the exact factors', () => {
  test.each<[value: string, from: UnitSymbol, expected: string, to: UnitSymbol]>([
    ['8', 'N·m', '5.900497', 'lbf·ft'],
    ['8', 'N·m', '70.805966', 'lbf·in'],
    ['10', 'N·m', '7.375621', 'lbf·ft'],
    ['10', 'N·m', '88.507458', 'lbf·in'],
    ['12', 'N·m', '8.850746', 'lbf·ft'],
    ['12', 'N·m', '106.208949', 'lbf·in'],
    ['25', 'N·m', '18.439054', 'lbf·ft'],
    ['50', 'N·m', '36.878107', 'lbf·ft'],
    ['100', 'N·m', '73.756215', 'lbf·ft'],
    ['7', 'lbf·ft', '9.490726', 'N·m'],
    ['12', 'lbf·ft', '16.269815', 'N·m'],
    ['25', 'lbf·ft', '33.895449', 'N·m'],
    ['100', 'lbf·ft', '135.581795', 'N·m'],
    ['30', 'psi', '206.842719', 'kPa'],
    ['30', 'psi', '2.068427', 'bar'],
    ['40', 'psi', '275.790292', 'kPa'],
    ['40', 'psi', '2.757903', 'bar'],
    ['60', 'psi', '413.685438', 'kPa'],
    ['100', 'psi', '689.475729', 'kPa'],
    ['100', 'psi', '6.894757', 'bar'],
    ['150', 'psi', '1034.213594', 'kPa'],
    ['250', 'psi', '1723.689323', 'kPa'],
    ['1', 'bar', '14.5037738', 'psi'],
    ['5', 'bar', '72.518869', 'psi'],
    ['10', 'bar', '145.037738', 'psi'],
    ['20', 'bar', '290.075475', 'psi'],
    ['0.001', 'in', '0.0254', 'mm'],
    ['0.005', 'in', '0.127', 'mm'],
    ['0.010', 'in', '0.254', 'mm'],
    ['0.015', 'in', '0.381', 'mm'],
    ['0.030', 'in', '0.762', 'mm'],
    ['0.060', 'in', '1.524', 'mm'],
    ['0.100', 'in', '2.54', 'mm'],
    ['0.05', 'mm', '0.001969', 'in'],
    ['0.14', 'mm', '0.005512', 'in'],
    ['0.21', 'mm', '0.008268', 'in'],
    ['0.50', 'mm', '0.019685', 'in'],
    ['1.0', 'mm', '0.039370', 'in'],
    ['1.5', 'mm', '0.059055', 'in'],
    ['-40', '°F', '-40', '°C'],
    ['0', '°F', '-17.778', '°C'],
    ['32', '°F', '0', '°C'],
    ['68', '°F', '20', '°C'],
    ['175', '°F', '79.444', '°C'],
    ['200', '°F', '93.333', '°C'],
    ['250', '°F', '121.111', '°C'],
    ['275', '°F', '135', '°C'],
    ['65', '°C', '149', '°F'],
    ['80', '°C', '176', '°F'],
    ['90', '°C', '194', '°F'],
    ['120', '°C', '248', '°F'],
    ['1', 'US qt', '0.946353', 'L'],
    ['8', 'US qt', '7.570824', 'L'],
    ['1', 'L', '1.056688', 'US qt'],
    // Toyota direct-clutch page: 186-206 kPa = 1.9-2.1 kgf/cm² = 27-30 psi
    ['1.9', 'kgf/cm²', '186.33', 'kPa'],
    ['1.9', 'kgf/cm²', '27.02', 'psi'],
    ['2.1', 'kgf/cm²', '205.94', 'kPa'],
    ['2.1', 'kgf/cm²', '29.87', 'psi'],
    // Toyota underdrive page: 392 kPa = 4.0 kgf/cm² = 57 psi
    ['4.0', 'kgf/cm²', '392.27', 'kPa'],
    ['4.0', 'kgf/cm²', '56.89', 'psi'],
  ])('%s %s is %s %s', (value, from, expected, to) => {
    expect(shownLike(expected, converted(value, from, to))).toBe(expected);
  });
});

describe('another library', () => {
  const math = create(unitDependencies!);
  test.each<[UnitSymbol, string, UnitSymbol, string]>([
    ['in', 'inch', 'mm', 'mm'],
    ['ft', 'ft', 'm', 'm'],
    ['in²', 'inch^2', 'mm²', 'mm^2'],
    ['lb', 'lbm', 'kg', 'kg'],
    ['lbf', 'lbf', 'N', 'N'],
    ['lbf·ft', 'lbf ft', 'N·m', 'N m'],
    ['lbf·in', 'lbf inch', 'N·m', 'N m'],
    ['psi', 'psi', 'kPa', 'kPa'],
    ['bar', 'bar', 'kPa', 'kPa'],
    ['°F', 'degF', '°C', 'degC'],
  ])('mathjs agrees on %s', (from, theirs, to, target) => {
    for (const value of [1, 7, 40, 250]) {
      const expected = math.unit(value, theirs).toNumber(target);
      expect(converted(String(value), from, to).valueOf()).toBeCloseTo(expected, 6);
    }
  });
});

describe('traps of the trade', () => {
  test('12 lbf·in set as 12 lbf·ft is twelve times the torque, exactly', () => {
    const asked = converted('12', 'lbf·in', 'N·m');
    expect(converted('12', 'lbf·ft', 'N·m').div(asked).toFraction()).toBe('12');
  });
});

describe('over all units', () => {
  const unit = fc.constantFrom(...SYMBOLS);
  const amount = fc.tuple(fc.bigInt(-200_000n, 10n ** 9n), fc.bigInt(1n, 10_000n));
  const pair = unit.chain((from) => fc.tuple(fc.constant(from), fc.constantFrom(...unitsOf(kindOf(from)))));

  test('there and back gives the same number, and a stop on the way changes nothing', () => {
    fc.assert(
      fc.property(pair, amount, fc.nat(), ([from, to], [n, d], at) => {
        const value = rational(n, d);
        const out = convert(value, from, to);
        if (!out.ok) return out.error.code === 'below-absolute-zero';
        const back = convert(out.value, to, from);
        const via = unitsOf(kindOf(from))[at % unitsOf(kindOf(from)).length]!;
        const stop = convert(value, from, via);
        const onward = convert(given(stop), via, to);
        return given(back).equals(value) && given(onward).equals(out.value);
      }),
    );
  });

  test('every kind has a unit, and only units of one kind convert', () => {
    for (const kind of KINDS) expect(unitsOf(kind).length).toBeGreaterThan(0);
    for (const from of SYMBOLS)
      for (const to of SYMBOLS) expect(convert(rational(300), from, to).ok).toBe(compatible(from, to));
  });
});

test('refused: other kinds, and colder than can be', () => {
  const code = (value: string, from: UnitSymbol, to: UnitSymbol) => refusal(convert(exact(value), from, to));
  expect(code('1', 'rpm', 'Hz')).toBe('kinds-differ');
  expect(code('1', 'lb', 'lbf')).toBe('kinds-differ');
  expect(code('-273.16', '°C', '°F')).toBe('below-absolute-zero');
  expect(code('-459.67', '°F', '°C')).toBeNull();
  expect(code('-459.68', '°F', '°F')).toBe('below-absolute-zero');
});
