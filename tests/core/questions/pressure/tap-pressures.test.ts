import { describe, expect, test } from 'vitest';
import { tapPressures } from '../../../../src/core/questions/families/pressure/tap-pressures.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { makeUnit } from '../../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../../units.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';

/**
 * Chart as published (Chrysler four-speed transaxle): 1 UD LR, 2 UD B24, 3 UD OD, 4 OD B24, R RV LR. Made up:
 * S1 to S5 feed UD, OD, RV, B24, LR; S2 and S4 give pressure unplugged; D cuts RV, R cuts UD, OD and B24.
 */
const unit = makeUnit(deckOf(PUBLISHED.find(({ id }) => id === 'four-range-two-crossed-sets')!));

const posed = (range: string, solenoid: string, changed: boolean) =>
  tapPressures.pose(unit, `solenoid:${solenoid}/pressure`, {
    ...scripted({ units: [changed ? 0.9 : 0] }),
    pick: (items) => items.find((item) => (item as { range: { id: string } }).range.id === range)!,
  })!;

const cells = (...full: string[]) =>
  Object.fromEntries(
    ['UD', 'OD', 'RV', 'B24', 'LR'].map((id) => [`${id}/gauge`, full.includes(id) ? 'full' : 'none']),
  );

describe('tap-pressures, worked by hand', () => {
  test.each([
    ['1', 'S1', true, ['LR']],
    ['1', 'S2', true, ['UD', 'OD', 'LR']],
    ['3', 'S4', true, ['UD', 'OD', 'B24']],
    ['4', 'S2', false, ['OD', 'B24']],
    ['3', 'S3', false, ['UD', 'OD']],
    ['R', 'S5', true, ['RV']],
    // the manual valve cuts OD and B24 in R, whatever their solenoids do
    ['R', 'S2', false, ['RV', 'LR']],
    ['R', 'S4', false, ['RV', 'LR']],
  ])('range %s with the plug of %s off', (range, solenoid, changed, full) => {
    const question = posed(range, solenoid, changed);
    expect(judge(question, { form: 'fill', cells: cells(...full) }).right).toBe(true);
  });

  test('slip-ups are known', () => {
    const first = posed('1', 'S2', true);
    expect(judge(first, { form: 'fill', cells: cells('UD', 'LR') }).slipUps).toEqual([
      'fault-left-out',
      'current-means-pressure',
    ]);
    const reverse = posed('R', 'S2', false);
    expect(judge(reverse, { form: 'fill', cells: cells('RV', 'LR', 'OD') }).slipUps).toEqual([
      'current-cuts-pressure',
      'valve-forgotten',
    ]);
    // row 2 in place of row 1, the dead solenoid seen
    expect(judge(first, { form: 'fill', cells: cells('UD', 'OD', 'B24') }).slipUps).toEqual([
      'neighbour-range',
    ]);
  });

  test('a solenoid that changes nothing anywhere is no fact here', () => {
    const facts = tapPressures.facts(unit);
    expect(facts).toEqual(['S1', 'S2', 'S3', 'S4', 'S5'].map((id) => `solenoid:${id}/pressure`));
    const deck = { ...unit.deck, solenoids: unit.deck.solenoids!.slice(0, 4) };
    expect(tapPressures.facts(makeUnit(deck))).not.toContain('solenoid:S5/pressure');
  });
});

describeRules(tapPressures, { seeds: 40 });
