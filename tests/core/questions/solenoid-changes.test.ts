import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { solenoidChanges } from '../../../src/core/questions/families/solenoid-changes.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

// The published four-range chart (tests/published names its source): 1 UD LR, 2 UD B24, 3 UD OD, 4 OD B24.
// Plumbing made up in tests/units.ts, pressure when unplugged: S1 UD none, S2 OD full, S4 B24 full, S5 LR none;
// D opens those four.
const unit = makeUnit(deckOf(PUBLISHED.find((train) => train.id === 'four-range-two-crossed-sets')!));

const questions = ['S1', 'S2', 'S5'].flatMap((solenoid) =>
  Array.from({ length: 60 }, (_, seed) => ask(unit, solenoidChanges, seed, `solenoid:${solenoid}/pressure`)!),
);
const rowsIn = ({ drawing }: Question) => (drawing?.kind === 'chart' ? drawing.rows!.join('>') : '');
const shifting = (from: string, to: string): Question =>
  questions.find((question) => rowsIn(question) === `${from}>${to}`)!;

const SENSES = { '+': 'switched-on', '-': 'switched-off', '1': 'stays-on', '0': 'stays-off' } as const;
/** S1, S2, S4 and S5 in this order. */
const told = (marks: string) => ({
  form: 'pair' as const,
  pairs: Object.fromEntries(
    ['S1', 'S2', 'S4', 'S5'].map((id, place) => [id, SENSES[marks[place] as keyof typeof SENSES]]),
  ),
});

describe('solenoid-changes on a published chart, worked by hand', () => {
  test.each([
    // UD keeps pressure, OD stays without, B24 gets it, LR loses it
    ['1', '2', '11--'],
    ['2', '1', '11++'],
    ['2', '3', '1-+0'],
    ['3', '4', '-0-0'],
    ['1', '4', '----'],
  ])('%s to %s: %s', (from, to, marks) => {
    expect(judge(shifting(from, to), told(marks)).right).toBe(true);
  });

  test('wrong rules are known by name, and by the fact they miss', () => {
    const said = (marks: string) => judge(shifting('2', '3'), told(marks));
    expect(said('1+-0').slipUps).toEqual(['current-means-pressure', 'shift-turned-round']);
    expect(said('0-+1').slipUps).toEqual(['current-cuts-pressure']);
    expect(said('0+-1').slipUps).toEqual(['polarity-turned-round']);
    expect(said('1++0')).toEqual({
      right: false,
      slipUps: ['solenoid-turned-round'],
      missed: ['solenoid:S2/pressure'],
    });
    expect(said('1111')).toEqual({ right: false, slipUps: [], missed: [] });
  });

  test('between rows in which no current changes there is no question', () => {
    for (const { answers } of questions) {
      const senses = answers[0].form === 'pair' ? Object.values(answers[0].pairs) : [];
      expect(senses.some((sense) => sense.startsWith('switched'))).toBe(true);
    }
  });

  test('no solenoids, no question', () => {
    const { solenoids: _, ...deck } = unit.deck;
    expect(solenoidChanges.facts(makeUnit(deck))).toEqual([]);
  });
});

describeRules(solenoidChanges, { seeds: 120 });
