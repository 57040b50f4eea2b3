import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Evidence, knownAfter, mixture, SLIP_RATE } from '../../../src/core/memory/credit.ts';
import { outcomesOn } from '../../../src/core/memory/recall.ts';

/** Worked by hand from Bayes' rule with a slip rate of 0.02; the fractions are written out. */
describe('by hand', () => {
  // biome-ignore format: one row per case
  test.each<[string, Evidence, number[]]>([
    ['M5 likely known, four choices, right', { recalls: [0.9], guessRate: 0.25, right: true }, [0.882 / 0.907]],
    ['M5 likely known, four choices, wrong', { recalls: [0.9], guessRate: 0.25, right: false }, [0.018 / 0.093]],
    ['M5 likely known, typed, wrong', { recalls: [0.9], guessRate: 0, right: false }, [0.018 / 0.118]],
    ['M5 unseen, typed, right: surely known', { recalls: [0.3], guessRate: 0, right: true }, [1]],
    ['M5 unseen, four choices, right', { recalls: [0.3], guessRate: 0.25, right: true }, [0.294 / 0.469]],
    ['M5 unseen, two choices, right: even odds', { recalls: [0.3], guessRate: 0.5, right: true }, [0.294 / 0.644]],
    ['M5 unseen, four choices, wrong', { recalls: [0.3], guessRate: 0.25, right: false }, [0.006 / 0.531]],
    ['M5 asked today already, wrong: not taken for a slip', { recalls: [1], guessRate: 0, right: false }, [0.0196 / 0.0396]],
    ['M6 two facts, right', { recalls: [0.9, 0.5], guessRate: 0.25, right: true }, [0.5535 / 0.5785, 0.4535 / 0.5785]],
    ['M6 two facts, wrong: the weaker one is blamed', { recalls: [0.9, 0.5], guessRate: 0.25, right: false }, [0.3465 / 0.4215, 0.0465 / 0.4215]],
    ['M7 a named miss is a miss; the other fact did its part', { recalls: [0.9, 0.5], guessRate: 0.25, right: false, missed: [1] }, [0.882 / 0.907, 0]],
    ['M7 a named miss with one fact', { recalls: [0.98], guessRate: 0.25, right: false, missed: [0] }, [0]],
    ['M7 two slip-ups tie and name two facts: one of them failed', { recalls: [0.9, 0.5], guessRate: 0, right: false, missed: [0, 1] }, [0.45 / 0.55, 0.05 / 0.55]],
    ['M7 names count for nothing when the answer is right', { recalls: [0.9], guessRate: 0.25, right: true, missed: [0] }, [0.882 / 0.907]],
  ])('%s', (_, evidence, expected) => {
    const known = knownAfter(evidence);
    expect(known).toHaveLength(expected.length);
    for (const [i, value] of expected.entries()) expect(known[i]).toBeCloseTo(value, 10);
  });
});

const shares = fc.double({ min: 0.01, max: 0.98, noNaN: true });
const guesses = fc.double({ min: 0, max: 0.9, noNaN: true });

/** P(known) by listing every world: each fact known or not, then slip, guess or neither. */
function byListing(recalls: readonly number[], guessRate: number, right: boolean): number[] {
  const weights = recalls.map(() => 0);
  let total = 0;
  for (let world = 0; world < 2 ** recalls.length; world++) {
    const known = recalls.map((_, i) => (world & (1 << i)) !== 0);
    const chance = recalls.reduce((p, recall, i) => p * (known[i] ? recall : 1 - recall), 1);
    const rightHere = known.every(Boolean) ? 1 - SLIP_RATE : guessRate;
    const weight = chance * (right ? rightHere : 1 - rightHere);
    total += weight;
    for (const [i, isKnown] of known.entries()) if (isKnown) weights[i]! += weight;
  }
  return weights.map((weight) => weight / total);
}

describe('properties', () => {
  test('M5 M6 equals the listing of every world', () => {
    fc.assert(
      fc.property(
        fc.array(shares, { minLength: 1, maxLength: 5 }),
        guesses,
        fc.boolean(),
        (recalls, guessRate, right) => {
          const expected = byListing(recalls, guessRate, right);
          for (const [i, value] of knownAfter({ recalls, guessRate, right }).entries())
            expect(value).toBeCloseTo(expected[i]!, 9);
        },
      ),
    );
  });

  test('a right answer never speaks against a fact, a wrong one never for it', () => {
    fc.assert(
      fc.property(fc.array(shares, { minLength: 1, maxLength: 4 }), guesses, (recalls, guessRate) => {
        const knownIf = (right: boolean) => knownAfter({ recalls, guessRate, right });
        for (const [i, recall] of recalls.entries()) {
          expect(knownIf(true)[i]).toBeGreaterThanOrEqual(recall - 1e-12);
          expect(knownIf(false)[i]).toBeLessThanOrEqual(recall + 1e-12);
        }
      }),
    );
  });

  test('M7 every value is a probability, whichever facts are named', () => {
    const places = fc.uniqueArray(fc.integer({ min: 0, max: 3 }), { maxLength: 4 });
    fc.assert(
      fc.property(
        fc.array(shares, { minLength: 4, maxLength: 4 }),
        guesses,
        places,
        (recalls, guessRate, missed) => {
          for (const value of knownAfter({ recalls, guessRate, right: false, missed })) {
            expect(value).toBeGreaterThanOrEqual(0);
            expect(value).toBeLessThanOrEqual(1);
          }
        },
      ),
    );
  });
});

describe('M8 the mixture', () => {
  const outcomes = outcomesOn(undefined, 20_000);

  test('at both ends it is the outcome itself', () => {
    expect(mixture(outcomes, 1)).toEqual(outcomes.recalled);
    expect(mixture(outcomes, 0)).toEqual(outcomes.forgotten);
  });

  test('half way: √(2.3065 × 0.212) days, difficulty (2.11810397 + 6.4133) / 2', () => {
    const half = mixture(outcomes, 0.5);
    expect(half.stability).toBeCloseTo(0.69927, 5);
    expect(half.difficulty).toBeCloseTo(4.265702, 6);
  });

  test('between the ends it rises with what is known', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.99, noNaN: true }), (known) => {
        expect(mixture(outcomes, known + 0.01).stability).toBeGreaterThan(mixture(outcomes, known).stability);
      }),
    );
  });
});

describe('what is no probability is refused', () => {
  test('an answer that could not happen changes nothing', () => {
    expect(knownAfter({ recalls: [0], guessRate: 0, right: true })).toEqual([0]);
  });

  test.each([Number.NaN, -0.1, 1.1, Number.POSITIVE_INFINITY])('%d', (value) => {
    expect(() => knownAfter({ recalls: [value], guessRate: 0, right: true })).toThrow(RangeError);
    expect(() => knownAfter({ recalls: [0.5], guessRate: value, right: true })).toThrow(RangeError);
    expect(() => mixture(outcomesOn(undefined, 1), value)).toThrow(RangeError);
  });
});
