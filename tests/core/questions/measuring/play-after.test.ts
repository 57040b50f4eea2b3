import { describe, expect, test } from 'vitest';
import { playAfter } from '../../../../src/core/questions/families/measuring/play-after.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';
import { fitOf, listed, mm, unitWithFits } from './bench.ts';

type Fit = ReturnType<typeof fitOf>;

function posed(fit: Fit, part: string, present: string, steps: number) {
  const random = scripted({ picks: [part, present], ints: [steps], again: true });
  return playAfter.pose(unitWithFits(fit), 'fit:f/effect', random)!;
}

const inTurn = (drawn: ReturnType<typeof posed>, ...ways: string[]) => {
  if (drawn.space.form !== 'pair') throw new Error('asked in pairs');
  const pairs = Object.fromEntries(drawn.space.left.map(({ id }, index) => [id, ways[index]!]));
  return judge(drawn, { form: 'pair', pairs });
};

describe('play-after on published readings', () => {
  test.each([
    // 1.20 in, 0.95 read, 0.20 to 0.45: 1.70 and 1.95 leave 0.45 and 0.20, both just in. Arithmetic
    ['1.20 in, 0.95 read', fitOf(mm, '0.20', '0.45', { parts: listed(mm, '1.20', '1.45', '1.70', '1.95', '2.20') }), '1.70', '1.20', 25, ['high', 'in', 'in', 'low']],
    // Toyota underdrive clutch, flanges as listed: 1.95 supposed with 3.2 in, 1.51 to 1.71
    ['3.2 in, 1.95 read', fitOf(mm, '1.51', '1.71', { parts: listed(mm, '3.0', '3.2', '3.4', '3.6', '3.8') }), '3.6', '3.2', 4, ['high', 'high', 'in', 'low']],
    // Eaton FSO-2105, p. 95: 0.47 read with no shims, 0.36 to 0.41 would do; shims made up
    ['none in, 0.47 read', fitOf(mm, '0.06', '0.11', { method: 'bare', parts: listed(mm, '0.35', '0.36', '0.41', '0.42') }), '0.41', '0.35', 0, ['high', 'in', 'in', 'low']],
  ] as const)('%s', (_, fit, part, present, steps, ways) => {
    expect(inTurn(posed(fit, part, present, steps), ...ways).right).toBe(true);
  }); // biome-ignore format: a table reads across

  test('where a thicker part opens the play the same parts do the opposite', () => {
    const parts = listed(mm, '0.10', '0.20', '0.30', '0.40');
    const fit = fitOf(mm, '0.25', '0.40', { method: 'bare', effect: 'opens', parts });
    // 0.08 read with none in: 0.18, 0.28, 0.38, 0.48
    const drawn = posed(fit, '0.20', '0.10', 3);
    expect(inTurn(drawn, 'low', 'in', 'in', 'high').right).toBe(true);
    // 0.08 less any of them is nothing
    expect(inTurn(drawn, 'low', 'low', 'low', 'low').slipUps).toEqual(['thicker-turned-round']);
  });

  test('slip-ups are known', () => {
    const parts = listed(mm, '1.20', '1.45', '1.70', '1.95', '2.20');
    const drawn = posed(fitOf(mm, '0.20', '0.45', { parts }), '1.70', '1.20', 25);
    expect(inTurn(drawn, 'high', 'low', 'low', 'low')).toMatchObject({ right: false, slipUps: [] });
    expect(inTurn(drawn, 'high', 'high', 'high', 'high').slipUps).toEqual(['thicker-turned-round']);
    expect(inTurn(drawn, 'high', 'high', 'low', 'low').slipUps).toEqual(['limit-counted-out']);
    // 0.95 less each of them alone
    expect(inTurn(drawn, 'low', 'low', 'low', 'low').slipUps).toEqual(['fitted-part-forgotten']);
  });
});

describeRules(playAfter, { seeds: 60 });
