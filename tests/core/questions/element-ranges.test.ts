import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { elementRanges } from '../../../src/core/questions/families/element-ranges.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules, withUnsure } from './rules.ts';

const eight = makeUnit(deckOf(PUBLISHED.find((train) => train.id === 'eight-speed-dp-ravigneaux-b')!));

describe('element-ranges on the transverse eight-speed (chart as in tests/published)', () => {
  // B1 holds in 2 and 8 only; C3 in 3, 7 and R1; C4 in 4, 6 and R2
  test.each([
    ['B1', ['2', '8'], true, []],
    ['B1', ['2', '3', '4', '5', '6', '7', '8'], false, ['once-on-stays-on']],
    ['C3', ['3', '7', 'R1'], true, []],
    ['C3', ['3', '7'], false, ['reverse-left-out']],
    ['C3', ['3', '4', '5', '6', '7', 'R1'], false, ['once-on-stays-on']],
    ['C3', ['4', '6', 'R2'], false, ['neighbour-element']],
    ['C3', ['3'], false, []],
  ])('%s answered %j', (element, picks, right, slipUps) => {
    const question = ask(eight, elementRanges, 1, `element:${element}/ranges`)!;
    const verdict = judge(question, { form: 'set', picks });
    expect(verdict.right).toBe(right);
    expect(verdict.slipUps).toEqual(slipUps);
  });

  test('asks about no element that every range or no range uses', () => {
    // the one-way F1 stands in no row of this chart
    expect(elementRanges.facts(eight)).toEqual(
      ['C1', 'C2', 'C3', 'C4', 'B1', 'B2'].map((id) => `element:${id}/ranges`),
    );
    const single = makeUnit(deckOf(PUBLISHED.find((train) => train.id === 'textbook-sun-held-23-55')!));
    expect(elementRanges.facts(single)).toEqual([]);
  });

  test('asks about no column while one of its cells is unverified', () => {
    expect(elementRanges.facts(makeUnit(withUnsure(eight.deck, 'range:5')))).toEqual([]);
  });
});

describeRules(elementRanges);
