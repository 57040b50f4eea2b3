import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  calculatorFor,
  daysBetween,
  type MemoryState,
  outcomesOn,
  recallAfter,
  recallOn,
  WEIGHTS,
} from '../../../src/core/memory/recall.ts';

const DAY = 20_000;
const stabilities = fc.double({ min: 0.01, max: 3000, noNaN: true });
const states = fc.record({
  stability: stabilities,
  difficulty: fc.double({ min: 1, max: 10, noNaN: true }),
  lastDay: fc.constant(DAY),
});

describe('M3 the curve', () => {
  test('is 1 on the day itself and 0.9 after as many days as the stability', () => {
    fc.assert(
      fc.property(stabilities, (stability) => {
        expect(recallAfter(stability, 0)).toBe(1);
        expect(recallAfter(stability, stability)).toBeCloseTo(0.9, 7);
      }),
    );
  });

  test('is the published closed form, worked out here on its own', () => {
    // R = (1 + F t / S)^(-w20), F = 0.9^(-1/w20) - 1, with w20 = 0.1542
    const factor = 0.9 ** (-1 / 0.1542) - 1;
    fc.assert(
      fc.property(stabilities, fc.integer({ min: 0, max: 4000 }), (stability, days) => {
        expect(recallAfter(stability, days)).toBeCloseTo((1 + (factor * days) / stability) ** -0.1542, 7);
      }),
    );
  });

  test('falls with days and rises with stability, and never leaves 0 to 1', () => {
    fc.assert(
      fc.property(stabilities, fc.integer({ min: 0, max: 4000 }), (stability, days) => {
        const now = recallAfter(stability, days);
        expect(recallAfter(stability, days + 1)).toBeLessThanOrEqual(now);
        expect(recallAfter(stability * 2, days)).toBeGreaterThanOrEqual(now);
        expect(now).toBeGreaterThan(0);
        expect(now).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('a first answer that was wrong is still worth something for weeks: 0.77, 0.58, 0.49, 0.42', () => {
    // Worked from the closed form with S = w0 = 0.212.
    const { forgotten } = outcomesOn(undefined, DAY);
    const after = [1, 7, 21, 60].map((days) => recallOn(forgotten, DAY + days));
    expect(after.map((share) => share.toFixed(2))).toEqual(['0.77', '0.58', '0.49', '0.42']);
  });
});

describe('M4 two outcomes', () => {
  test('recalled is never worse than forgotten, and recall never shortens a memory', () => {
    fc.assert(
      fc.property(states, fc.integer({ min: 0, max: 1000 }), (state, days) => {
        const { recalled, forgotten } = outcomesOn(state, DAY + days);
        expect(recalled.stability).toBeGreaterThanOrEqual(forgotten.stability);
        expect(recalled.stability).toBeGreaterThanOrEqual(state.stability - 1e-8);
        expect(forgotten.stability).toBeLessThanOrEqual(state.stability);
        expect(recalled.difficulty).toBeLessThanOrEqual(forgotten.difficulty);
        expect(recalled.lastDay).toBe(DAY + days);
      }),
    );
  });

  test('a clock set back counts as the same day and does not move the last day back', () => {
    fc.assert(
      fc.property(states, fc.integer({ min: 0, max: 1000 }), (state, days) => {
        expect(outcomesOn(state, DAY - days)).toEqual(outcomesOn(state, DAY));
        expect(recallOn(state, DAY - days)).toBe(1);
      }),
    );
  });

  test('the state given is left as it was', () => {
    const state: MemoryState = Object.freeze({ stability: 3, difficulty: 5, lastDay: DAY });
    outcomesOn(state, DAY + 3);
    expect(state).toEqual({ stability: 3, difficulty: 5, lastDay: DAY });
  });
});

describe('what the calculator would take in silence is refused', () => {
  const state: MemoryState = { stability: 3, difficulty: 5, lastDay: DAY };
  test.each([
    ['NaN as a day', () => recallOn(state, Number.NaN)],
    ['a part of a day', () => outcomesOn(state, DAY + 0.3)],
    ['an endless day', () => daysBetween(DAY, Number.POSITIVE_INFINITY)],
    ['a last day that is none', () => outcomesOn({ ...state, lastDay: Number.NaN }, DAY)],
    ['no stability', () => outcomesOn({ ...state, stability: 0 }, DAY)],
    ['NaN as stability', () => recallOn({ ...state, stability: Number.NaN }, DAY)],
    ['NaN as difficulty', () => outcomesOn({ ...state, difficulty: Number.NaN }, DAY)],
    ['difficulty below 1', () => outcomesOn({ ...state, difficulty: 0 }, DAY)],
    ['negative days on the curve', () => recallAfter(3, -1)],
    ['20 weights', () => calculatorFor(WEIGHTS.slice(1))],
    ['19 weights of the model before', () => calculatorFor(WEIGHTS.slice(2))],
    ['a weight that is no number', () => calculatorFor([Number.NaN, ...WEIGHTS.slice(1)])],
  ])('%s', (_, act) => {
    expect(act).toThrow(RangeError);
  });
});
