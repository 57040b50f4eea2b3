import { describe, expect, test } from 'vitest';
import type { Attempt } from '../../../src/core/memory/attempt.ts';
import { qualityOf } from '../../../src/core/quality/quality.ts';
import { randomFrom } from '../../../src/core/random.ts';

const attempt = (person: string, family: string, nth: number, right: boolean): Attempt => ({
  id: `${person}-${family}-${nth}`,
  deck: 'd',
  revision: 1,
  family,
  fact: `${family}/${nth}`,
  seed: nth,
  facts: [`${family}/${nth}`],
  form: 'set',
  guessRate: 0,
  answer: { form: 'set', picks: [] },
  right,
  slipUps: [],
  missed: [],
  seconds: 5,
  interrupted: false,
  at: nth,
  day: 0,
  zone: 'UTC',
  device: person,
  sequence: nth + 1,
  drill: 'x',
});

/** People who know 20 to 95 %; "fair" follows what they know, "coin" does not, "twisted" punishes knowing. */
function logOf(people: number, perFamily: number) {
  const random = randomFrom(3);
  const chance: Record<string, (knows: number) => number> = {
    fair: (knows) => knows,
    also: (knows) => knows,
    hard: (knows) => knows / 3,
    coin: () => 0.5,
    twisted: (knows) => 1 - knows,
  };
  const log = new Map<string, Attempt[]>();
  for (let p = 0; p < people; p++) {
    const knows = 0.2 + (0.75 * p) / people;
    const own: Attempt[] = [];
    for (const [family, likely] of Object.entries(chance))
      for (let nth = 0; nth < perFamily; nth++)
        own.push(attempt(`p${p}`, family, nth, random.unit() < likely(knows)));
    log.set(`p${p}`, own);
  }
  return log;
}

describe('how well families measure', () => {
  const found = new Map(qualityOf(logOf(60, 8)).map((quality) => [quality.family, quality]));

  test('a family that follows what people know discriminates; one that punishes it is shown as misleading', () => {
    expect(found.get('fair')!.discrimination).toBeGreaterThan(0.15);
    expect(found.get('hard')!.discrimination).toBeGreaterThan(0.05);
    expect(Math.abs(found.get('coin')!.discrimination!)).toBeLessThan(0.12);
    expect(found.get('twisted')!.discrimination).toBeLessThan(-0.15);
    expect(found.get('twisted')!.misleads).toBe(true);
    expect(found.get('fair')!.misleads).toBe(false);
    expect([...found.keys()][0]).toBe('twisted');
  });

  test('difficulty is the share not right', () => {
    expect(found.get('fair')!.difficulty).toBeCloseTo(1 - 0.57, 1);
    expect(found.get('hard')!.difficulty).toBeCloseTo(1 - 0.57 / 3, 1);
    expect(found.get('fair')!).toMatchObject({ answers: 480, people: 60 });
  });

  test('with too few answers or people nothing is said', () => {
    expect(qualityOf(logOf(9, 8))).toEqual([]);
    expect(qualityOf(logOf(20, 1))).toEqual([]);
    expect(qualityOf(new Map())).toEqual([]);
  });

  test('the second answer to a fact does not count, and a merged log counts once', () => {
    const log = logOf(60, 8);
    const again = new Map(
      [...log].map(([person, own]) => [
        person,
        [
          ...own,
          ...own,
          ...own.map((one) => ({
            ...one,
            id: `${one.id}-2`,
            right: true,
            sequence: one.sequence + 99,
            at: one.at + 99,
          })),
        ],
      ]),
    );
    expect(qualityOf(again)).toEqual(qualityOf(log));
  });

  test('by hand: two families, ten people of three answers each', () => {
    // Five people right on all of A and B, five on none: the correlation is 1 but for the sample.
    const log = new Map(
      Array.from({ length: 10 }, (_, p) => [
        `p${p}`,
        ['A', 'B'].flatMap((family) => [0, 1, 2].map((nth) => attempt(`p${p}`, family, nth, p < 5))),
      ]),
    );
    for (const quality of qualityOf(log)) {
      expect(quality.discrimination).toBeCloseTo(1, 10);
      expect(quality).toMatchObject({ difficulty: 0.5, answers: 30, people: 10 });
    }
  });
});
