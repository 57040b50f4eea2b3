import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { shiftKind } from '../../../src/core/questions/families/shift-kind.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));
const unit = unitOf('ravigneaux-4-a');
const questions = Array.from({ length: 80 }, (_, seed) => ask(unit, shiftKind, seed)!);
const shiftsIn = ({ space }: Question) => (space.form === 'pair' ? space.left.map(({ id }) => id) : []);

/**
 * Off the published four-range Ravigneaux chart (tests/published names its source): 1 C1 F2, 2 C1 B1,
 * 3 C1 C2, 4 C2 B1; F2 holds the carrier in 1 alone. 4 to 1 and 1 to 4 both exchange and use the one-way.
 */
const KINDS: Readonly<Record<string, string>> = {
  '1>2': 'lets-go',
  '1>3': 'lets-go',
  '2>1': 'catches',
  '3>1': 'catches',
  '2>3': 'exchange',
  '3>2': 'exchange',
  '3>4': 'exchange',
  '4>3': 'exchange',
  '2>4': 'exchange',
  '4>2': 'exchange',
};

const pairs = (question: Question, rule: (shift: string) => string) => ({
  form: 'pair' as const,
  pairs: Object.fromEntries(shiftsIn(question).map((shift) => [shift, rule(shift)])),
});

describe('shift-kind, off a published chart', () => {
  test.each(Object.entries(KINDS))('%s: %s', (shift, kind) => {
    const about = questions.filter((question) => shiftsIn(question).includes(shift));
    expect(about.length).toBeGreaterThan(0);
    for (const { answers } of about) expect(answers[0].form === 'pair' && answers[0].pairs[shift]).toBe(kind);
  });

  test('the shifts between 1 and 4 do both at once and are not asked', () => {
    for (const question of questions)
      for (const shift of shiftsIn(question)) expect(KINDS).toHaveProperty(shift);
  });

  test('each question has one that a one-way hands over and one that is timed', () => {
    for (const question of questions) {
      const kinds = shiftsIn(question).map((shift) => KINDS[shift]);
      expect(kinds).toContain('exchange');
      expect(kinds.some((kind) => kind !== 'exchange')).toBe(true);
    }
  });

  test('wrong rules are known by name', () => {
    const question = questions.find((asked) =>
      ['1>2', '2>1', '2>3'].every((id) => shiftsIn(asked).includes(id)),
    )!;
    const said = (rule: (shift: string) => string) => judge(question, pairs(question, rule));
    expect(said((id) => KINDS[id]!).right).toBe(true);
    expect(said(() => 'exchange').slipUps).toEqual(['every-shift-timed']);
    const turned: Readonly<Record<string, string>> = { 'lets-go': 'catches', catches: 'lets-go' };
    expect(said((id) => turned[KINDS[id]!] ?? KINDS[id]!).slipUps).toEqual(['catching-means-letting-go']);
    const up = (id: string) => id[0]! < id[2]!;
    expect(said((id) => (up(id) ? 'lets-go' : KINDS[id]!)).slipUps).toEqual(['every-upshift-overruns']);
    expect(said(() => 'comes-on-alone').slipUps).toEqual([]);
  });
});

test('asks nothing of a unit whose one-ways never hold in the chart', () => {
  // the five-range chart has B1 and B2 on where its one-ways could hold
  expect(shiftKind.facts(unitOf('five-speed-3sets-a'))).toEqual([]);
  expect(shiftKind.facts(unitOf('four-range-two-crossed-sets'))).toEqual([]);
});

describeRules(shiftKind);
