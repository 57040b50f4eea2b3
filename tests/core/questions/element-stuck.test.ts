import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { elementStuck } from '../../../src/core/questions/families/element-stuck.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const deckNamed = (id: string) => deckOf(PUBLISHED.find((train) => train.id === id)!);

/** Answers the question range by range out of a whole chart. */
const answered = ({ space }: Question, chart: Readonly<Record<string, string>>) => {
  if (space.form !== 'pair') throw new Error('not a pair question');
  return {
    form: 'pair' as const,
    pairs: Object.fromEntries(space.left.map(({ id }) => [id, chart[id]!])),
  };
};

const questionsOn = (train: string, element: string): Question[] => {
  const unit = makeUnit(deckNamed(train));
  return Array.from({ length: 20 }, (_, seed) => ask(unit, elementStuck, seed, `element:${element}/stuck`)!);
};

describe('element-stuck on published trains (tests/published names their sources), worked by hand', () => {
  test.each([
    // B1 holds s2. In 1 the carrier runs ahead of F2, which lets it: that is 2. Held carriers and whole-train
    // locks bind; R drives s2 itself.
    [
      'ravigneaux-4-a',
      'B1',
      { 1: 'other-ratio', '1m': 'tied-up', 2: 'works', 3: 'tied-up', 4: 'works', R: 'tied-up' },
    ],
    // C2 drives the carrier. In 1 F2 lets it go and all turns as one: 3. In 2 that meets the held s2.
    [
      'ravigneaux-4-a',
      'C2',
      { 1: 'other-ratio', '1m': 'tied-up', 2: 'tied-up', 3: 'works', 4: 'works', R: 'tied-up' },
    ],
    // C3 joins the input to s2: in 3 it already turns with the input; in 1 it makes direct drive, in 4 it
    // meets the held s2
    [
      'ravigneaux-4-a',
      'C3',
      { 1: 'other-ratio', '1m': 'tied-up', 2: 'tied-up', 3: 'works', 4: 'tied-up', R: 'works' },
    ],
    // no one-way: anything more binds, save RV in direct drive, where all shafts turn at input speed
    [
      'four-range-two-crossed-sets',
      'RV',
      { 1: 'tied-up', 2: 'tied-up', 3: 'works', 4: 'tied-up', R: 'works' },
    ],
    [
      'four-range-two-crossed-sets',
      'LR',
      { 1: 'works', 2: 'tied-up', 3: 'tied-up', 4: 'tied-up', R: 'works' },
    ],
  ])('%s, %s stuck on', (train, element, chart) => {
    const questions = questionsOn(train, element);
    for (const question of questions) expect(judge(question, answered(question, chart)).right).toBe(true);
    const seen = new Set(questions.flatMap(({ space }) => (space.form === 'pair' ? space.left : [])));
    expect(new Set([...seen].map(({ id }) => id)).size).toBe(Object.keys(chart).length);
  });

  test('wrong rules are known by name', () => {
    const [question] = questionsOn('four-range-two-crossed-sets', 'RV');
    const said = (chart: Readonly<Record<string, string>>) => judge(question!, answered(question!, chart));
    const each = (result: string) => Object.fromEntries(['1', '2', '3', '4', 'R'].map((id) => [id, result]));
    expect(said({ ...each('works'), R: 'no-drive' }).slipUps).toEqual(['stuck-like-failed']);
    expect(said({ ...each('tied-up'), R: 'works' }).slipUps).toEqual(['unused-means-tied-up']);
    expect(said({ ...each('works'), R: 'tied-up' }).slipUps).toEqual(['uses-it-ranges-only']);
    expect(said(each('works')).slipUps).toEqual(['extra-is-harmless']);
    expect(said(each('no-drive'))).toEqual({ right: false, slipUps: [], missed: [] });
  });

  test('five of the ranges at most, and one that breaks the rule of thumb is always among them', () => {
    // with B1 on, only 1 does otherwise than the rule of thumb says
    for (const { space } of questionsOn('ravigneaux-4-a', 'B1')) {
      const left = space.form === 'pair' ? space.left.map(({ id }) => id) : [];
      expect(left).toHaveLength(5);
      expect(left).toContain('1');
    }
  });

  test('an element that every range uses is never asked', () => {
    // K2 is on in 4 to 7 of the seven-speed
    const seven = deckNamed('seven-speed-reversed-ravigneaux');
    const upper = seven.chart.ranges.filter(({ applied }) => applied.includes('K2'));
    const facts = elementStuck.facts(makeUnit({ ...seven, chart: { ranges: upper } }));
    expect(facts).not.toContain('element:K2/stuck');
    expect(facts).toContain('element:B1/stuck');
  });
});

describeRules(elementStuck);
