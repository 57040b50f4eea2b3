import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { lookFirst } from '../../../src/core/questions/families/look-first.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../src/core/questions/phrase.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));

/** "C=on E=off", as the prompt tells it. */
const knownIn = ({ prompt }: Question): string =>
  (prompt.values!.known as Phrase[])
    .map(({ key, values }) => `${(values!.element as Phrase).values!.id}=${key.split('.')[1]}`)
    .join(' ');

const questionsOn = (train: string): Question[] => {
  const unit = unitOf(train);
  return Array.from({ length: 200 }, (_, seed) => ask(unit, lookFirst, seed)!);
};
const questions = new Map(
  ['lepelletier-6-a', 'four-range-two-crossed-sets'].map((train) => [train, questionsOn(train)]),
);

const knowing = (train: string, known: string): Question | undefined =>
  questions.get(train)!.find((question) => knownIn(question) === known);

describe('look-first, counted off published charts (tests/published names their sources)', () => {
  test.each([
    // 1 AD, 2 AC, 3 AB, 4 AE, 5 BE, 6 CE, R BD: A 4 of 7, B 3, C 2, D 2, E 3; so A, B and E leave 4 at worst
    ['lepelletier-6-a', '', ['A', 'B', 'E']],
    // E is off: 1 AD, 2 AC, 3 AB, R BD: A 3, B 2, C 1, D 2
    ['lepelletier-6-a', 'E=off', ['B', 'D']],
    // 1 UD LR, 2 UD B24, 3 UD OD, 4 OD B24, R RV LR: UD 3 of 5, OD 2, RV 1, B24 2, LR 2
    ['four-range-two-crossed-sets', '', ['UD', 'OD', 'B24', 'LR']],
    // UD is on: 1 LR, 2 B24, 3 OD are left, RV tells nothing
    ['four-range-two-crossed-sets', 'UD=on', ['OD', 'B24', 'LR']],
  ])('%s, known "%s": %j', (train, known, picks) => {
    expect(judge(knowing(train, known)!, { form: 'set', picks }).right).toBe(true);
  });

  test.each([
    // 1 D, 2 C, 3 B, 4 E: each look finds one of the four
    'A=on',
    // 2 AC, 3 AB, 4 AE, 5 BE, 6 CE: A 3 of 5, B 2, C 2, E 3
    'D=off',
    // 1 AD, 3 AB, 4 AE, 5 BE, R BD: A 3 of 5, B 3, D 2, E 2
    'C=off',
  ])('%s: one look is as good as another, so it is not asked', (known) => {
    expect(knowing('lepelletier-6-a', known)).toBeUndefined();
  });

  test('wrong rules are known by name', () => {
    const question = knowing('lepelletier-6-a', 'E=off')!;
    const said = (...picks: string[]) => judge(question, { form: 'set', picks }).slipUps;
    // A 3 of 4, C 1 of 4: one range is left, if lucky
    expect(said('A', 'C')).toEqual(['counts-on-luck']);
    expect(said('A', 'B', 'C', 'D')).toEqual(['every-split-alike']);
    // over all seven rows A and B leave 4
    expect(said('A', 'B')).toEqual(['known-left-out']);
    expect(said('A')).toEqual(['most-used-first']);
    expect(said('D')).toEqual([]);
  });
});

test('asks nothing of a unit with too few elements to choose from', () => {
  expect(lookFirst.facts(unitOf('textbook-sun-held-23-55'))).toEqual([]);
});

describeRules(lookFirst);
