import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { assemblyOrder } from '../../../../src/core/questions/families/procedure/assembly-order.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { WORK, withSteps, workUnit } from './works.ts';

const unit = workUnit();
const order = (text: string) => ({ form: 'order' as const, order: [...text] });

/** The question on just these steps. */
function ordering(steps: string) {
  for (let seed = 0; seed < 300; seed++) {
    const question = ask(unit, assemblyOrder, seed)!;
    const ids = question.space.form === 'order' ? question.space.items.map(({ id }) => id) : [];
    if (ids.sort().join('') === steps) return question;
  }
  throw new Error(`never asked: ${steps}`);
}

describe('assembly-order, by hand from works.ts', () => {
  test.each([
    // h before g before m before f, and h before b before f: b has three places
    ['bfghm', 'hbgmf', true, []],
    ['bfghm', 'hgbmf', true, []],
    ['bfghm', 'hgmbf', true, []],
    ['bfghm', 'hgfbm', false, ['blind-reverse']],
    ['bfghm', 'bfghm', false, ['stripping-order-kept']],
    ['bfghm', 'hgmfb', false, ['step-too-early']],
    ['bfghm', 'bhgmf', false, []],
    ['bfghm', 'ghmbf', false, ['step-too-early']],
    // h, e, c, b and f are a chain
    ['bcefh', 'hecbf', true, []],
    ['bcefh', 'hfecb', false, ['blind-reverse']],
    ['bcefh', 'bcefh', false, ['stripping-order-kept']],
  ])('%s put as %s: right %s', (steps, given, right, slipUps) => {
    const verdict = judge(ordering(steps), order(given));
    expect(verdict.right).toBe(right);
    if (slipUps.length > 0) expect(verdict.slipUps).toEqual(expect.arrayContaining(slipUps));
    else expect(verdict.slipUps).toEqual([]);
  });

  test('A6 three right orders of 120, one of 120 for the chain', () => {
    expect(ordering('bfghm').guessRate).toBeCloseTo(3 / 120, 12);
    expect(ordering('bcefh').guessRate).toBeCloseTo(1 / 120, 12);
  });

  test('the blind reverse is wrong in every question, and at most one order in ten is right', () => {
    for (let seed = 0; seed < 100; seed++) {
      const question = ask(unit, assemblyOrder, seed)!;
      expect(question.guessRate).toBeLessThanOrEqual(0.1);
      const ids = question.space.form === 'order' ? question.space.items.map(({ id }) => id) : [];
      const blind = [...'hgfedcbam'].filter((id) => ids.includes(id));
      expect(judge(question, order(blind.join(''))).slipUps).toContain('blind-reverse');
    }
  });

  test('steps speak as they do in the assembly', () => {
    const { space } = ordering('bfghm');
    const say = makeSay(unit.deck);
    const labels = space.form === 'order' ? space.items.map(({ label }) => say(label)) : [];
    expect(labels.sort()).toEqual(['Converter on.', 'Drum on.', 'Measure.', 'Pan on.', 'Pump on.']);
  });

  test('without exceptions that matter nothing is asked', () => {
    const { leftOut, lifted } = WORK.assembly!;
    expect(assemblyOrder.facts(workUnit({ assembly: { leftOut, lifted } }))).toEqual([]);
    expect(assemblyOrder.facts(workUnit({ assembly: undefined }))).toEqual([]);
  });

  test('nothing is asked that an unverified step might fix', () => {
    const doubtful = (id: string) => workUnit(withSteps((step) => (step.id === id ? { unsure: true } : {})));
    // c puts e and h before b: without its record no five steps with a trap are left whose order is known
    expect(assemblyOrder.facts(doubtful('c'))).toEqual([]);
    // d has no part in what the others wait for
    const question = ask(doubtful('d'), assemblyOrder, 0)!;
    expect(question.space.form === 'order' && question.space.items.map(({ id }) => id)).not.toContain('d');
  });
});

describeRules(assemblyOrder, { seeds: 60 });
