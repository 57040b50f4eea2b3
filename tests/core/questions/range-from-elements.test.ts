import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { rangeFromElements } from '../../../src/core/questions/families/range-from-elements.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const crossed = makeUnit(deckOf(PUBLISHED.find((train) => train.id === 'four-range-two-crossed-sets')!));

describe('range-from-elements on the four-range crossed sets (chart as in tests/published)', () => {
  // 1 UD LR · 2 UD B24 · 3 UD OD · 4 OD B24 · R RV LR; rows that share an element, and rows printed beside
  test.each([
    ['2', '1', ['subset-range', 'neighbour-range']],
    ['2', '4', ['subset-range']],
    ['4', 'R', ['neighbour-range']],
    ['1', 'R', ['subset-range']],
    ['3', '3', []],
  ])('elements of range %s taken for range %s', (range, pick, slipUps) => {
    const question = ask(crossed, rangeFromElements, 1, `range:${range}/elements`)!;
    const verdict = judge(question, { form: 'one', pick });
    expect(verdict.right).toBe(range === pick);
    expect(verdict.slipUps).toEqual(slipUps);
  });

  test('shows every row that shares an element or stands beside, in chart order, and no other', () => {
    const { space } = ask(crossed, rangeFromElements, 1, 'range:1/elements')!;
    expect(space.form === 'one' && space.options.map((option) => option.id)).toEqual(['1', '2', '3', 'R']);
  });

  test('does not ask about a row that another row repeats', () => {
    const twice = PUBLISHED.find((train) => train.id === 'lepelletier-6-a')!;
    const unit = makeUnit(deckOf({ ...twice, chart: [...twice.chart, { ...twice.chart[2]!, range: '3s' }] }));
    const facts = rangeFromElements.facts(unit);
    expect(facts).toContain('range:2/elements');
    expect(facts).not.toContain('range:3/elements');
    expect(facts).not.toContain('range:3s/elements');
  });
});

describeRules(rangeFromElements);
