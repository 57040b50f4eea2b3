import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { elementFails } from '../../../src/core/questions/families/element-fails.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const deckNamed = (id: string) => deckOf(PUBLISHED.find((train) => train.id === id)!);
const judged = (train: string, element: string, picks: readonly string[]) =>
  judge(ask(makeUnit(deckNamed(train)), elementFails, 1, `element:${element}/fails`)!, {
    form: 'set',
    picks,
  });

describe('element-fails on published trains (tests/published names their sources), worked by hand', () => {
  test.each([
    // Ravigneaux: F2 holds the carrier when pulling forward, so 1m stays; in R it lets the carrier through
    ['ravigneaux-4-a', 'B2', ['R']],
    // without B1 the carrier falls onto F2 in 2, which is 1; in 4 C2 drives the carrier and nothing is held
    ['ravigneaux-4-a', 'B1', ['2', '4']],
    ['ravigneaux-4-a', 'C1', ['1', '1m', '2', '3']],
    ['ravigneaux-4-a', 'F2', ['1']],
    // five-speed: F2 joins s2 to s3 where s2 is pushed backward (1, 2, R1, R2); in 4 and 5 s2 leads s3
    ['five-speed-3sets-a', 'K3', ['4', '5']],
    // F1 holds s1 against backward (1, R1); in 5 the carrier pushes s1 forward
    ['five-speed-3sets-a', 'B1', ['5']],
    ['four-range-two-crossed-sets', 'UD', ['1', '2', '3']],
    ['four-range-two-crossed-sets', 'LR', ['1', 'R']],
    ['lepelletier-6-a', 'E', ['4', '5', '6']],
  ])('%s without %s loses %j', (train, element, lost) => {
    expect(judged(train, element, lost).right).toBe(true);
  });

  test.each([
    ['ravigneaux-4-a', 'B2', ['1m', 'R'], ['one-way-cover-forgotten']],
    ['ravigneaux-4-a', 'B2', ['1m'], ['first-use-only']],
    ['ravigneaux-4-a', 'B1', ['4'], ['other-ratio-kept']],
    ['ravigneaux-4-a', 'C1', ['1', '1m', '2', '3', '4', 'R'], ['all-ranges-lost']],
    ['lepelletier-6-a', 'E', ['2', '6'], ['neighbour-element']],
    // seven-speed: K1 is on in 4, where K2 and B2 settle every speed already
    ['seven-speed-reversed-ravigneaux', 'K1', ['3', '4', '5'], ['unneeded-counted']],
    ['four-range-two-crossed-sets', 'UD', ['2', '4'], []],
  ])('%s without %s, answered %j: %j', (train, element, picks, slipUps) => {
    expect(judged(train, element, picks)).toMatchObject({ right: false, slipUps });
  });

  test('nothing is asked where one tooth count, one element or too many rows are unverified', () => {
    const deck = deckNamed('four-range-two-crossed-sets');
    const [first, ...others] = deck.train.gearsets;
    const train = { ...deck.train, gearsets: [{ ...first!, unsure: true as const }, ...others] };
    expect(elementFails.facts(makeUnit({ ...deck, train }))).toEqual([]);
    const unsure = deck.chart.ranges.map((range, index) =>
      index < 2 ? { ...range, unsure: true as const } : range,
    );
    expect(elementFails.facts(makeUnit({ ...deck, chart: { ranges: unsure } }))).toEqual([]);
    expect(elementFails.facts(makeUnit(deck))).not.toEqual([]);
  });

  test('a chart that its one-ways belie is not asked about', () => {
    const deck = deckNamed('ravigneaux-4-a');
    const elements = deck.train.elements.map((element) =>
      element.kind === 'one-way' ? { ...element, overruns: 'backward' as const } : element,
    );
    expect(elementFails.facts(makeUnit({ ...deck, train: { ...deck.train, elements } }))).toEqual([]);
  });
});

describeRules(elementFails);
