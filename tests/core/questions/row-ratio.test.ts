import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { rowRatio } from '../../../src/core/questions/families/row-ratio.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));
const answer = (id: string, range: string, value: string) =>
  judge(ask(unitOf(id), rowRatio, 1, `range:${range}/ratio`)!, { form: 'number', value });

describe('row-ratio accepts every published ratio (tests/published) and what is a little off it', () => {
  const rows = PUBLISHED.flatMap((train) =>
    train.chart.map((row) => [train.id, row.range, row.publishedRatio] as const),
  );
  test.each(rows)('%s range %s: %d', (id, range, ratio) => {
    expect(answer(id, range, ratio.toFixed(2)).right).toBe(true);
    expect(answer(id, range, (ratio + 0.005 * Math.sign(ratio)).toFixed(3)).right).toBe(true);
    expect(answer(id, range, (ratio * 1.03).toFixed(3)).right).toBe(false);
  });
});

describe('row-ratio, wrong rules worked by hand', () => {
  const crossed = 'four-range-two-crossed-sets';
  test.each([
    // 1: rear sun 45 in, rear ring 83 held, carrier out: (45 + 83) / 45 = 2.844
    [crossed, '1', '0.35', ['inverse-ratio']],
    [crossed, '1', '1.84', ['carrier-forgotten']], // 83 / 45
    [crossed, '1', '1.54', ['sun-ring-swapped']], // 128 / 83
    [crossed, '1', '1.57', ['neighbour-range']],
    [crossed, '1', '2.50', []],
    // R: front sun 28 in, front carrier held, ring 62 out
    [crossed, 'R', '2.21', ['sign-lost']],
    [crossed, 'R', '-0.45', ['inverse-ratio', 'sun-ring-swapped']],
    // Ravigneaux 1: sun 24 on pinions in pairs, ring 69; taken for a simple set it would run backward
    ['ravigneaux-4-a', '1', '-2.875', ['pinion-pair-missed']],
    // six-speed 1: front set (37 + 71) / 71 = 1.521, then ring 85 over sun 31
    ['lepelletier-6-a', '1', '1.521', ['first-set-only']],
  ])('%s range %s answered %s', (id, range, value, slipUps) => {
    const verdict = answer(id, range, value);
    expect(verdict.right).toBe(false);
    expect(verdict.slipUps).toEqual(slipUps);
  });
});

test('the explanation puts the numbers into each set in turn', () => {
  const unit = unitOf('lepelletier-6-a');
  const say = makeSay(unit.deck);
  const { explanation } = ask(unit, rowRatio, 1, 'range:1/ratio')!;
  expect(explanation.more.map(say)).toEqual([
    'A makes two shafts turn as one: c1; s2.',
    'D holds c still.',
    'Put the input at 1; what is held to the case is at 0.',
    'A simple set: sun teeth × sun speed + ring teeth × ring speed = both teeth together × carrier speed.',
    'A set with pinions in pairs: ring teeth × ring speed − sun teeth × sun speed = the difference in teeth × carrier speed.',
    'P1: 37 × 0 + 71 × 1 = 108 × c1, so c1 = 0.6574.',
    'Psmall: 85 × out − 31 × 0.6574 = 54 × 0, so out = 0.2398.',
  ]);
  expect(say(explanation.reason)).toBe(
    'With the input at 1, out turns at 0.2398, the same way as the input: 1 ÷ 0.2398 gives a ratio of 4.171.',
  );
});

describeRules(rowRatio);
