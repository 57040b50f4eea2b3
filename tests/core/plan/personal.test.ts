import { describe, expect, test } from 'vitest';
import { WEIGHTS } from '../../../src/core/memory/recall.ts';
import { personalScale, type Scale, weightsAt } from '../../../src/core/plan/personal.ts';
import { transitionOf } from '../../../src/core/plan/transition.ts';
import type { Learner } from '../../sim/learner.ts';
import { type Habit, logOf } from '../../sim/log.ts';

const HABIT: Habit = { facts: 150, days: 42, asksADay: 25, guessRate: 0 };

function learnerAt(first: number, growth: number): Learner {
  const truth = transitionOf(weightsAt({ first, growth }));
  return { truth, firstRecall: 0.3, sorts: [{ share: 1, ...truth.first }] };
}

const SEEDS = [1, 2, 3, 4];
const scalesOf = (first: number, growth: number) =>
  SEEDS.map((seed) => personalScale(logOf(learnerAt(first, growth), HABIT, seed)));
const slow = scalesOf(1.2, 0.5);
const usual = scalesOf(0, 0);

describe('P20: the scale is shrunk towards the usual model', () => {
  test('at 0 it is the usual model; first stability and growth move the weights they should', () => {
    expect(weightsAt({ first: 0, growth: 0 })).toEqual(WEIGHTS);
    const moved = weightsAt({ first: Math.log(2), growth: 0.3 });
    expect(moved.slice(0, 4)).toEqual(WEIGHTS.slice(0, 4).map((w) => 2 * w));
    expect(moved[8]).toBeCloseTo(WEIGHTS[8]! + 0.3, 12);
    expect(moved.filter((w, i) => w !== WEIGHTS[i]).length).toBe(5);
  });

  test('a learner who forgets slower is found on that side, and not beyond', () => {
    const mean = (value: (scale: Scale) => number) =>
      slow.reduce((sum, { scale }) => sum + value(scale), 0) / slow.length;
    expect(mean(({ first }) => first)).toBeGreaterThan(0.25);
    expect(mean(({ first }) => first)).toBeLessThan(1.2);
    expect(mean(({ growth }) => growth)).toBeGreaterThan(0.05);
    expect(mean(({ growth }) => growth)).toBeLessThan(0.5);
  });
});

describe('P21: only what predicts answers better that were kept out is adopted', () => {
  test('a learner far from usual: adopted more often than not, and the weights are scaled', () => {
    expect(slow.filter(({ adopted }) => adopted).length).toBeGreaterThanOrEqual(3);
    for (const { adopted, evidence, weights, scale } of slow) {
      expect(adopted).toBe(evidence!.usual - evidence!.personal > evidence!.error);
      expect(weights).toEqual(adopted ? weightsAt(scale) : WEIGHTS);
    }
  });

  test('learners as usual: rarely adopted, and on average they are found to be usual', () => {
    expect(usual.filter(({ adopted }) => adopted).length).toBeLessThanOrEqual(1);
    const mean = usual.reduce((sum, { scale }) => sum + scale.first, 0) / usual.length;
    expect(Math.abs(mean)).toBeLessThan(0.35);
  });

  test('the answers kept out are the latest third, and are not fitted', () => {
    for (const { evidence } of usual)
      expect(evidence!.heldOut / (evidence!.fitted + evidence!.heldOut)).toBeCloseTo(1 / 3, 2);
  });
});

test('P22: with too few answers there is no evidence, and nothing changes', () => {
  for (const days of [0, 1, 4]) {
    const { evidence, adopted, weights } = personalScale(logOf(learnerAt(1, 0), { ...HABIT, days }, 1));
    expect(evidence).toBeNull();
    expect(adopted).toBe(false);
    expect(weights).toBe(WEIGHTS);
  }
});
