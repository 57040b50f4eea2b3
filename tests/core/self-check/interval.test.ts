import normalCdf from '@stdlib/stats-base-dists-normal-cdf';
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../../src/core/random.ts';
import { change, exceedsError, wilson, Z95 } from '../../../src/core/self-check/interval.ts';

describe('Wilson’s interval for a share', () => {
  // Newcombe, Statistics in Medicine 17 (1998) 857–872, table I, method 3 (score): from memory. The formula is
  // the one that Brown, Cai and DasGupta, Statistical Science 16 (2001) 101–133, recommend for small samples.
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%d of %d is %f to %f', (right, asked, low, high) => {
    const interval = wilson(right, asked);
    expect(interval.low).toBeCloseTo(low, 4);
    expect(interval.high).toBeCloseTo(high, 4);
  });

  // Arithmetic from the formula, to two places.
  test.each([
    [8, 10, 0.49, 0.94],
    [18, 20, 0.7, 0.97],
    [29, 30, 0.83, 0.99],
  ])('%d of %d is about %f to %f', (right, asked, low, high) => {
    const interval = wilson(right, asked);
    expect(interval.low).toBeCloseTo(low, 2);
    expect(interval.high).toBeCloseTo(high, 2);
  });

  test('its ends are where the score test turns: 2.5 % beyond each, by a statistics library’s normal law', () => {
    for (let asked = 1; asked <= 60; asked += 7)
      for (let right = 0; right <= asked; right++) {
        const { low, high } = wilson(right, asked);
        const beyond = (p: number) =>
          1 - normalCdf(Math.abs(right / asked - p) / Math.sqrt((p * (1 - p)) / asked), 0, 1);
        if (right > 0) expect(beyond(low)).toBeCloseTo(0.025, 9);
        if (right < asked) expect(beyond(high)).toBeCloseTo(0.025, 9);
      }
    expect(normalCdf(Z95, 0, 1)).toBeCloseTo(0.975, 12);
  });

  test('it holds the truth in about 95 of 100 samples, whatever the truth', () => {
    const random = randomFrom(11);
    for (const truth of [0.1, 0.3, 0.5, 0.75, 0.9]) {
      let held = 0;
      const samples = 4000;
      for (let sample = 0; sample < samples; sample++) {
        let right = 0;
        for (let question = 0; question < 25; question++) if (random.unit() < truth) right++;
        const { low, high } = wilson(right, 25);
        if (low <= truth && truth <= high) held++;
      }
      expect(held / samples).toBeGreaterThan(0.92);
      expect(held / samples).toBeLessThan(0.985);
    }
  });

  test('nothing asked says nothing; all or none right touches the edge', () => {
    expect(wilson(0, 0)).toEqual({ low: 0, high: 1 });
    expect(wilson(5, 5).high).toBe(1);
    expect(wilson(0, 5).low).toBe(0);
  });
});

describe('the change between two checks', () => {
  // Newcombe, Statistics in Medicine 17 (1998) 873–890, table II (a), method 10: 56/70 − 48/80 = 0.2 with
  // 0.0524 to 0.3339; (b) 9/10 − 3/10 = 0.6 with 0.1705 to 0.8090. From memory.
  test.each([
    [{ right: 48, asked: 80 }, { right: 56, asked: 70 }, 0.0524, 0.3339],
    [{ right: 3, asked: 10 }, { right: 9, asked: 10 }, 0.1705, 0.809],
  ])('%j then %j', (first, second, low, high) => {
    const rise = change(first, second);
    expect(rise.low).toBeCloseTo(low, 4);
    expect(rise.high).toBeCloseTo(high, 4);
    expect(exceedsError(rise)).toBe(true);
  });

  test('the same person twice is called changed in about 5 of 100 pairs', () => {
    const random = randomFrom(12);
    let called = 0;
    const pairs = 4000;
    const draw = () => {
      let right = 0;
      for (let question = 0; question < 40; question++) if (random.unit() < 0.7) right++;
      return { right, asked: 40 };
    };
    for (let pair = 0; pair < pairs; pair++) if (exceedsError(change(draw(), draw()))) called++;
    expect(called / pairs).toBeLessThan(0.07);
  });
});
