import { describe, expect, test } from 'vitest';
import { loadDeck } from '../../../../src/content/load.ts';
import { ask } from '../../../../src/core/questions/ask.ts';
import { nextSteps } from '../../../../src/core/questions/families/procedure/next-steps.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Question } from '../../../../src/core/questions/question.ts';
import type { Unit } from '../../../../src/core/unit/unit.ts';
import { describeRules } from '../rules.ts';
import { withSteps, workDeck, workUnit } from './works.ts';

/** By hand from works.ts: what may be done once these, and all they need, are done. */
const MAY: Record<string, string> = {
  a: 'bf',
  b: 'cdf',
  c: 'df',
  d: 'cf',
  f: 'bg',
  g: 'b',
  bf: 'cdg',
  bg: 'cd',
  cf: 'dg',
  df: 'cg',
  cd: 'ef',
};

function ticked({ drawing }: Question): string {
  return drawing?.kind === 'steps' ? [...(drawing.done ?? [])].sort().join('') : '';
}

const optionsOf = ({ space }: Question) => (space.form === 'set' ? space.options.map(({ id }) => id) : []);

const questions = (unit: Unit, seeds = 150): Question[] =>
  Array.from({ length: seeds }, (_, seed) => ask(unit, nextSteps, seed)!);

describe('next-steps, by hand from works.ts', () => {
  const unit = workUnit();
  const all = questions(unit);

  test('the work passes the checks', () => {
    const loaded = loadDeck(JSON.stringify(workDeck()));
    expect(loaded.ok ? [] : loaded.error).toEqual([]);
  });

  test('what may be done is all that may, and what was done is not offered', () => {
    const met = new Set<string>();
    for (const question of all) {
      const done = ticked(question);
      met.add(done);
      const may = MAY[done];
      expect(may, done).toBeDefined();
      const right = question.answers[0].form === 'set' ? question.answers[0].picks : [];
      expect([...right].sort()).toEqual(
        optionsOf(question)
          .filter((id) => may!.includes(id))
          .sort(),
      );
    }
    expect(met.size).toBeGreaterThan(6);
  });

  test('a step too early names that step; one of several is the order of the sheet', () => {
    for (const question of all.slice(0, 40)) {
      const right = question.answers[0].form === 'set' ? question.answers[0].picks : [];
      for (const id of optionsOf(question).filter((each) => !right.includes(each))) {
        const verdict = judge(question, { form: 'set', picks: [...right, id] });
        expect(verdict.slipUps).toEqual(['step-too-early']);
        expect(verdict.missed).toEqual([`step:job/${id}/before`]);
      }
      if (right.length > 1) {
        const first = [...right].sort()[0]!;
        expect(judge(question, { form: 'set', picks: [first] }).slipUps).toEqual(['one-order-only']);
      }
    }
  });

  test('four choices to six, some of them possible and some not', () => {
    for (const question of all) {
      const right = question.answers[0].form === 'set' ? question.answers[0].picks : [];
      expect(optionsOf(question).length).toBeGreaterThanOrEqual(4);
      expect(right.length).toBeGreaterThan(0);
      expect(right.length).toBeLessThan(optionsOf(question).length);
      expect(question.guessRate).toBeLessThanOrEqual(1 / 16);
    }
  });

  test('a step that is not verified is neither asked, ticked nor needed by what is right', () => {
    // with d unverified nobody knows whether e may be done once c is
    const doubtful = workUnit(withSteps(({ id }) => (id === 'd' ? { unsure: true } : {})));
    expect(nextSteps.facts(doubtful)).not.toContain('step:job/d/before');
    for (const question of Array.from({ length: 100 }, (_, seed) => ask(doubtful, nextSteps, seed))) {
      if (!question) continue;
      expect(optionsOf(question)).not.toContain('d');
      expect(ticked(question)).not.toContain('d');
      expect(question.uses).not.toContain('step:job/d');
    }
  });

  test('the caution of a step that is in view is shown', () => {
    const deck = workDeck();
    const unitWith = {
      ...deck,
      cautions: [{ id: 'k', hazard: 'hot-fluid', text: 'Hot.', attachedTo: ['step:job/b'] }],
    } as const;
    for (const question of questions(workUnit(), 1)) expect(question.cautions).toEqual([]);
    let shown = 0;
    for (let seed = 0; seed < 60; seed++) {
      const question = ask({ ...unit, deck: unitWith }, nextSteps, seed)!;
      const inView = [...optionsOf(question), ...ticked(question)].includes('b');
      if (inView) expect(question.cautions).toEqual(['Hot.']);
      shown += inView ? 1 : 0;
    }
    expect(shown).toBeGreaterThan(20);
  });
});

describeRules(nextSteps, { seeds: 60 });
