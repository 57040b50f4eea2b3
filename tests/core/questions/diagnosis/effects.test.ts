import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { oneWayReversed } from '../../../../src/core/questions/families/diagnosis/one-way-reversed.ts';
import { sensorLost } from '../../../../src/core/questions/families/diagnosis/sensor-lost.ts';
import { solenoidStuck } from '../../../../src/core/questions/families/diagnosis/solenoid-stuck.ts';
import { supplyLost } from '../../../../src/core/questions/families/diagnosis/supply-lost.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Phrase } from '../../../../src/core/questions/phrase.ts';
import { makeUnit } from '../../../../src/core/unit/unit.ts';
import { shippedDecks } from '../../../units.ts';
import { describeRules } from '../rules.ts';
import { questionsOf, roadByHand, unitOn } from './by-hand.ts';

const kestrel = makeUnit(shippedDecks().find(({ id }) => id === 'kestrel-7')!);

const resultOf = (hand: string) => (hand.startsWith('range:') ? 'other-ratio' : hand);

describe('against what was worked by hand on the published trains (tests/core/faults/worked.ts)', () => {
  test('one-way-reversed', () => {
    let held = 0;
    for (const { train, question } of questionsOf(oneWayReversed)) {
      if (question.answers[0].form !== 'pair') throw new Error('no pairs');
      const element = question.fact.split(/[:/]/)[1]!;
      for (const [range, result] of Object.entries(question.answers[0].pairs)) {
        held++;
        expect(result, `${train} ${element} ${range}`).toBe(
          resultOf(roadByHand(train, `one-way-reversed:${element}`, range)!),
        );
      }
    }
    expect(held).toBeGreaterThan(100);
  });

  // The solenoids of tests/units.ts: one an element, none unplugged for the first, full for the second, and so on.
  // Stuck it is the element's own fault, except where the lever closes the feed.
  test('solenoid-stuck does what its element does, failed or stuck', () => {
    let held = 0;
    for (const { train, question } of questionsOf(solenoidStuck)) {
      if (question.answers[0].form !== 'pair') throw new Error('no pairs');
      const { deck } = unitOn(train);
      const solenoid = deck.solenoids!.find(({ id }) => question.fact === `solenoid:${id}/stuck`)!;
      const [element] = solenoid.feeds as [string];
      const stuckOn = question.prompt.key.endsWith('-on');
      const gives = (solenoid.whenUnplugged === 'full') !== stuckOn;
      for (const [range, result] of Object.entries(question.answers[0].pairs)) {
        const lever = deck.lever!.positions.find(({ rows }) => rows.includes(range))!;
        const fault = gives ? `element-stuck:${element}` : `element-fails:${element}`;
        const hand = gives && !lever.opens!.includes(element) ? 'works' : roadByHand(train, fault, range);
        if (hand === undefined) continue;
        held++;
        expect(result, `${train} ${fault} ${range}`).toBe(resultOf(hand));
      }
    }
    expect(held).toBeGreaterThan(500);
  });
});

describe('supply-lost on Kestrel 7, by hand from its chart and solenoids', () => {
  // feed-1: SA B1 gives full unplugged, SB B2 and SC B3 none. feed-2: SD C1 none, SE C2 full; SL keeps the line up.
  // In reverse the lever closes B1 and feeds B3 by hand, so nothing changes there.
  const WORKED: Readonly<Record<string, Readonly<Record<string, string>>>> = {
    'feed-1': { '1': 'B1', '2': 'B1', '5': 'B1 C1 C2', '6': 'B1 C1', '7': 'B1 C1' },
    'feed-2': { '1': 'B1 B3 C2', '2': 'B1 B2 C2', '4': 'B1 C2', '5': 'C2', '6': 'B2 C2', '7': 'B3 C2' },
  };
  test.each(['feed-1', 'feed-2'])('%s', (supply) => {
    const met = new Map<string, string>();
    for (let seed = 0; seed < 80; seed++) {
      const question = ask(kestrel, supplyLost, seed, `supply:${supply}/lost`)!;
      const range = String((question.prompt.values!.range as Phrase).values!.id);
      const [answer] = question.answers;
      if (answer.form === 'set') met.set(range, answer.picks.join(' '));
    }
    expect(Object.fromEntries(met)).toEqual(WORKED[supply]);
  });

  test('6 without feed-2: what dead solenoids are taken for is known by name', () => {
    const question = Array.from(
      { length: 80 },
      (_, seed) => ask(kestrel, supplyLost, seed, 'supply:feed-2/lost')!,
    ).find(({ prompt }) => (prompt.values!.range as Phrase).values!.id === '6')!;
    const said = (...picks: string[]) => judge(question, { form: 'set', picks }).slipUps;
    expect(said('B2')).toEqual(['dead-means-off', 'one-of-the-group']);
    expect(said('B2', 'C1')).toEqual(['fault-left-out']);
    expect(said('B2', 'C1', 'C2')).toEqual(['one-of-the-group', 'current-cuts-pressure']);
    expect(said('C1')).toEqual([]);
  });
});

test.each([
  ['input-speed', ['input-speed', 'ratio', 'slip', 'shift-time', 'converter-slip']],
  ['output-speed', ['output-speed', 'ratio', 'slip', 'shift-time', 'road-speed']],
])('sensor-lost, %s: %j', (sensor, picks) => {
  const question = ask(kestrel, sensorLost, 1, `sensor:${sensor}/lost`)!;
  expect(judge(question, { form: 'set', picks }).right).toBe(true);
  expect(judge(question, { form: 'set', picks: picks.slice(0, 1) }).slipUps).toEqual(['its-own-speed-only']);
});

describeRules(solenoidStuck, { seeds: 40 });
describeRules(oneWayReversed, { seeds: 40 });
describeRules(supplyLost, { seeds: 40 });
describeRules(sensorLost, { seeds: 40 });
