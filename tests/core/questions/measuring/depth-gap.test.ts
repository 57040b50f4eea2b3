import { describe, expect, test } from 'vitest';
import { depthGap } from '../../../../src/core/questions/families/measuring/depth-gap.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { DeckReading } from '../../../../src/core/unit/fits.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';
import { fitOf, listed, mm, unitWithFits } from './bench.ts';

type Faces = Pick<DeckReading, 'seat' | 'standOff'>;
const over = (value: string) => ({ reading: mm(value), overBar: true as const });
const straight = (value: string) => ({ reading: mm(value) });

/** The fit of these depths, drawn so that `part` leaves the play `steps` hundredths above `low`. */
function posed(faces: Faces, gasket: string | null, low: string, high: string, part: string, steps: number) {
  const fit = fitOf(mm, low, high, {
    method: 'depths',
    instrument: 'depth-gauge',
    bar: mm('25.00'),
    ...(gasket === null ? {} : { gasket: mm(gasket) }),
    parts: listed(mm, part, '9.00'),
    readings: [{ id: 'r', ...faces }],
  });
  const random = scripted({ picks: [part, '9.00'], ints: [steps, 0], again: true });
  return depthGap.pose(unitWithFits(fit), 'fit:f/gap', random)!;
}

describe('depth-gap, from two depths', () => {
  test.each([
    // Arithmetic: (63.42 − 25) − (62.81 − 25) + 0.35
    [{ seat: over('63.42'), standOff: over('62.81') }, '0.35', '0.25', '0.55', '0.55', 16, '0.96', { seat: '63.42', standOff: '62.81' }],
    // Doosan SD310 transmission, p. 337: 79.60 − 79.10
    [{ seat: straight('79.60'), standOff: straight('79.10') }, null, '0.3', '0.5', '0.10', 10, '0.50', { seat: '79.60', standOff: '79.10' }],
    // DeLorean DMC manual, p. 194: 65.10 over a straight-edge (here the bar of 25: 83.72), less 57.03
    [{ seat: over('83.72'), standOff: straight('57.03') }, null, '1.1', '1.5', '0.30', 29, '1.69', { seat: '83.72', standOff: '57.03' }],
  ] as const)('%o with gasket %s', (faces, gasket, low, high, part, steps, gap, told) => {
    const drawn = posed(faces, gasket, low, high, part, steps);
    expect(drawn.prompt.values).toMatchObject(told);
    const said = (value: string) => judge(drawn, { form: 'number', value });
    expect(said(gap).right).toBe(true);
    expect(said((Number(gap) + 0.02).toFixed(2)).right).toBe(false);
  }); // biome-ignore format: a table reads across

  test('slip-ups with bar and gasket are known', () => {
    const drawn = posed({ seat: over('63.42'), standOff: over('62.81') }, '0.35', '0.25', '0.55', '0.55', 16);
    const slips = (value: string) => judge(drawn, { form: 'number', value }).slipUps;
    expect(slips('0.61')).toEqual(['gasket-left-out']);
    expect(slips('0.26')).toEqual(['gasket-taken-off']);
    expect(slips('25.96')).toEqual(['bar-taken-off-once']);
    // 38.42 + 37.81 + 0.35
    expect(slips('76.58')).toEqual(['depths-added']);
    const onlySeat = posed(
      { seat: over('63.42'), standOff: straight('37.81') },
      null,
      '0.25',
      '0.55',
      '0.10',
      26,
    );
    expect(judge(onlySeat, { form: 'number', value: '25.61' }).slipUps).toEqual(['bar-left-in']);
  });
});

describeRules(depthGap, { seeds: 60 });
