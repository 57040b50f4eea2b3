import { describe, expect, test } from 'vitest';
import { recallAfter } from '../../../src/core/memory/recall.ts';
import { calibrationOf } from '../../../src/core/plan/calibration.ts';
import { type Observation, observationsOf, rightChance } from '../../../src/core/plan/observe.ts';
import { weightsAt } from '../../../src/core/plan/personal.ts';
import { transitionOf } from '../../../src/core/plan/transition.ts';
import { anAttempt } from '../../attempts.ts';
import { expectedLearner, type Learner } from '../../sim/learner.ts';
import { logOf } from '../../sim/log.ts';

const observed = (recall: number, right: boolean, changes: Partial<Observation> = {}): Observation => ({
  day: 0,
  before: { days: 1, stability: 1 },
  recall,
  guessRate: 0,
  right,
  ...changes,
});

describe('P23: what counts as an observation', () => {
  test('answers about one fact, with what was believed before; not several facts, not the same day again', () => {
    const log = [
      anAttempt({ sequence: 1, day: 20_000, facts: ['a'], right: true }),
      anAttempt({ sequence: 2, day: 20_000, facts: ['a'], right: true }),
      anAttempt({ sequence: 3, day: 20_001, facts: ['a', 'b'], right: true }),
      anAttempt({ sequence: 4, day: 20_004, facts: ['a'], right: false, guessRate: 0.25 }),
    ];
    const found = observationsOf(log);
    expect(found.map(({ day, right, guessRate }) => [day, right, guessRate])).toEqual([
      [20_000, true, 0],
      [20_004, false, 0.25],
    ]);
    expect(found[0]).toMatchObject({ before: null, recall: 0.3 });
    const { before, recall } = found[1]!;
    expect(before!.days).toBe(3);
    expect(recall).toBeCloseTo(recallAfter(before!.stability, 3), 8);
  });

  test('a voided attempt is none', () => {
    const log = [anAttempt({ sequence: 1 }), anAttempt({ sequence: 2, day: 20_003 })];
    expect(observationsOf(log, new Set(['phone-2'])).length).toBe(1);
  });
});

describe('P24: predicted against observed', () => {
  test('by hand: four answers in two bins', () => {
    // Right chances 0.98 x 0.9 = 0.882 and 0.98 x 0.5 = 0.49; with slips at 0.02 and no guessing.
    const found = calibrationOf([
      observed(0.9, true),
      observed(0.9, false),
      observed(0.5, true),
      observed(0.5, true),
    ])!;
    expect(found.answers).toBe(4);
    expect(found.bins.map(({ low, count, observed: share }) => [low, count, share])).toEqual([
      [0.4, 2, 1],
      [0.8, 2, 0.5],
    ]);
    expect(found.bins[0]!.predicted).toBeCloseTo(0.49, 12);
    expect(found.rmse).toBeCloseTo(Math.sqrt((2 * 0.51 ** 2 + 2 * 0.382 ** 2) / 4), 12);
    const nats = -(Math.log(0.882) + Math.log(1 - 0.882) + 2 * Math.log(0.49)) / 4;
    expect(found.logLoss).toBeCloseTo(nats, 12);
    expect(found.plainLogLoss).toBeCloseTo(-(0.75 * Math.log(0.75) + 0.25 * Math.log(0.25)), 12);
  });

  test('guessing is part of the prediction', () => {
    expect(rightChance(0.5, 0.25)).toBeCloseTo(0.5 * 0.98 + 0.5 * 0.25, 12);
    expect(rightChance(1, 0.25)).toBeCloseTo(0.98, 12);
  });

  test('a learner as predicted is calibrated: each bin within its error, better than the plain share', () => {
    const log = logOf(expectedLearner(), { facts: 120, days: 40, asksADay: 40, guessRate: 0.1 }, 3);
    const { bins, rmse, logLoss, plainLogLoss, answers } = calibrationOf(observationsOf(log))!;
    expect(answers).toBeGreaterThan(1000);
    for (const { predicted, observed: share, error } of bins)
      expect(Math.abs(predicted - share)).toBeLessThan(4 * error);
    expect(rmse).toBeLessThan(0.05);
    expect(logLoss).toBeLessThan(plainLogLoss);
  });

  test('a learner who forgets much faster than predicted shows it', () => {
    const truth = transitionOf(weightsAt({ first: -1.2, growth: -0.5 }));
    const fast = { truth, firstRecall: 0.3, sorts: [{ share: 1, ...truth.first }] };
    const habit = { facts: 120, days: 30, asksADay: 40, guessRate: 0 };
    const tooHigh = (learner: Learner) => {
      const { bins, answers } = calibrationOf(observationsOf(logOf(learner, habit, 1)))!;
      return bins.reduce((sum, bin) => sum + bin.count * (bin.predicted - bin.observed), 0) / answers;
    };
    expect(tooHigh(fast)).toBeGreaterThan(0.03);
    expect(Math.abs(tooHigh(expectedLearner()))).toBeLessThan(0.015);
  });

  test('first answers count only when asked for, and no answers give nothing', () => {
    const first = observed(0.3, true, { before: null });
    expect(calibrationOf([])).toBeNull();
    expect(calibrationOf([first])).toBeNull();
    expect(calibrationOf([first], { firstOnes: true })!.answers).toBe(1);
  });
});
