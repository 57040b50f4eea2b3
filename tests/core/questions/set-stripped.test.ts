import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { setStripped } from '../../../src/core/questions/families/set-stripped.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));

const said = (train: string, gearset: string, ...picks: string[]) =>
  judge(ask(unitOf(train), setStripped, 1, `gearset:${gearset}/stripped`)!, { form: 'set', picks });

describe('set-stripped on published trains (tests/published names their sources), worked by hand', () => {
  test.each([
    // front set gone: 1 runs through the rear set alone, in 3 that is locked; 2, 4 and R need both or the front
    ['four-range-two-crossed-sets', 'F', ['2', '4', 'R']],
    // rear set gone: 4 and R run through the front set alone
    ['four-range-two-crossed-sets', 'R', ['1', '2', '3']],
    // overdrive set gone: nothing drives ring-od
    ['four-range-simpson-overdrive', 'OD', ['1', '2', '3', '4', 'R']],
    // rear set gone: 1 and R hold its carrier; 2, 3 and 4 run through the front set
    ['four-range-simpson-overdrive', 'R', ['1', 'R']],
    // small-sun set gone: 4 and R run through the large sun; so does nothing else
    ['ravigneaux-4-a', 'Psmall', ['1', '1m', '2', '3']],
    // large-sun set gone: 1 needs the small sun alone, and so does direct drive
    ['ravigneaux-4-a', 'Plarge', ['2', '4', 'R']],
    // first set gone: A and B turn nothing, so all but 6 lose; 6 is E and C on the large sun
    ['lepelletier-6-a', 'P1', ['1', '2', '3', '4', '5', 'R']],
  ])('%s without %s: %j', (train, gearset, lost) => {
    expect(said(train, gearset, ...lost).right).toBe(true);
  });

  test('wrong rules are known by name', () => {
    const slipUps = (gearset: string, ...picks: string[]) =>
      said('four-range-two-crossed-sets', gearset, ...picks).slipUps;
    expect(slipUps('F', '1', '2', '3', '4', 'R')).toEqual(['all-ranges-lost']);
    expect(slipUps('F', '2')).toEqual(['first-use-only']);
    // in 1 the front set turns idle
    expect(slipUps('F', '1', '2', '4', 'R')).toEqual(['turning-means-working']);
    expect(slipUps('F', '2', '4')).toEqual(['reverse-left-out']);
    expect(slipUps('F', '1', '2', '3')).toEqual(['neighbour-gearset']);
    // in 3 the rear set turns as one, under load
    expect(slipUps('R', '1', '2')).toEqual(['locked-set-spared']);
    expect(slipUps('R', '4')).toEqual([]);
  });

  test('with too few ranges it is not asked', () => {
    expect(setStripped.facts(unitOf('textbook-sun-held-23-55'))).toEqual([]);
  });
});

describeRules(setStripped);
