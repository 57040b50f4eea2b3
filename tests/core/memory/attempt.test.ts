import { expect, test } from 'vitest';
import { draftAttempt } from '../../../src/core/memory/attempt.ts';
import { ask } from '../../../src/core/questions/ask.ts';
import { rangeElements } from '../../../src/core/questions/families/range-elements.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';

const unit = makeUnit(deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!));
const question = ask(unit, rangeElements, 1, 'range:2/elements')!;
const answer = { form: 'set', picks: ['C1', 'B2'] } as const;

const given = (seconds: number, zone = 'Europe/Berlin') =>
  draftAttempt({
    id: 'one',
    question,
    answer,
    verdict: judge(question, answer),
    seconds,
    at: Date.parse('2026-05-04T23:30Z'),
    zone,
    drill: 'drill-1',
  });

test('M1 it opens the same question again', () => {
  const attempt = given(8);
  expect(ask(unit, rangeElements, attempt.seed, attempt.fact)).toEqual(question);
  expect(attempt).toMatchObject({
    deck: 'ravigneaux-4-a',
    revision: 1,
    form: 'set',
    right: false,
    slipUps: ['neighbour-range'],
    missed: ['range:2/elements'],
    guessRate: question.guessRate,
  });
});

test('M2 its day is the learner’s own', () => {
  expect(given(8).day - given(8, 'America/Denver').day).toBe(1);
});

test('M9 over 60 s it is interrupted; seconds keep their milliseconds', () => {
  expect(given(60)).toMatchObject({ seconds: 60, interrupted: false });
  expect(given(60.0004)).toMatchObject({ seconds: 60, interrupted: true });
  expect(given(7.12345).seconds).toBe(7.123);
});
