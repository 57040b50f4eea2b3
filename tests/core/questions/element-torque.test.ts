import { describe, expect, test } from 'vitest';
import { ask } from '../../../src/core/questions/ask.ts';
import { elementTorque } from '../../../src/core/questions/families/element-torque.ts';
import { judge } from '../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../src/core/questions/phrase.ts';
import type { Question } from '../../../src/core/questions/question.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../../units.ts';
import { describeRules } from './rules.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));

/** The question about this element in this range, and the torque that goes in. */
function asking(train: string, range: string, element: string): { question: Question; inputNm: number } {
  const unit = unitOf(train);
  for (let seed = 0; seed < 60; seed++) {
    const question = ask(unit, elementTorque, seed, `range:${range}/torques`)!;
    const { values } = question.prompt;
    if ((values!.element as Phrase).values!.id === element)
      return { question, inputNm: Number(values!.input) };
  }
  throw new Error(`${element} is never asked in ${range}`);
}

describe('element-torque, worked by hand (teeth and charts in tests/published)', () => {
  test.each([
    // crossed sets 1: all goes in by UD; LR gives ratio − 1 = 128/45 − 1
    ['four-range-two-crossed-sets', '1', 'UD', 1],
    ['four-range-two-crossed-sets', '1', 'LR', 83 / 45],
    // crossed sets 3: sun and ring of the rear set share the input as their teeth
    ['four-range-two-crossed-sets', '3', 'UD', 45 / 128],
    ['four-range-two-crossed-sets', '3', 'OD', 83 / 128],
    // crossed sets 4: ratio 62/90, so the case takes 28/90 back
    ['four-range-two-crossed-sets', '4', 'B24', 28 / 90],
    // crossed sets R: ratio −62/28, the case gives −62/28 − 1
    ['four-range-two-crossed-sets', 'R', 'LR', 90 / 28],
    // overdrive set locked by C0: its sun bears 33 for 79 on the ring, which hands on the input torque
    ['four-range-simpson-overdrive', '1', 'C0', 33 / 79],
    // 3: ring and sun of the front set share as their teeth
    ['four-range-simpson-overdrive', '3', 'C1', 79 / 121],
    ['four-range-simpson-overdrive', '3', 'C2', 42 / 121],
    // six-speed 1: the fixed sun takes 37 for 71 on the ring, so 108/71 reach A; D gives what is left of ratio − 1
    ['lepelletier-6-a', '1', 'A', 108 / 71],
    ['lepelletier-6-a', '1', 'D', (85 / 31) * (108 / 71) - 1 - 37 / 71],
  ])('%s range %s: %s carries %d times what goes in', (train, range, element, times) => {
    const { question, inputNm } = asking(train, range, element);
    const given = (value: number) => judge(question, { form: 'number', value: value.toFixed(1) });
    expect(given(times * inputNm).right).toBe(true);
    expect(given(times * inputNm * 1.05 + 2).right).toBe(false);
  });

  test('wrong rules are known by name', () => {
    const { question, inputNm } = asking('lepelletier-6-a', '1', 'D');
    const ratio = (85 / 31) * (108 / 71);
    const said = (times: number) =>
      judge(question, { form: 'number', value: (times * inputNm).toFixed(1) }).slipUps;
    expect(said(1)).toEqual(['input-torque-everywhere']);
    expect(said(ratio)).toEqual(['output-torque-everywhere']);
    expect(said(ratio - 1)).toContain('whole-reaction');
    expect(said(1 / 2)).toEqual(['shared-alike']);
    expect(said(108 / 71)).toEqual(['other-element']);
    expect(said(0.1)).toEqual([]);
  });

  test('the lines are those on paper', () => {
    const { question, inputNm } = asking('four-range-two-crossed-sets', '1', 'LR');
    const nm = (times: number) => (times * inputNm).toFixed(1);
    const say = makeSay(null);
    expect(question.explanation.more.map(say)).toEqual([
      `R shares torque as its teeth, sun 45, ring 83, carrier −128: −${nm(1)}, −${nm(83 / 45)} and ${nm(128 / 45)} N·m.`,
      `Carrier-front-ring-rear is kept in balance by LR with ${nm(83 / 45)} N·m.`,
      `As a check: ${nm(1)} N·m go in and ${nm(128 / 45)} come out, so the case gives ${nm(83 / 45)} N·m in all, through brakes, one-ways and gears fixed to it.`,
    ]);
  });

  test('where elements share a load that only stiffness settles, none of them is asked', () => {
    // C1 + C2 + C3 of the four-range Ravigneaux: one clutch more than direct drive needs
    const deck = deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!);
    const ranges = deck.chart.ranges.map((row) =>
      row.id === '3' ? { ...row, applied: ['C1', 'C2', 'C3'] } : row,
    );
    const unit = makeUnit({ ...deck, chart: { ranges } });
    expect(elementTorque.facts(unit)).not.toContain('range:3/torques');
    expect(elementTorque.facts(unit)).toContain('range:2/torques');
  });
});

describeRules(elementTorque);
