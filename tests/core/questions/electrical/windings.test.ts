import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { heatPairs } from '../../../../src/core/questions/families/electrical/heat-pairs.ts';
import { solenoidCurrent } from '../../../../src/core/questions/families/electrical/solenoid-current.ts';
import { windingAtHeat } from '../../../../src/core/questions/families/electrical/winding-at-heat.ts';
import { windingVerdict } from '../../../../src/core/questions/families/electrical/winding-verdict.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Posed } from '../../../../src/core/questions/question.ts';
import { everyUnit } from '../../../units.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';
import { thermistorOf, unitWith, windingsOf } from './bench.ts';

const said = (posed: Posed, value: string) => judge(posed, { form: 'number', value });

describe('winding-at-heat, by 0.00393 per kelvin at 20 °C (Hioki RM3545 manual, App. 4; rows reckoned anew)', () => {
  /** `ints` is how many tenths of an ohm above the low end of the band the winding has at 20 °C. */
  const posed = (fact: string, low: string, tenths: number, celsius: string) => {
    const unit = unitWith(windingsOf([low, '30']));
    return windingAtHeat.pose(unit, fact, scripted({ picks: [null, celsius], ints: [tenths] }))!;
  };

  test.each([
    ['5.0', 0, '0', '4.607'],
    ['5.0', 0, '80', '6.179'],
    ['5.0', 0, '100', '6.572'],
    ['5.0', 0, '120', '6.965'],
    ['5.0', 6, '100', '7.361'],
    ['12.0', 0, '80', '14.830'],
    ['12.0', 0, '100', '15.773'],
    ['25.0', 0, '90', '31.878'],
  ])('%s Ω and %i tenths at %s °C measure %s', (low, tenths, celsius, ohms) => {
    const question = posed('skill:winding-heat', low, tenths, celsius);
    expect(said(question, ohms).right).toBe(true);
    expect(said(question, Number(ohms).toFixed(2)).right).toBe(true);
    expect(said(question, (Number(ohms) * 1.012).toFixed(4)).right).toBe(false);
  });

  test.each([
    // 15.0 measured at 80 °C is 12.138 at 20; 6.6 at 100 °C is 5.021
    ['12.1', 0, '80', '15.0', '12.138'],
    ['5.0', 0, '100', '6.6', '5.021'],
  ])('%s Ω and %i tenths at %s °C read %s: %s at 20 °C', (low, tenths, celsius, read, at20) => {
    const question = posed('skill:winding-at-20', low, tenths, celsius);
    expect(question.prompt.values!.ohms).toBe(read);
    expect(said(question, at20).right).toBe(true);
    expect(said(question, read).slipUps).toEqual(['hot-as-cold']);
    // the percentage of the warm reading taken off: 15.0 × (1 − 0.2358), 6.6 × (1 − 0.3144)
    const off = Number(read) * (1 - 0.00393 * (Number(celsius) - 20));
    expect(said(question, off.toFixed(3)).slipUps).toContain('percent-of-hot');
  });

  test('slip-ups are known', () => {
    const question = posed('skill:winding-heat', '5.0', 0, '100');
    // 5 × (1 − 0.3144), 5 × 1.393
    expect(said(question, '3.428').slipUps).toEqual(['heat-turned-round']);
    expect(said(question, '6.965').slipUps).toEqual(['heat-from-zero']);
  });
});

describe('winding-verdict', () => {
  test('every verdict is that of the band at the temperature of the reading', () => {
    const seen = new Map<string, number>();
    for (const unit of everyUnit())
      for (let seed = 0; seed < 60; seed++) {
        const question = ask(unit, windingVerdict, seed);
        if (question?.space.form !== 'pair' || question.answers[0].form !== 'pair') continue;
        const [low, high] = [question.prompt.values!.low, question.prompt.values!.high].map(Number);
        for (const { id, label } of question.space.left) {
          const celsius = Number(String(label.values!.celsius).replace('−', '-'));
          const growth = 1 + 0.00393 * (celsius - 20);
          const ohms = Number(label.values!.ohms);
          const place = ohms < low! * growth ? 'low' : ohms > high! * growth ? 'high' : 'in';
          expect(question.answers[0].pairs[id]).toBe(place);
          seen.set(place, (seen.get(place) ?? 0) + 1);
        }
      }
    for (const place of ['low', 'in', 'high']) expect(seen.get(place)).toBeGreaterThan(50);
  });

  /** Four times the same reading: the winding so many hundredths above the low end, at this temperature. */
  const posed = (low: string, high: string, hundredths: number, celsius: string) =>
    windingVerdict.pose(unitWith(windingsOf([low, high])), 'skill:winding-verdict', {
      ...scripted({ ints: [hundredths], again: true }),
      pick: (items) => items.find((item) => [celsius, 'in'].includes(String(item))) ?? items[0]!,
    });

  test('7.0 Ω at 100 °C is within 5.0 to 5.6, the band printed for linear solenoids of Lexus and Volvo units', () => {
    // 7.0 ÷ 1.3144 = 5.326
    const question = posed('5.0', '5.6', 33, '100')!;
    if (question.space.form !== 'pair') throw new Error('asked in pairs');
    const all = (place: string) => ({ a: place, b: place, c: place, d: place });
    expect(question.space.left[0]!.label.values).toEqual({ ohms: '7.0', celsius: '100' });
    expect(judge(question, { form: 'pair', pairs: all('in') }).right).toBe(true);
    expect(judge(question, { form: 'pair', pairs: all('high') }).slipUps).toContain('hot-as-cold');
  });

  test('6.6 Ω at 100 °C is 5.021 at 20: too near the end of the band to ask', () => {
    expect(posed('5.0', '5.6', 2, '100')).toBeUndefined();
  });

  test('15.0 Ω at 80 °C is within 11 to 15 either way, so nothing is asked', () => {
    // 12.138 at 20 °C: band printed for on-off solenoids of Toyota, Lexus and Volvo units
    expect(posed('11', '15', 114, '80')).toBeUndefined();
  });
});

