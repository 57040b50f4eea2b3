import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { rangeElements } from '../../../src/core/questions/families/range-elements.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const ravigneaux = makeUnit(deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!));

describe('range-elements on the Ravigneaux four-speed (tests/published)', () => {
  test.each([
    ['2', ['C1', 'B1'], []],
    ['2', ['C1', 'B2'], ['neighbour-range']],
    ['1', ['C1'], ['one-way-left-out']],
    ['3', ['C1', 'C2', 'C3'], []],
  ])('range %s answered %j', (range, picks, slipUps) => {
    const question = ask(ravigneaux, rangeElements, 1, `range:${range}/elements`)!;
    const verdict = judge(question, { form: 'set', picks });
    expect(verdict.slipUps).toEqual(slipUps);
    expect(verdict.right).toBe(range === '2' && picks[1] === 'B1');
  });
});

describeRules(rangeElements);
