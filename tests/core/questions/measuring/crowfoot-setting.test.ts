import { describe, expect, test } from 'vitest';
import { crowfootSetting } from '../../../../src/core/questions/families/measuring/crowfoot-setting.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Torque } from '../../../../src/core/unit/record.ts';
import { makeUnit } from '../../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../../units.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';

const bare = deckOf(PUBLISHED.find(({ id }) => id === 'textbook-sun-held-23-55')!);

/** Lever and adapter in the steps tools come in: tens of millimetres, half inches. */
function posed(torque: Torque, angle: number, lever: number, adapter: number) {
  const unit = makeUnit({ ...bare, torques: [{ id: 't', torque }] });
  const random = scripted({ picks: ['t', String(angle)], ints: [lever, adapter] });
  return crowfootSetting.pose(unit, 'skill:crowfoot', random)!;
}

const lbfIn = (value: string): Torque => ({ value, unit: 'lbf·in' });
const lbfFt = (value: string): Torque => ({ value, unit: 'lbf·ft' });
const nm = (value: string): Torque => ({ value, unit: 'N·m' });

describe('crowfoot-setting on published settings', () => {
  test.each([
    // Robinson R66 Maintenance Manual, p. 20.4: 10 in wrench, 1.5 in adapter, 135 lbf·in: 117.39 and 158.82
    [lbfIn('135'), 0, 20, 3, 117.39],
    [lbfIn('135'), 180, 20, 3, 158.82],
    // Performance Tool M199 manual, p. 7: 16 in, 2 in, 50 lbf·ft: 44.44; square across, as specified
    [lbfFt('50'), 0, 32, 4, 44.44],
    [lbfFt('50'), 90, 32, 4, 50],
    // agentcalc.com wrench calculator (a weak source): 40 cm, 5 cm, 80 N·m
    [nm('80'), 0, 40, 5, 71.11],
    // Arithmetic from TM 9-254, fig. 46: 16 in, 2 in at 45°
    [lbfFt('50'), 45, 32, 4, 45.939],
  ])('%o at %i° with lever %i and adapter %i steps long: %d', (torque, angle, lever, adapter, setting) => {
    const question = posed(torque, angle, lever, adapter);
    const said = (value: number) => judge(question, { form: 'number', value: value.toFixed(4) });
    expect(said(setting).right).toBe(true);
    // one in a hundred is right, two are not
    expect(said(setting * 1.02).right).toBe(false);
  });

  test('slip-ups are known', () => {
    // 50 at 16 and 2 in, 45°: as it is; 50 × (1 + 1.414/16); straight 44.44; 16/(16 − 2)
    const question = posed(lbfFt('50'), 45, 32, 4);
    const slips = (value: string) => judge(question, { form: 'number', value }).slipUps;
    expect(slips('50')).toEqual(['adapter-left-out']);
    expect(slips('54.42')).toEqual(['longer-means-higher']);
    expect(slips('44.44')).toEqual(['angle-left-out']);
    expect(slips('57.14')).toEqual(['adapter-taken-off']);
  });

  test('square across, leaving the adapter out is no slip-up', () => {
    const question = posed(lbfFt('50'), 90, 32, 4);
    expect(question.lures.map(({ slipUp }) => slipUp)).toEqual(['angle-left-out', 'adapter-taken-off']);
  });
});

describeRules(crowfootSetting, { seeds: 60 });
