import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { stackOrder } from '../../../../src/core/questions/families/stacks/stack-order.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeSay } from '../../../../src/words/words.ts';
import { describeRules } from '../rules.ts';
import { PACKS, packUnit, plate } from './packs.ts';

const unit = packUnit();
const asked = (stack: string) => ask(unit, stackOrder, 0, `stack:${stack}/order`)!;
const order = (text: string) => ({ form: 'order' as const, order: text.split(' ') });

describe('stack-order, by hand from packs.ts', () => {
  test.each([
    ['C1', 'piston wave s1 f1 s2 f2 s3 f3 backing ring', true, []],
    // identical plates stand for each other
    ['C1', 'piston wave s3 f2 s1 f3 s2 f1 backing ring', true, []],
    ['C1', 'wave piston s3 f2 s1 f3 s2 f1 backing ring', false, ['adjacent-swapped']],
    ['C1', 'piston wave f3 s1 s2 f2 s3 f1 backing ring', false, ['adjacent-swapped']],
    ['C1', 'piston wave s3 s2 s1 f1 f2 f3 backing ring', false, ['likes-together']],
    ['C1', 'piston s1 f1 s2 f2 s3 f3 backing wave ring', false, ['wave-at-wrong-end']],
    ['C1', 'ring backing f1 s1 f2 s2 f3 s3 wave piston', false, ['counted-from-opening']],
    ['C1', 'ring piston f1 s1 f2 s2 f3 s3 wave backing', false, []],
    ['B1', 'apply f2 s1 f1 backing ring', true, []],
    ['B1', 'apply f1 f2 s1 backing ring', false, ['adjacent-swapped', 'likes-together']],
    ['B1', 'ring backing f1 s1 f2 apply', false, ['counted-from-opening']],
  ])('%s as %s: right %s', (stack, given, right, slipUps) => {
    const verdict = judge(asked(stack), order(given));
    expect(verdict.right).toBe(right);
    expect(verdict.slipUps).toEqual(slipUps);
    expect(verdict.missed).toEqual(slipUps.length > 0 ? [`stack:${stack}/order`] : []);
  });

  test('orders that look alike are counted once: 10!/(3! 3!) = 100800, 6!/2! = 360', () => {
    expect(asked('C1').guessRate).toBeCloseTo(1 / 100_800, 12);
    expect(asked('B1').guessRate).toBeCloseTo(1 / 360, 12);
  });

  test('the floor and its end are said', () => {
    const say = makeSay(unit.deck);
    expect(say(asked('B1').prompt)).toBe(
      'B1: put all its parts in order, from the floor (case shoulder, at the rear) up.',
    );
  });

  test('plates that look alike but are not marked identical are never put in order', () => {
    const bare = PACKS.C1.items.map(({ identical: _, ...item }) => item);
    expect(stackOrder.facts(packUnit([{ ...PACKS.C1, items: bare }]))).toEqual([]);
  });

  test('two plates told apart by nothing but the way they lie are not put in order either', () => {
    const twins = [
      plate('x', 'backing', '5.0', { looks: { feature: 'step', towards: 'floor' } }),
      plate('y', 'backing', '5.0', { looks: { feature: 'step', towards: 'opening' } }),
    ];
    const stack = { ...PACKS.B1, items: [...PACKS.B1.items, ...twins] };
    expect(stackOrder.facts(packUnit([stack]))).toEqual([]);
  });

  test('of a very high pack neighbouring plates are asked, the floor told', () => {
    const more = Array.from({ length: 5 }, (_, index) => [
      plate(`s${index + 4}`, 'steel', '2.0', { identical: 'steel' }),
      plate(`f${index + 4}`, 'friction', '1.9', { identical: 'friction' }),
    ]).flat();
    const high = { ...PACKS.C1, items: PACKS.C1.items.toSpliced(8, 0, ...more) };
    const ids = high.items.map(({ id }) => id);
    for (let seed = 0; seed < 20; seed++) {
      const question = ask(packUnit([high]), stackOrder, seed)!;
      const right = question.answers[0].form === 'order' ? question.answers[0].order : [];
      expect(right).toHaveLength(7);
      const start = ids.indexOf(right[0]!);
      expect(ids.slice(start, start + 7)).toEqual(right);
    }
  });
});

describeRules(stackOrder, { seeds: 60 });
