import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTypedNumber } from '../../../src/core/questions/typed-number.ts';
import { makeDecimal, makeRational, rational } from '../../../src/core/rational.ts';

describe('a number as typed with a thumb', () => {
  test.each([
    ['3.48', 3, '87/25'],
    ['3,480', 3, '87/25'],
    ['-1.8', 3, '-9/5'],
    ['−1,8', 3, '-9/5'],
    ['.659', 3, '659/1000'],
    ['-,5', 3, '-1/2'],
    ['7/2', 2, '7/2'],
    [' 2000 ', 0, '2000'],
    ['1 950', 0, '1950'],
    ['1\u202f950', 0, '1950'],
    ['1.', 0, '1'],
    ['+4', 0, '4'],
  ])('%j with %d decimals asked is %s', (text, decimals, exact) => {
    expect(readTypedNumber(text, decimals)).toBe(exact);
  });

  test('a mark before three last digits groups thousands only where whole numbers are asked', () => {
    expect(readTypedNumber('1,950', 0)).toBe('1950');
    expect(readTypedNumber('1.950', 0)).toBe('1950');
    expect(readTypedNumber('1,950', 3)).toBe('39/20');
    expect(readTypedNumber('1,5', 0)).toBe('3/2');
  });

  test.each(['', '-', '.', '1.2.3', '1,950.5', '1/0', 'about 3', '1e3', '٣', '0x10', '1 2', '--1'])(
    '%j is not a number',
    (text) => {
      expect(readTypedNumber(text, 3)).toBeNull();
    },
  );

  test('reads back every decimal it shows, with either mark', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1_000_000, max: 1_000_000 }), fc.integer({ min: 1, max: 4 }), (n, d) => {
        const value = rational(n, 10 ** d);
        const shown = makeDecimal(value, d);
        expect(readTypedNumber(shown, d)).toBe(makeRational(value));
        expect(readTypedNumber(shown.replace('.', ','), d)).toBe(makeRational(value));
      }),
    );
  });

  test('never throws on any text', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        readTypedNumber(text, 0);
      }),
    );
  });
});
