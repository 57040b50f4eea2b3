import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { faultsThatFit } from '../../../../src/core/questions/families/diagnosis/faults-that-fit.ts';
import { impossibleSuspects } from '../../../../src/core/questions/families/diagnosis/impossible-suspects.ts';
import { oneCause } from '../../../../src/core/questions/families/diagnosis/one-cause.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../../src/core/questions/phrase.ts';
import type { Family, Question } from '../../../../src/core/questions/question.ts';
import { describeRules } from '../rules.ts';
import { byHand, HAND_WORKED, readingIn, roadByHand, unitOn } from './by-hand.ts';

const SEEDS = 40;

const questionsOf = (family: Family): { train: string; question: Question }[] =>
  HAND_WORKED.flatMap((train) =>
    Array.from({ length: SEEDS }, (_, seed) => ask(unitOn(train), family, seed)).flatMap((question) =>
      question ? [{ train, question }] : [],
    ),
  );

const picksOf = ({ answers: [answer] }: Question) => (answer.form === 'set' ? answer.picks : []);
const optionsOf = ({ space }: Question) => (space.form === 'set' ? space.options.map(({ id }) => id) : []);

/** The rows of a drawn table: test and reading. */
const seenIn = ({ drawing }: Question): { test: Phrase; reading: string }[] =>
  drawing?.kind === 'table'
    ? drawing.rows.map(({ head, cells }) => ({ test: head, reading: readingIn(cells[0]!) }))
    : [];

describe('against what was worked by hand on the published trains (tests/core/faults/worked.ts)', () => {
  test('faults-that-fit: ticked are those whose worked rows are the rows told', () => {
    let held = 0;
    for (const { train, question } of questionsOf(faultsThatFit))
      for (const fault of optionsOf(question)) {
        const rows = seenIn(question).map((seen) => ({ ...seen, hand: byHand(train, fault, seen.test) }));
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
        const rows = seenIn(question).map((seen) => ({ ...seen, hand: byHand(train, fault, seen.test) }));
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