describe('solenoid-current', () => {
  const posed = (fact: string, low: string, tenths: string, percent: number) =>
    solenoidCurrent.pose(
      unitWith(windingsOf([low, low])),
      fact,
      scripted({ picks: [null, tenths], ints: [0, percent / 5] }),
    )!;

  test.each([
    // Ohm's law, reckoned: 12.0 V / 15 Ω …
    ['15', '120', '0.800'],
    ['5.0', '126', '2.52'],
    ['5', '140', '2.80'],
    ['5.2', '138', '2.654'],
    ['25', '120', '0.48'],
  ])('%s Ω at %s tenths of a volt: %s A', (ohms, tenths, amperes) => {
    const question = posed('skill:solenoid-current', ohms, tenths, 15);
    expect(said(question, amperes).right).toBe(true);
    expect(said(question, (Number(amperes) * 1.05).toFixed(4)).right).toBe(false);
  });

  test.each([
    // duty as on over on and off together (Lexus pages on P2714): 13.8 V, 5 Ω at 40 % and 50 %; 14 V, 12 Ω at 25 %
    ['5', '138', 40, '1.104'],
    ['5', '138', 50, '1.380'],
    ['12', '140', 25, '0.292'],
  ])('%s Ω at %s tenths of a volt, on for %i %%: %s A', (ohms, tenths, percent, amperes) => {
    expect(said(posed('skill:mean-current', ohms, tenths, percent), amperes).right).toBe(true);
  });

  test('slip-ups are known', () => {
    const question = posed('skill:mean-current', '5', '138', 40);
    expect(said(question, '2.76').slipUps).toEqual(['duty-left-out']);
    expect(said(question, '1.656').slipUps).toEqual(['off-time-for-duty']);
    expect(said(question, '6.9').slipUps).toEqual(['duty-divided']);
    expect(said(posed('skill:solenoid-current', '5', '138', 15), '0.362').slipUps).toEqual([
      'ohms-law-turned-round',
    ]);
  });
});

describe('heat-pairs', () => {
  // Volvo TG-81SC fluid temperature sensor, as printed but for 110 °C, whose row is misprinted
  const volvo: [string, string, string][] = [
    ['10', '5587', '7303'],
    ['40', '1800', '2200'],
    ['60', '900', '1100'],
    ['80', '450', '550'],
  ];

  test('a sensor that falls: 10, 40, 60, 80 °C belong to less and less', () => {
    // each in the middle of its band: ten twentieths
    const random = scripted({ ints: [10, 10, 10, 10] });
    const posed = heatPairs.pose(unitWith(thermistorOf('falls', ...volvo)), 'thermistor:oil/heat', random)!;
    const pairs = { 10: '6450', 40: '2000', 60: '1000', 80: '500' };
    expect(judge(posed, { form: 'pair', pairs }).right).toBe(true);
    const turned = { 10: '500', 40: '1000', 60: '2000', 80: '6450' };
    expect(judge(posed, { form: 'pair', pairs: turned }).slipUps).toEqual(['heat-sense-turned-round']);
    const swapped = { ...pairs, 40: '1000', 60: '2000' };
    expect(judge(posed, { form: 'pair', pairs: swapped }).slipUps).toEqual(['adjacent-swapped']);
  });

  test('a winding rises: 5.0 Ω measures 4.6, 5.0, 5.4, 5.8 at 0, 20, 40, 60 °C', () => {
    const unit = unitWith(windingsOf(['5.0', '5.0']));
    const posed = heatPairs.pose(unit, 'skill:winding-heat-sense', scripted({}))!;
    const pairs = { 0: '23/5', 20: '5', 40: '27/5', 60: '29/5' };
    expect(judge(posed, { form: 'pair', pairs }).right).toBe(true);
  });

  test('bands that run into each other, and a sensor known at two points only, are not asked', () => {
    const same = unitWith(
      thermistorOf('falls', ['10', '500', '500'], ['40', '500', '500'], ['60', '400', '400']),
    );
    expect(heatPairs.pose(same, 'thermistor:oil/heat', scripted({}))).toBeUndefined();
    expect(heatPairs.facts(unitWith(thermistorOf('falls', ...volvo.slice(0, 2))))).toEqual([]);
  });
});

describeRules(windingAtHeat, { seeds: 60 });
describeRules(windingVerdict, { seeds: 60 });
describeRules(solenoidCurrent, { seeds: 60 });
describeRules(heatPairs, { seeds: 60 });
