import { describe, expect, test } from 'vitest';
import { faultsThatFit } from '../../../../src/core/questions/families/diagnosis/faults-that-fit.ts';
import { impossibleSuspects } from '../../../../src/core/questions/families/diagnosis/impossible-suspects.ts';
import { oneCause } from '../../../../src/core/questions/families/diagnosis/one-cause.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../../src/core/questions/phrase.ts';
import type { Question } from '../../../../src/core/questions/question.ts';
import { describeRules } from '../rules.ts';
import { byHand, questionsOf, readingIn, roadByHand } from './by-hand.ts';

const picksOf = ({ answers: [answer] }: Question) => (answer.form === 'set' ? answer.picks : []);
const optionsOf = ({ space }: Question) => (space.form === 'set' ? space.options.map(({ id }) => id) : []);

/** Range and reading, as the prompt groups them. */
const rowsIn = ({ prompt }: Question): { row: string; reading: string }[] =>
  (prompt.values!.rows as Phrase[]).flatMap(({ values }) =>
    (values!.ranges as Phrase[]).map((range) => ({
      row: String(range.values!.id),
      reading: readingIn(values!.does as Phrase),
    })),
  );

const resultsIn = ({ prompt }: Question): { test: Phrase; reading: string }[] =>
  ['first', 'second'].map((name) => {
    const { test, reading } = (prompt.values![name] as Phrase).values!;
    return { test: test as Phrase, reading: readingIn(reading as Phrase) };
  });

describe('against what was worked by hand on the published trains (tests/core/faults/worked.ts)', () => {
  test('faults-that-fit: ticked are those whose worked rows are the rows told', () => {
    let held = 0;
    for (const { train, question } of questionsOf(faultsThatFit))
      for (const fault of optionsOf(question)) {
        const rows = rowsIn(question).map((seen) => ({ ...seen, hand: roadByHand(train, fault, seen.row) }));
        if (rows.some(({ hand }) => hand === undefined)) continue;
        held++;
        expect(picksOf(question).includes(fault)).toBe(rows.every(({ hand, reading }) => hand === reading));
      }
    expect(held).toBeGreaterThan(500);
  });

  test('one-cause: ticked are those whose worked rows give both complaints', () => {
    let held = 0;
    for (const { train, question } of questionsOf(oneCause)) {
      const complaints = ['first', 'second'].map((name) => question.prompt.values![name] as Phrase);
      for (const fault of optionsOf(question)) {
        const gives = complaints.map(({ values }) => {
          const row = String((values!.row as Phrase).values!.id);
          const hand = roadByHand(train, fault, row);
          return hand && hand === readingIn(values!.reading as Phrase);
        });
        if (gives.includes(undefined)) continue;
        held++;
        expect(picksOf(question).includes(fault)).toBe(gives.every(Boolean));
      }
    }
    expect(held).toBeGreaterThan(500);
  });

  test('impossible-suspects: struck out are those of which a worked row or port is another', () => {
    let held = 0;
    for (const { train, question } of questionsOf(impossibleSuspects))
      for (const fault of optionsOf(question)) {
        const rows = resultsIn(question).map((seen) => ({ ...seen, hand: byHand(train, fault, seen.test) }));
        if (rows.some(({ hand }) => hand === undefined)) continue;
        held++;
        expect(picksOf(question).includes(fault)).toBe(rows.some(({ hand, reading }) => hand !== reading));
      }
    expect(held).toBeGreaterThan(100);
  });
});

test('wrong rules are known by name: what explains one complaint, and what explains either', () => {
  const names = new Set<string>();
  for (const { question } of questionsOf(oneCause)) {
    const both = picksOf(question);
    for (const { answer, slipUp } of question.lures) {
      expect(judge(question, answer).slipUps).toContain(slipUp);
      if (answer.form !== 'set' || slipUp === 'first-cause-enough') continue;
      expect(both.every((fault) => answer.picks.includes(fault))).toBe(true);
      names.add(slipUp);
    }
  }
  expect([...names].sort()).toEqual(['either-complaint-enough', 'one-complaint-only']);
});

describeRules(faultsThatFit, { seeds: 40 });
describeRules(oneCause, { seeds: 40 });
describeRules(impossibleSuspects, { seeds: 40 });
