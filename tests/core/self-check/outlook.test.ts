import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../../src/core/random.ts';
import { chanceToReach, nextScores } from '../../../src/core/self-check/outlook.ts';

describe('what the next check would give', () => {
  test('the chances of all scores add to 1', () => {
    for (const asked of [0, 1, 7, 40])
      for (let right = 0; right <= asked; right++)
        expect(nextScores({ right, asked }, 20).reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 9);
  });

  // By hand: prior Beta(½, ½), one question: P(right) = (r + ½) / (n + 1).
  test.each([
    [0, 0, 0.5],
    [1, 1, 0.75],
    [7, 9, 0.75],
  ])('%d of %d: one more question is right with %f', (right, asked, chance) => {
    expect(nextScores({ right, asked }, 1)[1]).toBeCloseTo(chance, 10);
  });

  test('areas add up as independent: two of one question each', () => {
    const areas = [
      { right: 1, asked: 1 },
      { right: 0, asked: 1 },
    ];
    expect(chanceToReach(areas, 1)).toBeCloseTo(0.75 * 0.25, 10);
    expect(chanceToReach(areas, 0.5)).toBeCloseTo(1 - 0.25 * 0.75, 10);
    expect(chanceToReach(areas, 0.01)).toBeCloseTo(chanceToReach(areas, 0.5), 10);
  });

  test('said and kept: over people with known truth, the stated chance is how often the next check reaches', () => {
    const random = randomFrom(5);
    const bins = new Map<number, { said: number; kept: number; times: number }>();
    const sizes = [14, 8, 10, 8];
    for (let person = 0; person < 6000; person++) {
      // Truth of each area from the prior itself: Beta(½, ½) is sin² of a uniform angle.
      const truths = sizes.map(() => Math.sin((random.unit() * Math.PI) / 2) ** 2);
      const sit = () =>
        sizes.map((asked, area) => {
          let right = 0;
          for (let question = 0; question < asked; question++) if (random.unit() < truths[area]!) right++;
          return { right, asked };
        });
      const said = chanceToReach(sit(), 0.6);
      const right = sit().reduce((sum, score) => sum + score.right, 0);
      const bin = Math.min(4, Math.floor(said * 5));
      const held = bins.get(bin) ?? { said: 0, kept: 0, times: 0 };
      held.said += said;
      held.kept += right >= 24 ? 1 : 0;
      held.times++;
      bins.set(bin, held);
    }
    for (const { said, kept, times } of bins.values())
      expect(Math.abs(said - kept) / times).toBeLessThan(3 * Math.sqrt(0.25 / times) + 0.005);
  });
});
