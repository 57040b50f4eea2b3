import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { copiedRows } from '../../../src/core/questions/families/copied-rows.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../src/core/questions/phrase.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));
const say = makeSay(null);

/** Range and its copied elements, for each row shown. */
const copiesIn = ({ space }: Question): ReadonlyMap<string, string> =>
  new Map(
    space.form === 'pair'
      ? space.left.map(({ id, label }) => [id, say(label.values!.elements as Phrase)])
      : [],
  );

const questionsOn = (train: string, range: string) => {
  const unit = unitOf(train);
  return Array.from({ length: 60 }, (_, seed) => ask(unit, copiedRows, seed, `range:${range}/elements`)!);
};

describe('copied-rows, off published charts (tests/published names their sources)', () => {
  test.each([
    // 1 UD LR: one more, or one less, and one cell alone brings the row back
    ['four-range-two-crossed-sets', '1', 'UD + LR', 'as-copied'],
    ['four-range-two-crossed-sets', '1', 'UD', 'LR'],
    ['four-range-two-crossed-sets', '1', 'LR', 'UD'],
    ['four-range-two-crossed-sets', '1', 'UD + OD + LR', 'OD'],
    // 2 UD B24
    ['four-range-two-crossed-sets', '2', 'UD + B24 + LR', 'LR'],
    ['four-range-two-crossed-sets', '4', 'OD', 'B24'],
    ['lepelletier-6-a', '6', 'A + E + C', 'A'],
  ])('%s, range %s copied as %s: %s', (train, range, copied, mark) => {
    const about = questionsOn(train, range).filter((question) => copiesIn(question).get(range) === copied);
    expect(about.length).toBeGreaterThan(0);
    for (const { answers } of about) expect(answers[0].form === 'pair' && answers[0].pairs[range]).toBe(mark);
  });

  test('a row that drives at another ratio is not right for that', () => {
    // 2 of the four-range Ravigneaux without B1: F2 holds the carrier and C1 alone drives as 1
    const question = questionsOn('ravigneaux-4-a', '2').find((asked) => copiesIn(asked).get('2') === 'C1')!;
    const [right] = question.answers;
    const pairs = right.form === 'pair' ? right.pairs : {};
    expect(pairs['2']).toBe('B1');
    const verdict = judge(question, { form: 'pair', pairs: { ...pairs, 2: 'as-copied' } });
    expect(verdict.slipUps).toContain('driving-means-right');
  });

  test('a wrong row taken for right names its range, and one that becomes another range is known', () => {
    // 3 with B24 too is tied up; UD + OD + B24 less UD is 4, less OD is 2
    const question = questionsOn('four-range-two-crossed-sets', '3').find(
      (asked) => copiesIn(asked).get('3') === 'UD + OD + B24',
    )!;
    const [right] = question.answers;
    const pairs = right.form === 'pair' ? right.pairs : {};
    expect(pairs['3']).toBe('B24');
    const verdict = judge(question, { form: 'pair', pairs: { ...pairs, 3: 'as-copied' } });
    expect(verdict).toMatchObject({ slipUps: ['copy-trusted'], missed: ['range:3/elements'] });
    expect(question.lures.map((lure) => lure.slipUp)).toContain('other-range-made');
  });

  test('a cell that the ratio cannot tell is never the wrong one', () => {
    // in 1 of the four-range Ravigneaux either F2 or B2 holds the carrier: neither can be told from the other
    for (const question of questionsOn('ravigneaux-4-a', '1'))
      for (const answer of question.answers)
        expect(['F2', 'B2']).not.toContain(answer.form === 'pair' ? answer.pairs['1'] : 'none');
    // 3 of the crossed sets also drives with RV on
    for (const question of questionsOn('four-range-two-crossed-sets', '3'))
      expect(copiesIn(question).get('3')).not.toBe('UD + OD + RV');
  });

  test('at least one row is wrong and one is right', () => {
    for (const { answers } of questionsOn('lepelletier-6-a', '2')) {
      const marks = answers[0].form === 'pair' ? Object.values(answers[0].pairs) : [];
      expect(marks).toHaveLength(3);
      const right = marks.filter((mark) => mark === 'as-copied').length;
      expect(right).toBeGreaterThan(0);
      expect(right).toBeLessThan(3);
    }
  });
});

describeRules(copiedRows);
