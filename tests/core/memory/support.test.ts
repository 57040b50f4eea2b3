import { describe, expect, test } from 'vitest';
import type { Attempt } from '../../../src/core/memory/attempt.ts';
import { draftAttempt } from '../../../src/core/memory/attempt.ts';
import { foldAttempts } from '../../../src/core/memory/fold.ts';
import { standingOf } from '../../../src/core/memory/standing.ts';
import {
  addWorked,
  GUESS_WITH,
  NOTHING_WORKED,
  type Support,
  supportFor,
} from '../../../src/core/memory/support.ts';
import { ask } from '../../../src/core/questions/ask.ts';
import { rangeElements } from '../../../src/core/questions/families/range-elements.ts';
import { rowRatio } from '../../../src/core/questions/families/row-ratio.ts';
import { shaftSpeed } from '../../../src/core/questions/families/shaft-speed.ts';
import { stackCount } from '../../../src/core/questions/families/stacks/stack-count.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { anAttempt } from '../../attempts.ts';
import { deckOf, PUBLISHED } from '../../units.ts';

const FACT = 'range:2/ratio';

/** An answer to a ratio, as the log has it, under what support. */
const given = (right: boolean, support: Support, changes: Partial<Attempt> = {}) =>
  anAttempt({
    family: 'row-ratio',
    fact: FACT,
    form: 'number',
    answer: { form: 'number', value: '1' },
    right,
    guessRate: GUESS_WITH[support],
    ...changes,
  });

describe('M39 full, one step hidden, alone', () => {
  const OTHER = { fact: 'range:3/ratio', facts: ['range:3/ratio'] };
  test.each<[string, Attempt[], Support]>([
    ['never asked', [], 'full'],
    ['right under the full example', [given(true, 'full')], 'one-step-hidden'],
    ['wrong under it', [given(false, 'full')], 'one-step-hidden'],
    ['asked twice', [given(false, 'full'), given(true, 'one-step-hidden')], 'alone'],
    ['asked often, never right', [1, 2, 3, 4].map(() => given(false, 'alone')), 'alone'],
    ['right alone the first time', [given(true, 'alone')], 'alone'],
    ['right alone by another calculation', [given(true, 'alone', { family: 'one-more-way' })], 'alone'],
    [
      'right about it in another form',
      [anAttempt({ fact: FACT, family: 'ratio-order', form: 'order' })],
      'full',
    ],
    ['another range under its example', [given(true, 'full', OTHER)], 'full'],
    ['another range wrong alone', [given(false, 'alone', OTHER)], 'full'],
    ['another range right alone', [given(true, 'alone', OTHER)], 'one-step-hidden'],
    [
      'another range right alone, this one asked once',
      [given(true, 'alone', OTHER), given(false, 'one-step-hidden')],
      'alone',
    ],
  ])('%s', (_, log, expected) => {
    expect(supportFor(addWorked(NOTHING_WORKED, log), rowRatio, FACT)).toBe(expected);
  });

  test('another family of numbers has a way of its own', () => {
    expect(supportFor(addWorked(NOTHING_WORKED, [given(true, 'alone')]), shaftSpeed, 'range:2/speeds')).toBe(
      'full',
    );
  });

  test('what is no calculation has no example', () => {
    expect(supportFor(NOTHING_WORKED, rangeElements, 'range:2/elements')).toBe('alone');
    expect(supportFor(NOTHING_WORKED, stackCount, 'stack:C1/count')).toBe('alone');
  });
});

describe('M41 an answer under an example', () => {
  const unit = makeUnit(deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!));
  const question = ask(unit, rowRatio, 1, FACT)!;
  const [answer] = question.answers;
  const logged = (support?: Support) =>
    draftAttempt({
      id: 'one',
      question,
      answer,
      verdict: judge(question, answer),
      ...(support ? { support } : {}),
      seconds: 30,
      at: 0,
      zone: 'UTC',
      drill: 'drill-1',
    }).guessRate;

  test('is logged with the chance of following it blindly', () => {
    expect([logged('full'), logged('one-step-hidden'), logged('alone'), logged()]).toEqual([0.5, 0.25, 0, 0]);
  });

  test('moves the memory less than one alone: right at even odds, 45.7 % of the way', () => {
    // By hand: 0.3 × 0.98 = 0.294; 0.294 / (0.294 + 0.7 × 0.5) = 0.4565; S = 2.3065^0.4565 × 0.212^0.5435 = 0.6303.
    const [full, hidden, alone] = (['full', 'one-step-hidden', 'alone'] as const).map(
      (support) => foldAttempts([given(true, support)]).get(FACT)!.stability,
    );
    expect(full).toBeCloseTo(0.6303, 3);
    expect(hidden).toBeGreaterThan(full!);
    expect(alone).toBeGreaterThan(hidden!);
  });

  test.each<[string, Support[], string]>([
    ['M15 under the full example and then alone: one day only', ['full', 'alone'], 'setting'],
    ['M15 with a step hidden and then alone', ['one-step-hidden', 'alone'], 'holding'],
    ['M15 full, hidden, alone', ['full', 'one-step-hidden', 'alone'], 'holding'],
  ])('%s', (_, supports, expected) => {
    const log = supports.map((support, index) =>
      given(true, support, { day: 20_000 + 2 * index, sequence: index + 1 }),
    );
    const last = 20_000 + 2 * (supports.length - 1);
    expect(standingOf(foldAttempts(log).get(FACT), last)).toBe(expected);
  });
});
