/** A small part of the simulation with fixed seeds: P14. The whole is docs/simulation.md. */
import { describe, expect, test } from 'vitest';
import { boundOf } from './bound.ts';
import { aCell, type Cell } from './cells.ts';
import { chance, expectedLearner, normal, sortOf, unknownLearner } from './learner.ts';
import { beatenBy, estimate, measure } from './measure.ts';
import { questionPool, runMixed } from './mixed.ts';
import { BASELINES, ours } from './policies.ts';
import { run } from './world.ts';

const ratioOf = (cell: Cell, runs: number) => {
  const measured = measure(cell, [ours, ...BASELINES], runs);
  return { ratio: measured.rows[0]!.ratio.mean, beaten: beatenBy(measured), measured };
};

describe('P14: known learners, at least 0.995 of the bound and no baseline better', () => {
  for (const [facts, days, minutes] of [
    [300, 7, 5],
    [300, 7, 10],
    [150, 7, 20],
    [2000, 7, 10],
    [150, 14, 5],
    [150, 21, 5],
  ] as const)
    test(`${facts} facts, ${days} days, ${minutes} minutes`, () => {
      const { ratio, beaten } = ratioOf(aCell({ facts, days, minutes }), 4);
      expect(ratio).toBeGreaterThanOrEqual(0.995);
      expect(beaten).toEqual([]);
    });

  test('wrong answers that take longer: 150 facts, 14 days, 7 minutes', () => {
    const cell = aCell({ facts: 150, days: 14, minutes: 7, rightSeconds: 10, wrongSeconds: 22 });
    const { ratio, beaten } = ratioOf(cell, 4);
    expect(ratio).toBeGreaterThanOrEqual(0.995);
    expect(beaten).toEqual([]);
  });
});

describe('P14: unknown learners, at least 0.985 of the bound and no baseline better', () => {
  for (const [facts, days, minutes, runs] of [
    [300, 7, 10, 8],
    [150, 7, 20, 8],
    [150, 14, 5, 6],
  ] as const)
    test(`${facts} facts, ${days} days, ${minutes} minutes`, () => {
      const { ratio, beaten } = ratioOf(aCell({ facts, days, minutes, known: false }), runs);
      expect(ratio).toBeGreaterThanOrEqual(0.985);
      expect(beaten).toEqual([]);
    });
});

test('P14: missed days, 150 facts, 10 days of 7 minutes, each taking place with 0.7: no baseline better', () => {
  const { ratio, beaten } = ratioOf(aCell({ facts: 150, days: 10, minutes: 7, attendance: 0.7 }), 8);
  expect(ratio).toBeGreaterThanOrEqual(0.98);
  expect(beaten).toEqual([]);
});

test('P14: questions of the shipped decks, with several facts and guessing: as good as greedy or better', () => {
  const pool = questionPool(2);
  // Scarce but not hopeless, whatever the decks have grown to: about three asks a fact.
  const cell = aCell({ facts: pool.length, days: 12, minutes: pool.length / 20 });
  const greedy = BASELINES.find(({ name }) => name === 'greedy gain')!;
  const learner = expectedLearner();
  const gains = [1, 2, 3, 4, 5, 6, 7, 8].map(
    (seed) =>
      runMixed(cell, learner, ours, pool, 'mixture', seed).raw -
      runMixed(cell, learner, greedy, pool, 'mixture', seed).raw,
  );
  expect(gains.reduce((a, b) => a + b, 0) / gains.length).toBeGreaterThan(0);
});

describe('the simulation itself', () => {
  test('the luck taken out of scores has mean 0, under a bad policy as well, and is most of their scatter', () => {
    const random = BASELINES.find(({ name }) => name === 'random')!;
    for (const [known, attendance] of [
      [true, 1],
      [false, 1],
      [true, 0.6],
    ] as const) {
      const cell = aCell({ facts: 40, days: 6, minutes: 3, known, attendance, wrongSeconds: 20 });
      const learner = known ? expectedLearner() : unknownLearner(5);
      const bound = boundOf(cell, learner);
      const scores = Array.from({ length: 600 }, (_, seed) => run(cell, learner, random, bound, seed));
      const luck = estimate(scores.map((score) => score.luck));
      expect(Math.abs(luck.mean)).toBeLessThan(3 * luck.error);
      const freed = estimate(scores.map((score) => score.share));
      const raw = estimate(scores.map((score) => score.share + score.luck));
      expect(freed.error).toBeLessThan(0.8 * raw.error);
    }
  });

  test('its chance is even, and its normal has mean 0 and deviation 1', () => {
    const n = 20_000;
    const draws = Array.from({ length: n }, (_, i) => chance(3, i, 7));
    const mean = (values: number[]) => values.reduce((a, b) => a + b, 0) / values.length;
    expect(mean(draws)).toBeCloseTo(0.5, 2);
    expect(mean(draws.map((x) => (x < 0.1 ? 1 : 0)))).toBeCloseTo(0.1, 2);
    const normals = Array.from({ length: n }, (_, i) => normal(5, i, 0));
    expect(mean(normals)).toBeCloseTo(0, 1);
    expect(mean(normals.map((x) => x * x))).toBeCloseTo(1, 1);
  });

  test('unknown learners differ, and the sorts of their facts come with their shares', () => {
    const [a, b] = [unknownLearner(1), unknownLearner(2)];
    expect(a.truth.w).not.toEqual(b.truth.w);
    expect(a.sorts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    const rarest = Array.from({ length: 8000 }, (_, fact) => sortOf(a, 1, fact)).filter(
      (sort) => sort === a.sorts[0],
    );
    expect(rarest.length / 8000).toBeCloseTo(a.sorts[0]!.share, 1);
  });
});
