import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { elementCompany } from '../../../src/core/questions/families/element-company.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));

const answerTo = (train: string, element: string, pairs: Readonly<Record<string, string>>) =>
  judge(ask(unitOf(train), elementCompany, 5, `element:${element}/company`)!, { form: 'pair', pairs });

describe('element-company, read off published charts (tests/published names their sources)', () => {
  test.each([
    // UD: 1 UD LR, 2 UD B24, 3 UD OD
    ['four-range-two-crossed-sets', 'UD', { OD: 'some', RV: 'none', B24: 'some', LR: 'some' }],
    // LR: 1 UD LR, R RV LR
    ['four-range-two-crossed-sets', 'LR', { UD: 'some', OD: 'none', RV: 'some', B24: 'none' }],
    // C0: 1 C0 C1 B3, 2 C0 C1 B1, 3 C0 C1 C2, R C0 C2 B3
    ['four-range-simpson-overdrive', 'C0', { C1: 'some', C2: 'some', B0: 'none', B1: 'some', B3: 'some' }],
    // B3: 1 and R, both with C0
    ['four-range-simpson-overdrive', 'B3', { C0: 'all', C1: 'some', C2: 'some', B0: 'none', B1: 'none' }],
    // C2 of the four-range Ravigneaux: 3 C1 C2, 4 C2 B1; the one-way is not asked
    ['ravigneaux-4-a', 'C2', { C1: 'some', C3: 'none', B1: 'some', B2: 'none' }],
  ])('%s, beside %s', (train, element, pairs) => {
    expect(answerTo(train, element, pairs).right).toBe(true);
  });

  test('wrong rules are known by name', () => {
    const said = (pairs: Readonly<Record<string, string>>) =>
      answerTo('four-range-two-crossed-sets', 'LR', pairs).slipUps;
    // range 1 alone
    expect(said({ UD: 'all', OD: 'none', RV: 'none', B24: 'none' })).toEqual([
      'one-range-for-all',
      'reverse-left-out',
    ]);
    // R alone
    expect(said({ UD: 'none', OD: 'none', RV: 'all', B24: 'none' })).toEqual(['one-range-for-all']);
    // UD is on in 1 2 3 and RV in R: of those, LR is on in 1 and in R
    expect(said({ UD: 'some', OD: 'none', RV: 'all', B24: 'none' })).toEqual(['asked-the-other-way']);
    expect(said({ UD: 'none', OD: 'none', RV: 'none', B24: 'none' })).toEqual([]);
  });

  test('an element of one range, or too small a chart, is not asked', () => {
    expect(elementCompany.facts(unitOf('four-range-two-crossed-sets'))).not.toContain('element:RV/company');
    expect(elementCompany.facts(unitOf('textbook-sun-held-23-55'))).toEqual([]);
  });
});

describeRules(elementCompany);
