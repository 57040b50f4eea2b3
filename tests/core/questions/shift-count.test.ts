import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { shiftCount } from '../../../src/core/questions/families/shift-count.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));
const IDS = ['lepelletier-6-a', 'seven-speed-reversed-ravigneaux', 'ravigneaux-4-a'];
const questions = new Map(
  IDS.map((id) => {
    const unit = unitOf(id);
    const asked = Array.from({ length: 150 }, (_, seed) => ask(unit, shiftCount, seed));
    return [id, asked.filter((question) => question !== undefined)];
  }),
);
const questionsOn = (id: string) => questions.get(id)!;

/** The number of changing elements each question holds right, or gives by a slip-up, for one shift. */
function countsFor(id: string, shift: string, slipUp?: string): Set<string> {
  const answers = questionsOn(id).flatMap((question) =>
    slipUp === undefined
      ? question.answers
      : question.lures.filter((lure) => lure.slipUp === slipUp).map((lure) => lure.answer),
  );
  return new Set(
    answers.flatMap((answer) => (answer.form === 'pair' && answer.pairs[shift] ? [answer.pairs[shift]] : [])),
  );
}

describe('shift-count, counted from the charts in tests/published', () => {
  test.each([
    // A+D -> A+C: D off, C on
    ['lepelletier-6-a', '1>2', '2'],
    // A+D -> B+E: all four
    ['lepelletier-6-a', '1>5', '4'],
    // K1 K3 B2 -> K1 K2 K3: B2 off, K2 on
    ['seven-speed-reversed-ravigneaux', '3>5', '2'],
    // K1 K2 B2 -> K2 K3 B1: K1 and B2 off, K3 and B1 on
    ['seven-speed-reversed-ravigneaux', '4>6', '4'],
    // K3 B2 B3 -> K1 K2 K3: B2 and B3 off, K1 and K2 on
    ['seven-speed-reversed-ravigneaux', '5>1', '4'],
    // C1 F2 -> C2 B1: all four, the one-way among them
    ['ravigneaux-4-a', '1>4', '4'],
  ])('%s, %s: %s elements', (id, shift, count) => {
    expect(countsFor(id, shift)).toEqual(new Set([count]));
  });

  test.each([
    ['applied-only', '1>5', '2'],
    ['applied-only', '1>2', '1'],
    ['held-through-counted', '1>2', '3'],
    ['held-through-counted', '1>5', '4'],
    // 5 -> 3 by way of 4: B E, A E, A B: two and two
    ['steps-added', '5>3', '4'],
  ])('%s makes %s of the six-speed %s', (slipUp, shift, count) => {
    expect(countsFor('lepelletier-6-a', shift, slipUp)).toEqual(new Set([count]));
  });

  test('no question has the same count all through', () => {
    for (const { answers } of questionsOn('lepelletier-6-a'))
      expect(answers[0].form === 'pair' && new Set(Object.values(answers[0].pairs)).size).toBeGreaterThan(1);
  });
});

describeRules(shiftCount);
