import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../src/core/random.ts';
import {
  decimalsOf,
  makeDecimal,
  makeRational,
  ONE,
  parseRational,
  rational,
  ZERO,
} from '../../src/core/rational.ts';

// Worked by hand.
const READ: readonly [text: string, fraction: string][] = [
  ['72', '72'],
  ['0', '0'],
  ['-0', '0'],
  ['+3', '3'],
  ['3.480', '87/25'],
  ['0.659', '659/1000'],
  ['-1.8', '-9/5'],
  ['8/3', '8/3'],
  ['-6/4', '-3/2'],
  ['007/14', '1/2'],
  [' 2.50 ', '5/2'],
  ['0.100000000000000000000000000001', '100000000000000000000000000001/1000000000000000000000000000000'],
];

const REFUSED = [
  '', ' ', '-', '.5', '5.', '1.2.3', '1,5', '1e3', '0x10', '1/0', '1/-2', '1.5/2', '3 1/2', '1_000', 'NaN',
  'Infinity', '٣', '1'.repeat(31),
]; // biome-ignore format: a list of odd texts

// Half goes away from zero; worked by hand.
const SHOWN: readonly [fraction: string, decimals: number, text: string][] = [
  ['2/3', 3, '0.667'],
  ['-2/3', 3, '-0.667'],
  ['1/8', 2, '0.13'],
  ['-1/8', 2, '-0.13'],
  ['5/2', 0, '3'],
  ['-5/2', 0, '-3'],
  ['87/25', 3, '3.480'],
  ['1', 3, '1.000'],
  ['1999/2000', 3, '1.000'],
  ['-1/3000', 3, '0.000'],
  ['0', 2, '0.00'],
  ['12345678901234567890/7', 1, '1763668414462081127.1'],
];

describe('reading and showing exact numbers', () => {
  test.each(READ)('reads "%s" as %s', (text, fraction) => {
    expect(makeRational(parseRational(text)!)).toBe(fraction);
  });

  test.each(REFUSED)('refuses "%s"', (text) => {
    expect(parseRational(text)).toBeNull();
  });

  test.each(SHOWN)('shows %s with %i places as %s', (fraction, decimals, text) => {
    expect(makeDecimal(parseRational(fraction)!, decimals)).toBe(text);
  });

  test.each([
    ['3.480', 3],
    ['72', 0],
    ['-1.8', 1],
    ['8/3', 0],
  ])('"%s" states %i places', (text, places) => {
    expect(decimalsOf(text)).toBe(places);
  });
});

describe('over many fractions', () => {
  const fractions = Array.from({ length: 500 }, (_, seed) => {
    const random = randomFrom(seed);
    return rational(random.int(-9999, 9999), random.int(1, 999));
  });

  test('writing and reading again gives the same fraction, in lowest terms', () => {
    for (const value of fractions) {
      const text = makeRational(value);
      expect(parseRational(text)!.equals(value)).toBe(true);
      const [n, d = '1'] = text.replace('-', '').split('/').map(Number) as [number, number?];
      const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));
      expect(n === 0 ? 1 : common(n, Number(d))).toBe(1);
    }
  });

  test('what is shown is within half a unit of the last place', () => {
    for (const value of fractions)
      for (const places of [0, 1, 3, 6]) {
        const error = parseRational(makeDecimal(value, places))!.sub(value).abs();
        expect(error.lte(rational(1n, 2n * 10n ** BigInt(places)))).toBe(true);
      }
  });

  test('sums and products agree with cross-multiplied bigints', () => {
    for (const [index, a] of fractions.entries()) {
      const b = fractions[(index + 1) % fractions.length]!;
      const sum = a.add(b);
      const product = a.mul(b);
      expect(sum.s * sum.n * a.d * b.d).toBe((a.s * a.n * b.d + b.s * b.n * a.d) * sum.d);
      expect(product.s * product.n * a.d * b.d).toBe(a.s * a.n * b.s * b.n * product.d);
    }
  });
});

describe('refusals', () => {
  test('no float is taken: neither as a part nor as the other side of a sum', () => {
    expect(() => rational(0.5)).toThrow();
    expect(() => rational(1, 0.5)).toThrow();
    // @ts-expect-error a float beside an exact number does not compile
    expect(ONE.add(0.5)).toBeDefined();
  });

  test('dividing by zero throws', () => {
    expect(() => rational(1n, 0n)).toThrow();
    expect(() => ONE.div(ZERO)).toThrow();
    expect(() => ZERO.inverse()).toThrow();
  });
});
