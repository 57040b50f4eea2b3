import { expect, test } from 'vitest';
import { minimise } from '../../../src/core/plan/minimise.ts';

test('a badly scaled convex quadratic in 30 variables is brought to its lowest point', () => {
  const centre = Float64Array.from({ length: 30 }, (_, i) => Math.sin(i));
  const at = (x: Float64Array) => {
    const gradient = x.map((value, i) => (i + 1) * (value - centre[i]!));
    return { value: gradient.reduce((sum, g, i) => sum + (g * (x[i]! - centre[i]!)) / 2, 0), gradient };
  };
  const found = minimise(at, new Float64Array(30), { evaluations: 200 });
  for (const [i, value] of found.entries()) expect(value).toBeCloseTo(centre[i]!, 6);
});

test('it never returns a worse point than the start, and stays within its evaluations', () => {
  for (const allowed of [1, 2, 3, 7, 20]) {
    let used = 0;
    const at = (x: Float64Array) => {
      used++;
      return { value: Math.cosh(x[0]! - 3), gradient: Float64Array.of(Math.sinh(x[0]! - 3)) };
    };
    const [x] = minimise(at, Float64Array.of(0), { evaluations: allowed });
    expect(Math.cosh(x! - 3)).toBeLessThanOrEqual(Math.cosh(-3));
    expect(used).toBeLessThanOrEqual(allowed);
  }
});

test('at the lowest point already, nothing moves', () => {
  const at = (x: Float64Array) => ({ value: x[0]! ** 2, gradient: Float64Array.of(2 * x[0]!) });
  expect([...minimise(at, Float64Array.of(0), { evaluations: 50 })]).toEqual([0]);
});
