import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { shiftChanges } from '../../../src/core/questions/families/shift-changes.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules, withUnsure } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));
const crossed = unitOf('four-range-two-crossed-sets');
const ravigneaux = unitOf('ravigneaux-4-a');

/** The question about a shift in the direction wanted: up and down are drawn. */
const shifting = (unit: typeof crossed, fact: string, from: string) =>
  Array.from({ length: 40 }, (_, seed) => ask(unit, shiftChanges, seed, fact)!).find((question) =>
    JSON.stringify(question.prompt.values?.from).includes(`"id":"${from}"`),
  )!;

describe('shift-changes, worked from the charts in tests/published', () => {
  // crossed sets: 2 UD B24 -> 3 UD OD
  const up = { UD: 'stays-on', OD: 'comes-on', RV: 'stays-off', B24: 'goes-off', LR: 'stays-off' };
  test.each([
    ['as it is', up, true, []],
    ['turned round', { ...up, OD: 'goes-off', B24: 'comes-on' }, false, ['release-apply-swapped']],
    ['held element counted', { ...up, UD: 'comes-on' }, false, ['held-through-counted']],
    ['nothing released', { ...up, B24: 'stays-on' }, false, ['applied-only']],
    // 2 -> 4 instead: OD comes on, UD goes off, B24 stays
    ['next row taken', { ...up, UD: 'goes-off', B24: 'stays-on' }, false, ['neighbour-range']],
    ['something else', { ...up, LR: 'comes-on' }, false, []],
  ])('2 to 3, %s', (_, pairs, right, slipUps) => {
    const verdict = judge(shifting(crossed, 'shift:2>3', '2'), { form: 'pair', pairs });
    expect(verdict.right).toBe(right);
    expect(verdict.slipUps).toEqual(slipUps);
  });

  test('the same fact asked down the box turns on and off round', () => {
    expect(shifting(crossed, 'shift:2>3', '3').answers).toEqual([
      {
        form: 'pair',
        pairs: { UD: 'stays-on', OD: 'goes-off', RV: 'stays-off', B24: 'comes-on', LR: 'stays-off' },
      },
    ]);
  });

  test('a one-way that stops holding goes off: Ravigneaux 1 to 2', () => {
    const { answers } = shifting(ravigneaux, 'shift:1>2', '1');
    expect(answers[0]).toMatchObject({ pairs: { C1: 'stays-on', F2: 'goes-off', B1: 'comes-on' } });
  });

  test('facts are the steps of the forward ladder; a second row of the same ratio is not a step', () => {
    expect(shiftChanges.facts(ravigneaux)).toEqual(['shift:1>2', 'shift:2>3', 'shift:3>4']);
  });
});

test('a step with an unverified row is left out, and no longer step takes its place', () => {
  const doubtful = makeUnit(withUnsure(crossed.deck, 'range:3'));
  expect(shiftChanges.facts(doubtful)).toEqual(['shift:1>2']);
});

describeRules(shiftChanges);
