import { describe, expect, test } from 'vitest';
import { driverPin } from '../../../../src/core/questions/families/electrical/driver-pin.ts';
import { sensorFrequency } from '../../../../src/core/questions/families/electrical/sensor-frequency.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Random } from '../../../../src/core/random.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';
import { unitWith, windingsOf } from './bench.ts';

describe('sensor-frequency: pulses a second are teeth × rpm / 60', () => {
  const sensors = (teeth: number) => [
    { id: 'a', reads: 'output', teeth },
    { id: 'b', reads: 'output', teeth: 37 },
  ];
  const unit = (teeth: number) => unitWith({}, sensors(teeth));
  /** Speeds are drawn in fifties. */
  const posed = (fact: string, teeth: number, rpm: number) =>
    sensorFrequency.pose(unit(teeth), fact, scripted({ picks: ['a'], ints: [rpm / 50] }))!;

  test.each([
    [16, 750, '200'],
    [24, 2000, '800'],
    [30, 1800, '900'],
    [60, 1000, '1000'],
    [45, 3200, '2400'],
  ])('%i teeth at %i rpm: %s Hz', (teeth, rpm, hertz) => {
    const question = posed('skill:sensor-frequency', teeth, rpm);
    expect(judge(question, { form: 'number', value: hertz }).right).toBe(true);
    expect(judge(question, { form: 'number', value: String(Number(hertz) * 60) }).slipUps).toEqual([
      'minutes-for-seconds',
    ]);
    expect(judge(question, { form: 'number', value: String(Number(hertz) * 2) }).slipUps).toContain(
      'both-edges',
    );
  });

  test.each([
    // 1200 Hz from 30 teeth, 1200 Hz from 45
    [30, 2400, '1200', '2400'],
    [45, 1600, '1200', '1600'],
  ])('%i teeth, %i rpm drawn: %s Hz are %s rpm', (teeth, rpm, hertz, speed) => {
    const question = posed('skill:sensor-speed', teeth, rpm);
    expect(question.prompt.values!.given).toBe(hertz);
    expect(judge(question, { form: 'number', value: speed }).right).toBe(true);
    expect(judge(question, { form: 'number', value: String(Number(speed) / 2) }).slipUps).toContain(
      'both-edges',
    );
    // by the 37 teeth of the other wheel
    const other = (Number(hertz) * 60) / 37;
    expect(judge(question, { form: 'number', value: other.toFixed(1) }).slipUps).toEqual(['other-wheel']);
  });
});

describe('driver-pin', () => {
  const both = windingsOf(['5', '6'], ['5', '6']);
  const electrical = {
    ...both,
    windings: both.windings!.map((winding, index) =>
      index === 0 ? winding : { ...winding, switched: 'high' as const },
    ),
  };
  /** All eight cases at once, so that a table can hold them. */
  const all: Random = { ...scripted({}), sample: (items) => [...items] };
  const posed = (side: string) => driverPin.pose(unitWith(electrical), `skill:${side}-side-pin`, all)!;

  test.each([
    // A circuit drawn for each: a switch between pin and ground or battery, the winding to the other
    ['low', 'off', 'sound', 'supply'],
    ['low', 'on', 'sound', 'ground'],
    ['low', 'off', 'open', 'floating'],
    ['low', 'on', 'open', 'ground'],
    ['low', 'off', 'short-to-ground', 'ground'],
    ['low', 'off', 'short-to-supply', 'supply'],
    ['high', 'off', 'sound', 'ground'],
    ['high', 'on', 'sound', 'supply'],
    ['high', 'off', 'open', 'floating'],
    ['high', 'on', 'open', 'supply'],
    ['high', 'on', 'short-to-ground', 'ground'],
    ['high', 'off', 'short-to-supply', 'supply'],
  ])('%s side switched, driver %s, wire %s: %s', (side, driver, circuit, level) => {
    const [answer] = posed(side).answers;
    if (answer.form !== 'fill') throw new Error('cells are filled');
    expect(answer.cells[`${driver}-${circuit}/pin`]).toBe(level);
  });

  test('slip-ups are known', () => {
    const random: Random = { ...scripted({}), sample: (items, count) => items.slice(0, count) };
    const question = driverPin.pose(unitWith(electrical), 'skill:low-side-pin', random)!;
    const cells = (...levels: string[]) => {
      if (question.space.form !== 'fill') throw new Error('cells are filled');
      return Object.fromEntries(question.space.asked.map((cell, index) => [cell, levels[index]!]));
    };
    const said = (...levels: string[]) => judge(question, { form: 'fill', cells: cells(...levels) });
    // off and on with the wire sound, then with it broken
    expect(said('supply', 'ground', 'floating', 'ground').right).toBe(true);
    expect(said('ground', 'supply', 'floating', 'supply').slipUps).toEqual(['switched-side-swapped']);
    expect(said('supply', 'ground', 'ground', 'ground').slipUps).toEqual(['open-reads-nothing']);
    expect(said('ground', 'supply', 'ground', 'supply').slipUps).toEqual(['on-means-battery']);
    expect(said('supply', 'ground', 'supply', 'ground').slipUps).toEqual(['wire-fault-left-out']);
  });
});

describeRules(sensorFrequency, { seeds: 60 });
describeRules(driverPin, { seeds: 60 });
