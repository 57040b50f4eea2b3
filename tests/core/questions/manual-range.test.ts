import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { manualRange } from '../../../src/core/questions/families/manual-range.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));

/**
 * The published four-range Ravigneaux (tests/published names its source): 1 is C1 with F2 on the carrier, 1m is
 * C1 with B2 there. Five brakes and clutches, so all of them are asked.
 */
const question = ask(unitOf('ravigneaux-4-a'), manualRange, 1)!;

const said = (on: readonly string[], freeBrakes: string, firmBrakes: string) =>
  judge(question, {
    form: 'fill',
    cells: {
      ...Object.fromEntries(
        ['C1', 'C2', 'C3', 'B1', 'B2'].map((id) => [`${id}/firm`, on.includes(id) ? 'yes' : 'no']),
      ),
      'engine-braking/free': freeBrakes,
      'engine-braking/firm': firmBrakes,
    },
  });

describe('manual-range, on a published chart', () => {
  test('1m has B2 on beside C1 and brakes the engine, 1 does not', () => {
    expect(said(['C1', 'B2'], 'no', 'yes').right).toBe(true);
  });

  test.each([
    [['C1'], 'no', 'yes', ['same-range-same-elements']],
    [['C1', 'B2'], 'yes', 'yes', ['one-way-holds-both-ways']],
    [['C1', 'B2'], 'yes', 'no', ['one-way-brakes-engine']],
    // the row below is 2: C1 B1
    [['C1', 'B1'], 'no', 'yes', ['neighbour-range']],
    [['C1', 'B2'], 'no', 'no', []],
  ])('%j, braking %s and %s: %j', (on, free, firm, slipUps) => {
    expect(said(on, free, firm)).toMatchObject({ right: false, slipUps });
  });

  test('no ratio twice, no question', () => {
    expect(manualRange.facts(unitOf('four-range-two-crossed-sets'))).toEqual([]);
    expect(manualRange.facts(unitOf('eight-speed-dp-ravigneaux-b'))).toEqual([]);
    expect(manualRange.facts(unitOf('ravigneaux-4-a'))).toEqual(['range:1m/by-hand']);
  });
});

describeRules(manualRange);
