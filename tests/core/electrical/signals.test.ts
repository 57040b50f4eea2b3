import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Circuit,
  type Driver,
  pinState,
  type Side,
  voltsAt,
} from '../../../src/core/electrical/driver.ts';
import { checkHeatTable, pairByHeat } from '../../../src/core/electrical/heat-sense.ts';
import {
  frequencyHz,
  misreadBy,
  pulsesPerTurn,
  speedRpm,
} from '../../../src/core/electrical/speed-sensor.ts';
import { rational } from '../../../src/core/rational.ts';
import { exact, given, refusal } from '../../results.ts';

describe('the controller’s pin', () => {
  // by hand from the circuit; the shorts as check tables of both kinds of driver tell them apart
  test.each<[side: Side, driver: Driver, circuit: Circuit, volts: number | null, winding: string]>([
    ['low', 'off', 'sound', 12.6, 'no current'],
    ['low', 'on', 'sound', 0, 'current'],
    ['low', 'off', 'open', null, 'no current'],
    ['low', 'on', 'open', 0, 'no current'],
    ['low', 'off', 'short-to-ground', 0, 'current'],
    ['low', 'on', 'short-to-ground', 0, 'current'],
    ['low', 'off', 'short-to-supply', 12.6, 'no current'],
    ['low', 'on', 'short-to-supply', 12.6, 'no current, overloaded'],
    ['high', 'off', 'sound', 0, 'no current'],
    ['high', 'on', 'sound', 12.6, 'current'],
    ['high', 'off', 'open', null, 'no current'],
    ['high', 'on', 'open', 12.6, 'no current'],
    ['high', 'off', 'short-to-ground', 0, 'no current'],
    ['high', 'on', 'short-to-ground', 0, 'no current, overloaded'],
    ['high', 'off', 'short-to-supply', 12.6, 'current'],
    ['high', 'on', 'short-to-supply', 12.6, 'current'],
  ])('%s side, %s, %s: %s V, %s', (side, driver, circuit, volts, winding) => {
    const state = pinState(side, driver, circuit);
    expect(voltsAt(state.level, exact('12.6'))?.valueOf() ?? null).toBe(volts);
    expect(
      [state.powered ? 'current' : 'no current', ...(state.overloaded ? ['overloaded'] : [])].join(', '),
    ).toBe(winding);
  });
});

describe('speed sensors', () => {
  test.each<[teeth: number, rpm: string, hertz: string]>([
    // arithmetic: teeth × rpm / 60
    [16, '750', '200'],
    [24, '2000', '800'],
    [30, '1800', '900'],
    [60, '1000', '1000'],
    [45, '3210', '2407.5'],
    [30, '2400', '1200'],
    [45, '1600', '1200'],
  ])('%d teeth at %s rpm give %s Hz, and back', (teeth, rpm, hertz) => {
    expect(given(frequencyHz({ teeth }, exact(rpm))).equals(exact(hertz))).toBe(true);
    expect(given(speedRpm({ teeth }, exact(hertz))).equals(exact(rpm))).toBe(true);
    expect(given(pulsesPerTurn(exact(hertz), exact(rpm))).equals(rational(teeth))).toBe(true);
  });

  test('both edges counted double the frequency', () => {
    expect(given(frequencyHz({ teeth: 30, edges: 2 }, exact('1800'))).toFraction()).toBe('1800');
    expect(given(speedRpm({ teeth: 30, edges: 2 }, exact('1800'))).toFraction()).toBe('1800');
  });

  test('a wrong wheel scales every reading by the teeth there over the teeth counted with', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99 }),
        fc.integer({ min: 1, max: 99 }),
        fc.nat(8000),
        (a, b, rpm) => {
          const read = given(speedRpm({ teeth: a }, given(frequencyHz({ teeth: b }, rational(rpm)))));
          expect(read.equals(given(misreadBy({ teeth: a }, { teeth: b })).mul(rational(rpm)))).toBe(true);
        },
      ),
    );
  });

  test.each<[title: string, result: ReturnType<typeof frequencyHz>, code: string]>([
    ['no teeth', frequencyHz({ teeth: 0 }, rational(100)), 'teeth-not-whole'],
    ['half a tooth', speedRpm({ teeth: 1.5 }, rational(100)), 'teeth-not-whole'],
    ['no teeth counted with', misreadBy({ teeth: 0 }, { teeth: 3 }), 'teeth-not-whole'],
    ['no teeth there', misreadBy({ teeth: 3 }, { teeth: 0 }), 'teeth-not-whole'],
    ['turning backwards', frequencyHz({ teeth: 30 }, rational(-1)), 'speed-negative'],
    ['less than no pulses', speedRpm({ teeth: 30 }, rational(-1)), 'speed-negative'],
    ['teeth of a wheel at rest', pulsesPerTurn(rational(0), rational(0)), 'speed-zero'],
    ['teeth from less than no pulses', pulsesPerTurn(rational(-1), rational(9)), 'speed-negative'],
  ])('refused: %s', (_, result, code) => {
    expect(refusal(result)).toBe(code);
  });
});

