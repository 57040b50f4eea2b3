import { describe, expect, test } from 'vitest';
import { cosine, exponential, PI, squareRoot } from '../../src/core/inexact.ts';
import { makeDecimal, type Rational, rational } from '../../src/core/rational.ts';

// Digits from mathematical tables, from memory.
describe('against tables, to 12 significant digits', () => {
  test.each<[what: string, value: Rational, decimals: number, digits: string]>([
    ['pi', PI, 14, '3.14159265358979'],
    ['cos 45°', cosine(rational(45)), 12, '0.707106781187'],
    ['cos 30°', cosine(rational(30)), 12, '0.866025403784'],
    ['cos 150°', cosine(rational(150)), 12, '-0.866025403784'],
    ['e', exponential(rational(1)), 11, '2.71828182846'],
    ['1 / e', exponential(rational(-1)), 12, '0.367879441171'],
    ['e to the 10th', exponential(rational(10)), 7, '22026.4657948'],
    ['root of 2', squareRoot(rational(2)), 11, '1.41421356237'],
    ['root of 0', squareRoot(rational(0)), 0, '0'],
  ])('%s', (_, value, decimals, digits) => {
    expect(makeDecimal(value, decimals)).toBe(digits);
  });
});

test('cosines that are fractions are exact', () => {
  const fractions = [0, 60, 90, 120, 180].map((degrees) => cosine(rational(degrees)).toFraction());
  expect(fractions).toEqual(['1', '1/2', '0', '-1/2', '-1']);
  expect(squareRoot(rational(225, 100)).toFraction()).toBe('3/2');
});
