import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { oneSet } from '../../../src/core/questions/families/one-set.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const questionsOn = (train: string, kind: string): Question[] => {
  const unit = makeUnit(deckOf(PUBLISHED.find(({ id }) => id === train)!));
  return Array.from({ length: 60 }, (_, seed) => ask(unit, oneSet, seed, `skill:one-set-${kind}`)!);
};

/** Driven and out; the third member is held. "+" joins it to the driven one: then all turns as one. */
const SIMPLE: Readonly<Record<string, string>> = {
  // 23·sun + 55·ring = 78·carrier, the homework exercise of tests/published; every row by putting 0 for the held
  'sun>carrier': 'slower', // 23/78
  'ring>carrier': 'slower', // 55/78
  'carrier>ring': 'faster', // 78/55, the ratio of 0.705 that the exercise gives
  'carrier>sun': 'faster', // 78/23
  'sun>ring': 'backward-slower', // −23/55
  'ring>sun': 'backward-faster', // −55/23
};

const DOUBLE: Readonly<Record<string, string>> = {
  // 69·ring − 24·sun = 45·carrier: the small sun of the published four-range Ravigneaux
  'sun>ring': 'slower', // 24/69
  'ring>sun': 'faster', // 69/24
  'carrier>ring': 'slower', // 45/69
  'ring>carrier': 'faster', // 69/45
  'sun>carrier': 'backward-slower', // −24/45
  'carrier>sun': 'backward-faster', // −45/24
};

describe.each([
  ['textbook-sun-held-23-55', 'simple', SIMPLE],
  ['ravigneaux-4-a', 'double-pinion', DOUBLE],
])('one-set on %s, %s pinions, by hand', (train, kind, effects) => {
  const questions = questionsOn(train, kind);
  const told = new Map(
    questions.flatMap(({ answers: [answer] }) =>
      answer.form === 'pair' ? Object.entries(answer.pairs) : [],
    ),
  );

  test.each(Object.entries(effects))('%s: %s', (way, effect) => {
    expect(told.get(way)).toBe(effect);
  });

  test('joined, all turns as one', () => {
    const joined = [...told].filter(([way]) => way.endsWith('+'));
    expect(joined.length).toBeGreaterThan(2);
    for (const [, effect] of joined) expect(effect).toBe('alike');
  });
});

describe('one-set, wrong rules', () => {
  const question = questionsOn('ravigneaux-4-a', 'double-pinion').find(({ answers: [answer] }) => {
    const ways = answer.form === 'pair' ? Object.keys(answer.pairs) : [];
    return (
      ways.includes('sun>ring') && ways.includes('sun>carrier') && !ways.some((way) => way.endsWith('+'))
    );
  })!;
  const said = (rule: (way: string) => string) => {
    const ways = question.space.form === 'pair' ? question.space.left.map(({ id }) => id) : [];
    return judge(question, { form: 'pair', pairs: Object.fromEntries(ways.map((way) => [way, rule(way)])) });
  };

  test('the rule of single pinions, the turned ratio and the lost sign are known by name', () => {
    expect(said((way) => DOUBLE[way]!).right).toBe(true);
    expect(said((way) => SIMPLE[way]!).slipUps).toContain('pinion-pair-missed');
    expect(said((way) => DOUBLE[way]!.replace('backward-', '')).slipUps).toContain('sign-lost');
    const [out, driven] = [(way: string) => way.split('>')[1]!, (way: string) => way.split('>')[0]!];
    expect(said((way) => DOUBLE[`${out(way)}>${driven(way)}`]!).slipUps).toContain('inverse-ratio');
  });

  test('the held member taken for the driving one is known by name', () => {
    const third = (way: string) =>
      ['sun', 'ring', 'carrier'].find((member) => !way.split('>').includes(member));
    expect(said((way) => DOUBLE[`${third(way)}>${way.split('>')[1]}`]!).slipUps).toContain(
      'held-driven-mixed',
    );
  });
});

describeRules(oneSet);