describe('resistance and heat', () => {
  const numbers = (...values: number[]) => values.map((value) => rational(value));
  const pairs = (temperatures: number[], ohms: number[], sense: 'falls' | 'rises') =>
    given(pairByHeat(numbers(...temperatures), numbers(...ohms), sense)).map((pair) => [
      pair.celsius.valueOf(),
      pair.ohms.valueOf(),
    ]);

  test('a fluid temperature sensor falls with heat (Volvo TG-81SC, middles of the printed bands)', () => {
    expect(pairs([80, 10, 40], [2000, 500, 6445], 'falls')).toEqual([
      [10, 6445],
      [40, 2000],
      [80, 500],
    ]);
  });

  test('a copper winding rises with heat (arithmetic)', () => {
    expect(pairs([100, 20], [12, 16], 'rises')).toEqual([
      [20, 12],
      [100, 16],
    ]);
  });

  test('refused: a pairing that is not the only one', () => {
    expect(refusal(pairByHeat(numbers(10, 10), numbers(1, 2), 'falls'))).toBe('values-equal');
    expect(refusal(pairByHeat(numbers(10, 20), numbers(2, 2), 'falls'))).toBe('values-equal');
    expect(refusal(pairByHeat(numbers(10), numbers(2, 3), 'falls'))).toBe('counts-differ');
  });

  const rows = (...list: [celsius: number, low: number, high: number][]) =>
    list.map(([celsius, low, high]) => ({
      celsius: rational(celsius),
      low: rational(low),
      high: rational(high),
    }));
  const volvo: [number, number, number][] = [
    [10, 5587, 7303],
    [40, 1800, 2200],
    [60, 900, 1100],
    [80, 450, 550],
  ];

  test('the Volvo TG-81SC table holds with 223-271 at 110 °C, as its sister page prints', () => {
    expect(
      given(checkHeatTable(rows([110, 223, 271], ...volvo), 'falls')).map(({ celsius }) => celsius.valueOf()),
    ).toEqual([10, 40, 60, 80, 110]);
  });

  test.each<
    [title: string, row: [number, number, number], sense: 'falls' | 'rises', code: string, celsius: number]
  >([
    ['110 °C as printed, 223-71', [110, 223, 71], 'falls', 'limits-swapped', 110],
    ['taken for a winding', [110, 223, 271], 'rises', 'wrong-sense', 40],
    ['a hotter row that touches the one before', [110, 400, 450], 'falls', 'wrong-sense', 110],
    ['one temperature twice', [80, 450, 550], 'falls', 'temperatures-equal', 80],
  ])('refused: %s', (_, row, sense, code, celsius) => {
    const result = checkHeatTable(rows(...volvo, row), sense);
    expect(refusal(result)).toBe(code);
    expect(!result.ok && result.error.celsius.valueOf()).toBe(celsius);
  });
});
