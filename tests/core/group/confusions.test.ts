import { describe, expect, test } from 'vitest';
import { type Confusion, confusionsIn, tallyConfusions } from '../../../src/core/group/confusions.ts';
import { ask } from '../../../src/core/questions/ask.ts';
import { FAMILIES } from '../../../src/core/questions/families/index.ts';
import { say, thing } from '../../../src/core/questions/phrase.ts';
import type { Answer, AnswerSpace, Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { shippedDecks } from '../../units.ts';

const unit = makeUnit(shippedDecks().find((deck) => deck.id === 'kestrel-7')!);
const prompt = say('prompt');
const question = (space: AnswerSpace, right: Answer): Question =>
  ({ space, answers: [right], prompt, lures: [] }) as unknown as Question;
const things = (...ids: string[]) => ids.map((id) => ({ id, label: thing('range', id) }));
const marks = (...ids: string[]) => ids.map((id) => ({ id, label: say(id) }));

const one = { form: 'one', options: things('1', '2', '3', '4') } as const;
const set = { form: 'set', options: things('1', '2', '3', '4') } as const;
const order = { form: 'order', items: things('1', '2', '3', '4'), first: say('f'), last: say('l') } as const;
const pair = { form: 'pair', left: things('A', 'B', 'C'), right: things('x', 'y', 'z') } as const;
const states = { form: 'pair', left: things('A', 'B', 'C'), right: marks('on', 'off') } as const;
const range = (id: string) => thing('range', id);

/** What each wrong answer confuses, by hand. */
const ROWS: readonly [name: string, space: AnswerSpace, right: Answer, given: Answer, expected: Confusion[]][] = [
  ['one thing for another', one, { form: 'one', pick: '2' }, { form: 'one', pick: '3' }, [{ about: null, right: range('2'), given: range('3'), swapped: false }]],
  ['one mark for another is told with the question', { form: 'one', options: marks('a', 'b', 'c', 'd') }, { form: 'one', pick: 'a' }, { form: 'one', pick: 'b' }, [{ about: prompt, right: say('a'), given: say('b'), swapped: false }]],
  ['one tick in the place of another', set, { form: 'set', picks: ['1', '2'] }, { form: 'set', picks: ['1', '4'] }, [{ about: null, right: range('2'), given: range('4'), swapped: false }]],
  ['a tick too many confuses nothing', set, { form: 'set', picks: ['1', '2'] }, { form: 'set', picks: ['1', '2', '3'] }, []],
  ['two ticks wrong: which was for which is not known', set, { form: 'set', picks: ['1', '2'] }, { form: 'set', picks: ['3', '4'] }, []],
  ['two neighbours changed over', order, { form: 'order', order: ['1', '2', '3', '4'] }, { form: 'order', order: ['1', '3', '2', '4'] }, [{ about: null, right: range('2'), given: range('3'), swapped: true }]],
  ['all turned round confuses no two', order, { form: 'order', order: ['1', '2', '3', '4'] }, { form: 'order', order: ['4', '3', '2', '1'] }, []],
  ['two partners changed over', pair, { form: 'pair', pairs: { A: 'x', B: 'y', C: 'z' } }, { form: 'pair', pairs: { A: 'y', B: 'x', C: 'z' } }, [{ about: null, right: range('A'), given: range('B'), swapped: true }]],
  ['one partner wrong', pair, { form: 'pair', pairs: { A: 'x', B: 'y', C: 'z' } }, { form: 'pair', pairs: { A: 'z', B: 'y', C: 'z' } }, [{ about: null, right: range('x'), given: range('z'), swapped: false }]],
  ['one state wrong is told with whose it is', states, { form: 'pair', pairs: { A: 'on', B: 'on', C: 'off' } }, { form: 'pair', pairs: { A: 'on', B: 'on', C: 'on' } }, [{ about: range('C'), right: say('off'), given: say('on'), swapped: false }]],
  ['a number confuses nothing', { form: 'number', unit: null, tolerance: '0', signed: false, decimals: 0 }, { form: 'number', value: '1' }, { form: 'number', value: '2' }, []],
]; // biome-ignore format: a table reads across

describe('what a wrong answer took for what', () => {
  test.each(ROWS)('G5 %s', (_, space, right, given, expected) => {
    expect(confusionsIn(question(space, right), given)).toEqual(expected);
    expect(confusionsIn(question(space, right), right)).toEqual([]);
  });

  test('G5 with several right answers nothing is said: none of them is the one that was missed', () => {
    const both = {
      ...question(one, { form: 'one', pick: '1' }),
      answers: [
        { form: 'one', pick: '1' },
        { form: 'one', pick: '2' },
      ],
    };
    expect(confusionsIn(both as unknown as Question, { form: 'one', pick: '3' })).toEqual([]);
  });

  test('G5 every lure of every family on a real deck is read without failing, and right answers confuse nothing', () => {
    let told = 0;
    for (const family of FAMILIES)
      for (const fact of family.facts(unit).slice(0, 2)) {
        const posed = ask(unit, family, 1, fact);
        if (!posed) continue;
        expect(confusionsIn(posed, posed.answers[0])).toEqual([]);
        for (const lure of posed.lures) told += confusionsIn(posed, lure.answer).length;
      }
    expect(told).toBeGreaterThan(10);
  });

  test('G6 a swap counts whichever way round it was made, people before times', () => {
    const way = (given: Answer) => confusionsIn(question(order, { form: 'order', order: ['1', '2', '3', '4'] }), given);
    const swapped = way({ form: 'order', order: ['2', '1', '3', '4'] });
    const turned = confusionsIn(question(order, { form: 'order', order: ['2', '1', '3', '4'] }), { form: 'order', order: ['1', '2', '3', '4'] });
    expect(turned).toEqual(swapped);
    const other = way({ form: 'order', order: ['1', '2', '4', '3'] });
    expect(tallyConfusions([[...other, ...other, ...other], swapped, turned])).toEqual([
      { confusion: swapped[0], times: 2, people: 2 },
      { confusion: other[0], times: 3, people: 1 },
    ]);
  }); // biome-ignore format: one answer a line
});
