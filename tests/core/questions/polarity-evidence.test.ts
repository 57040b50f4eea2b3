import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { polarityEvidence } from '../../../src/core/questions/families/polarity-evidence.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unit = makeUnit(deckOf(PUBLISHED.find((train) => train.id === 'four-range-two-crossed-sets')!));
const questions = Array.from({ length: 120 }, (_, seed) => ask(unit, polarityEvidence, seed)!);
const say = makeSay(null);

/** What a person reads: letter, then current and pressure of each reading, in the order printed. */
function seen({ space }: Question): Map<string, [number, number][]> {
  const left = space.form === 'pair' ? space.left : [];
  return new Map(
    left.map(({ id, label }) => {
      const found = [...say(label).matchAll(/([\d.]+) bar at ([\d.]+) A/g)];
      return [id, found.map(([, bar, amps]) => [Number(amps), Number(bar)])];
    }),
  );
}

type Rule = (readings: [number, number][]) => string;
const pairs = (question: Question, rule: Rule) => ({
  form: 'pair' as const,
  pairs: Object.fromEntries([...seen(question)].map(([letter, readings]) => [letter, rule(readings)])),
});

/** Read by hand: less pressure with more current means full when unplugged. */
const byHand: Rule = ([first, second]) => {
  if (!second) return 'open';
  if (first![1] === second[1]) return 'dead';
  return first![1] > second[1] === first![0] > second[0] ? 'none' : 'full';
};

describe('polarity-evidence, from the printed words', () => {
  test('the right answer is what the readings say', () => {
    const verdicts = new Set<string>();
    for (const question of questions) {
      const answer = pairs(question, byHand);
      expect(judge(question, answer).right).toBe(true);
      for (const verdict of Object.values(answer.pairs)) verdicts.add(verdict);
    }
    expect(verdicts).toEqual(new Set(['full', 'none', 'dead', 'open']));
  });

  test('currents are printed in either order, so the first reading alone misleads', () => {
    const rule: Rule = ([first]) => (first![1] >= 3 ? 'full' : 'none');
    const misled = questions.filter((question) => {
      const { slipUps } = judge(question, pairs(question, rule));
      return slipUps.includes('first-reading-decides');
    });
    expect(misled.length).toBeGreaterThan(80);
  });

  test('wrong rules are known by name', () => {
    const named = (rule: Rule) =>
      new Set(questions.flatMap((question) => judge(question, pairs(question, rule)).slipUps));
    const change =
      (from: string, to: Rule): Rule =>
      (readings) =>
        byHand(readings) === from ? to(readings) : byHand(readings);
    const half: Rule = ([first]) => (first![1] >= 3 ? 'full' : 'none');
    expect(named(change('open', half))).toContain('one-reading-enough');
    expect(named(change('dead', half))).toContain('dead-taken-for-sound');
    expect(named(change('full', () => 'none'))).toContain('current-means-pressure');
    expect(named(change('none', () => 'full'))).toContain('current-cuts-pressure');
  });

  test('names no solenoid of the unit', () => {
    for (const question of questions)
      for (const text of [question.prompt, ...question.explanation.more].map(say))
        expect(text).not.toMatch(/S\d/);
  });
});

describeRules(polarityEvidence);
