import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { stepSkipped } from '../../../../src/core/questions/families/procedure/step-skipped.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { describeRules } from '../rules.ts';
import { withSteps, workUnit } from './works.ts';

const noting = (notes: Readonly<Record<string, string>>) =>
  workUnit(withSteps(({ id }) => (notes[id] ? { ifSkipped: notes[id] } : {})));

const unit = noting({
  a: 'It runs over the bench.',
  c: 'The neck breaks.',
  d: 'A wire tears.',
  f: 'It falls.',
});

describe('step-skipped, from notes made here', () => {
  test.each([
    ['a', true, []],
    ['c', false, ['outcome-of-another-step']],
    ['f', false, ['outcome-of-another-step']],
  ])('a left out, answered with the note of %s: right %s', (answer, right, slipUps) => {
    const question = ask(unit, stepSkipped, 0, 'step:job/a/skipped')!;
    const verdict = judge(question, { form: 'one', pick: answer });
    expect(verdict.right).toBe(right);
    expect(verdict.slipUps).toEqual(slipUps);
  });

  test('four different notes are needed; the same words twice are none', () => {
    expect(stepSkipped.facts(noting({ a: 'x', c: 'y', d: 'z' }))).toEqual([]);
    expect(stepSkipped.facts(noting({ a: 'x', b: 'X ', c: 'y', d: 'z', f: 'w' }))).toEqual([]);
    expect(stepSkipped.facts(noting({ a: 'x', b: 'X ', c: 'y', d: 'z', f: 'w', g: 'v' }))).toEqual(
      ['c', 'd', 'f', 'g'].map((id) => `step:job/${id}/skipped`),
    );
  });
});

describeRules(stepSkipped, { seeds: 100 });
