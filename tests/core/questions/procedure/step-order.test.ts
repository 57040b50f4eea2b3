import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { stepOrder } from '../../../../src/core/questions/families/procedure/step-order.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { describeRules } from '../rules.ts';
import { withSteps, workUnit } from './works.ts';

const unit = workUnit();
const order = (text: string) => ({ form: 'order' as const, order: [...text] });

const chainOf = (seed: number, about?: string) => {
  const question = ask(unit, stepOrder, seed, about)!;
  return { question, chain: question.answers[0].form === 'order' ? question.answers[0].order.join('') : '' };
};

/** Every chain of four or five in the work, by hand. */
const CHAINS = [
  'abce', 'abde', 'abch', 'abdh', 'abeh', 'aceh', 'adeh', 'bceh', 'bdeh', 'afgh', 'abceh', 'abdeh',
]; // biome-ignore format: a list reads across

describe('step-order, by hand from works.ts', () => {
  test('only chains are asked, and all of them', () => {
    const met = new Set(Array.from({ length: 400 }, (_, seed) => chainOf(seed).chain));
    expect([...met].sort()).toEqual([...CHAINS].sort());
  });

  test('each step that something comes before, in a chain with it', () => {
    expect(stepOrder.facts(unit)).toEqual(
      ['b', 'c', 'd', 'e', 'f', 'g', 'h'].map((id) => `step:job/${id}/before`),
    );
    for (const id of 'bcdefgh')
      for (let seed = 0; seed < 10; seed++) {
        const { chain } = chainOf(seed, `step:job/${id}/before`);
        expect(chain.indexOf(id)).toBeGreaterThan(0);
      }
  });

  test.each([
    ['afgh', true, [], []],
    ['fagh', false, ['step-too-early'], ['f']],
    ['agfh', false, ['step-too-early'], ['g']],
    ['afhg', false, ['step-too-early'], ['h']],
    ['hgfa', false, ['steps-turned-round'], []],
    ['gfah', false, [], []],
  ])('a, f, g and h put as %s: right %s', (given, right, slipUps, missed) => {
    const { question, chain } = chainOf(0, 'step:job/g/before');
    expect(chain).toBe('afgh');
    const verdict = judge(question, order(given));
    expect(verdict).toEqual({ right, slipUps, missed: missed.map((id) => `step:job/${id}/before`) });
  });

  test('a relation that only an unverified step holds is not asked', () => {
    // without b's record nothing is known to come before c and d but b itself
    const doubtful = workUnit(withSteps(({ id }) => (id === 'b' ? { unsure: true } : {})));
    for (let seed = 0; seed < 40; seed++) {
      const question = ask(doubtful, stepOrder, seed);
      const chain = question?.answers[0].form === 'order' ? question.answers[0].order.join('') : 'afgh';
      expect(chain).toBe('afgh');
    }
  });

  test('steps in the same words are never put in order', () => {
    const twins = workUnit(withSteps(({ id }) => (id === 'f' || id === 'g' ? { text: 'Bolts off.' } : {})));
    for (let seed = 0; seed < 60; seed++) {
      const answer = ask(twins, stepOrder, seed)!.answers[0];
      expect(answer.form === 'order' && answer.order.some((id) => id === 'f' || id === 'g')).toBe(false);
    }
  });
});

describeRules(stepOrder, { seeds: 60 });
