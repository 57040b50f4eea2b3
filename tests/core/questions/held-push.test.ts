import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { heldPush } from '../../../src/core/questions/families/held-push.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));
const questionOn = (train: string): Question => ask(unitOf(train), heldPush, 2)!;
const said = (question: Question, pairs: Readonly<Record<string, string>>) =>
  judge(question, { form: 'pair', pairs });

/**
 * One brake in each of these ranges, so it gives all that the case gives, ratio − 1: in 1 and 2 (2.84, 1.57)
 * forward, against a part that is pushed backward; in 4 (0.69) and R (−2.21) backward.
 */
const CROSSED = { '1/LR': 'backward', '2/B24': 'backward', '4/B24': 'forward', 'R/LR': 'forward' };
/** The same way for 1m (2.875), 2 (1.568), 4 (0.697) and R (−2.3). */
const RAVIGNEAUX = { '1m/B2': 'backward', '2/B1': 'backward', '4/B1': 'forward', 'R/B2': 'forward' };

describe('held-push on published trains, by the torque that the case gives', () => {
  test.each([
    ['four-range-two-crossed-sets', CROSSED],
    ['ravigneaux-4-a', RAVIGNEAUX],
  ])('%s: %j', (train, pairs) => {
    expect(said(questionOn(train), pairs).right).toBe(true);
  });

  test('wrong rules are known by name', () => {
    const question = questionOn('four-range-two-crossed-sets');
    const all = (push: string) => Object.fromEntries(Object.keys(CROSSED).map((id) => [id, push]));
    const turned = { forward: 'backward', backward: 'forward' };
    const other = Object.fromEntries(
      Object.entries(CROSSED).map(([id, push]) => [id, turned[push as keyof typeof turned]]),
    );
    expect(said(question, other).slipUps).toEqual(['brake-push-for-part-push']);
    expect(said(question, all('forward')).slipUps).toEqual(['pushed-with-input']);
    expect(said(question, all('backward')).slipUps).toEqual(['pushed-against-input']);
    expect(said(question, all('nowhere')).slipUps).toEqual(['held-carries-nothing']);
    expect(said(question, { ...all('forward'), 'R/LR': 'backward' }).slipUps).toEqual(['pushed-with-output']);
  });

  test('B2 of the Ravigneaux holds a carrier: taken for a ring, it alone comes out wrong', () => {
    const pairs = { ...RAVIGNEAUX, '1m/B2': 'forward', 'R/B2': 'backward' };
    expect(said(questionOn('ravigneaux-4-a'), pairs).slipUps).toEqual(['carrier-pushed-like-ring']);
  });

  test('the reason can be turned on a bench: output stalled, brake off', () => {
    // 1 of the crossed sets: 45·1 + 83·part = 128·0, so the part turns 45/83 backward
    const lines = questionOn('four-range-two-crossed-sets').explanation.more.map(makeSay(null));
    expect(lines[0]).toBe(
      'LR in range 1 (with UD): backward. With the output stalled and the brake off, carrier-front-ring-rear turns 0.54 that way for one turn of the input.',
    );
  });
});

test('one brake in one range is too little to ask', () => {
  expect(heldPush.facts(unitOf('textbook-sun-held-23-55'))).toEqual([]);
});

describeRules(heldPush);
