import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { FAMILIES } from '../../../src/core/questions/families/index.ts';
import { outputSpeed } from '../../../src/core/questions/families/output-speed.ts';
import { rowRatio } from '../../../src/core/questions/families/row-ratio.ts';
import { shaftSpeed } from '../../../src/core/questions/families/shaft-speed.ts';
import { sameAnswer } from '../../../src/core/questions/judge.ts';
import { say as phrase } from '../../../src/core/questions/phrase.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { exampleFor, workingOf } from '../../../src/core/questions/worked-example.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED, shippedDecks } from '../../units.ts';

const deck = deckOf(PUBLISHED.find((train) => train.id === 'lepelletier-6-a')!);
const unit = makeUnit(deck);
const say = makeSay(deck);

describe('M40 a working, its result last', () => {
  const text = (words: string) => phrase('text', { text: words });
  const asked = (value: string, decimals: number, row: string, reason: string, more: string[]): Question => ({
    ...ask(unit, rowRatio, 1)!,
    space: { form: 'number', unit: null, tolerance: '0.01', signed: true, decimals },
    answers: [{ form: 'number', value }],
    explanation: { row: text(row), reason: text(reason), more: more.map(text) },
  });
  test.each<[string, Question, string[], string[]]>([
    [
      'the row says it',
      asked('193/20', 2, '10.2 ÷ 1.0567 = 9.65 L.', 'The figure gets smaller.', ['Ask which quart.']),
      ['The figure gets smaller.', 'Ask which quart.'],
      ['10.2 ÷ 1.0567 = 9.65 L.'],
    ],
    [
      'with more places than are asked, and without the sign',
      asked('-7/3', 2, 'Range R.', '1 ÷ 0.4286 gives 2.333.', ['So x = −0.4286.']),
      ['Range R.', 'So x = −0.4286.'],
      ['1 ÷ 0.4286 gives 2.333.'],
    ],
    [
      'said twice',
      asked('38.2', 1, '3600 ÷ 3.235 = 1113 rpm.', '38.2 km/h in an hour.', ['318 × 2.00 = 38.2 km/h.']),
      ['3600 ÷ 3.235 = 1113 rpm.'],
      ['38.2 km/h in an hour.', '318 × 2.00 = 38.2 km/h.'],
    ],
    [
      'a name, a part of a figure and one with too few places are no result',
      asked('3', 1, 'C3 carries 13 N·m at 30 bar.', '9 ÷ 3 is 3.0.', ['Counted 3 times.']),
      ['C3 carries 13 N·m at 30 bar.', 'Counted 3 times.'],
      ['9 ÷ 3 is 3.0.'],
    ],
  ])('%s', (_, question, steps, last) => {
    expect(workingOf(question, say)).toMatchObject({ steps, last });
  });
});

describe('M40 the sibling', () => {
  test('of a range is another range, of a skill the same skill with other numbers', () => {
    const ratio = ask(unit, rowRatio, 3)!;
    expect(exampleFor(unit, rowRatio, ratio, say)!.question.fact).not.toBe(ratio.fact);
    const speed = ask(unit, outputSpeed, 3)!;
    expect(exampleFor(unit, outputSpeed, speed, say)!.question.fact).toBe(speed.fact);
  });

  test('shows what is spared only when nothing else is left', () => {
    const facts = shaftSpeed.facts(unit);
    for (const [index, fact] of facts.entries()) {
      const question = ask(unit, shaftSpeed, 5, fact)!;
      const free = facts[(index + 1) % facts.length]!;
      const spared = facts.filter((other) => other !== free);
      expect(exampleFor(unit, shaftSpeed, question, say, spared)!.question.fact).toBe(free);
    }
    const question = ask(unit, shaftSpeed, 5, facts[0])!;
    expect(exampleFor(unit, shaftSpeed, question, say, facts)).toBeDefined();
  });

  test('is none where a family has no other result', () => {
    const lone = { ...rowRatio, facts: () => ['range:1/ratio'] };
    expect(exampleFor(unit, lone, ask(unit, lone, 1)!, say)).toBeUndefined();
  });

  const calculations = FAMILIES.filter(({ form, level }) => form === 'number' && level !== 'read');
  test.each(shippedDecks().map((shipped) => [shipped.id, shipped] as const))(
    'every calculation of %s has one: same family, another seed, another result, steps and a last one',
    (_, shipped) => {
      const [own, speak] = [makeUnit(shipped), makeSay(shipped)];
      for (const family of calculations)
        for (const fact of family.facts(own)) {
          const question = ask(own, family, 11, fact);
          if (!question) continue;
          const example = exampleFor(own, family, question, speak);
          expect(example, `${family.id} ${fact}`).toBeDefined();
          const { question: sibling, steps, last } = example!;
          expect(sibling.family).toBe(family.id);
          expect(sibling.seed).not.toBe(question.seed);
          expect(sameAnswer(question.space, sibling.answers[0], question.answers[0])).toBe(false);
          expect(steps.length, `${family.id} ${fact}`).toBeGreaterThan(0);
          expect(last.length, `${family.id} ${fact}`).toBeGreaterThan(0);
          expect(exampleFor(own, family, question, speak)).toEqual(example);
        }
    },
  );
});
