import { describe, expect, test } from 'vitest';
import { type Draft, emptyDraft, finishDraft } from '../../../src/core/questions/draft.ts';
import { say } from '../../../src/core/questions/phrase.ts';
import type { AnswerSpace } from '../../../src/core/questions/question.ts';

const options = ['a', 'b', 'c', 'd'].map((id) => ({ id, label: say('text', { text: id }) }));
const first = say('text', { text: 'first' });

const SPACES: Record<string, AnswerSpace> = {
  set: { form: 'set', options },
  one: { form: 'one', options },
  order: { form: 'order', items: options.slice(0, 3), first, last: first },
  number: { form: 'number', unit: 'rpm', tolerance: '5', signed: true, decimals: 0 },
  pair: { form: 'pair', left: options.slice(0, 2), right: options.slice(2) },
  fill: {
    form: 'fill',
    rows: options.slice(0, 1),
    columns: options.slice(1, 2),
    marks: options.slice(2),
    asked: ['a/b'],
    given: {},
  },
  place: { form: 'place', spots: options },
};

describe('an answer on its way', () => {
  test.each(Object.entries(SPACES))('%s: nothing tapped yet is not an answer', (_, space) => {
    expect(finishDraft(space, emptyDraft(space))).toBeNull();
  });

  test.each<[string, Draft]>([
    ['order', { form: 'order', order: ['b', 'a'] }],
    ['pair', { form: 'pair', pairs: { a: 'c' } }],
    ['number', { form: 'number', text: '-' }],
    ['set', { form: 'set', picks: ['z'] }],
    ['one', { form: 'one', pick: 'z' }],
    ['fill', { form: 'fill', cells: { 'a/b': 'a' } }],
    ['place', { form: 'place', spot: 'z' }],
  ])('%s: unfinished or outside the space is not an answer', (form, draft) => {
    expect(finishDraft(SPACES[form]!, draft)).toBeNull();
  });

  test.each<[string, Draft, unknown]>([
    ['set', { form: 'set', picks: ['b', 'a'] }, { form: 'set', picks: ['b', 'a'] }],
    ['one', { form: 'one', pick: 'c' }, { form: 'one', pick: 'c' }],
    ['order', { form: 'order', order: ['b', 'a', 'c'] }, { form: 'order', order: ['b', 'a', 'c'] }],
    ['number', { form: 'number', text: '1,950' }, { form: 'number', value: '1950' }],
    ['pair', { form: 'pair', pairs: { a: 'c', b: 'c' } }, { form: 'pair', pairs: { a: 'c', b: 'c' } }],
    ['fill', { form: 'fill', cells: { 'a/b': 'c' } }, { form: 'fill', cells: { 'a/b': 'c' } }],
    ['place', { form: 'place', spot: 'c' }, { form: 'place', spot: 'c' }],
  ])('%s: finished', (form, draft, answer) => {
    expect(finishDraft(SPACES[form]!, draft)).toEqual(answer);
  });
});
