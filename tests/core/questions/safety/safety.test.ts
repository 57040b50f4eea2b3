import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { lookUpFirst } from '../../../../src/core/questions/families/safety/look-up-first.ts';
import { rollAway } from '../../../../src/core/questions/families/safety/roll-away.ts';
import { slingLoad } from '../../../../src/core/questions/families/safety/sling-load.ts';
import { stepHazards } from '../../../../src/core/questions/families/safety/step-hazards.ts';
import { storedEnergy } from '../../../../src/core/questions/families/safety/stored-energy.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import { parseRational } from '../../../../src/core/rational.ts';
import { makeUnit } from '../../../../src/core/unit/unit.ts';
import { shippedDecks } from '../../../units.ts';
import { describeRules } from '../rules.ts';

const deck = shippedDecks().find(({ id }) => id === 'kestrel-7')!;
const unit = makeUnit(deck);
const asked = <T>(seeds: number, make: (seed: number) => T | undefined) =>
  Array.from({ length: seeds }, (_, seed) => make(seed)).filter((made) => made !== undefined);

describe('load in each leg of a two-leg sling', () => {
  // Arithmetic: at 60° to level each leg carries 0.577 of the weight, at 45° 0.707, at 30° all of it.
  test.each([
    [60, 0.577],
    [45, Math.SQRT1_2],
    [30, 1],
  ])('at %d° it is %f of the weight', (angle, share) => {
    const found = asked(60, (seed) => ask(unit, slingLoad, seed)).filter(
      ({ prompt }) => prompt.values!.angle === angle,
    );
    expect(found.length).toBeGreaterThan(0);
    for (const { answers, prompt } of found) {
      const load = answers[0].form === 'number' ? parseRational(answers[0].value)!.valueOf() : 0;
      expect(load / Number(prompt.values!.mass)).toBeCloseTo(share, 3);
    }
  });
});

describe('what still holds a vehicle', () => {
  const found = asked(40, (seed) => ask(unit, rollAway, seed));
  const byHolding = (means: string) =>
    found.filter(({ explanation }) => explanation.reason.key === `roll-away.reason-${means}`);

  test.each([
    ['pawl', ['draw-shaft', 'lever-out-of-park', 'unit-down']],
    ['brake', ['brake-off']],
    ['chocks', ['chocks-away']],
  ])('with only the %s in place, these leave nothing: %j', (means, actions) => {
    expect(byHolding(means).length).toBeGreaterThan(0);
    for (const { answers } of byHolding(means))
      expect(answers[0].form === 'set' && [...answers[0].picks].sort()).toEqual(actions);
  });

  test('draining and the pan take nothing away; park trusted blindly is a slip-up', () => {
    for (const question of byHolding('pawl')) {
      const verdict = judge(question, { form: 'set', picks: ['brake-off', 'chocks-away'] });
      expect(verdict).toMatchObject({ right: false, slipUps: ['park-always-holds'] });
    }
  });
});

test('an unsafe short cut is never the right answer: what nobody checked is looked up', () => {
  for (const question of asked(60, (seed) => ask(unit, lookUpFirst, seed))) {
    const { answers } = question;
    if (answers[0].form !== 'pair') continue;
    for (const [ref, given] of Object.entries(answers[0].pairs)) {
      const [kind, id] = ref.split(':');
      const record = (kind === 'fit' ? deck.fits : deck.torques)!.find((one) => one.id === id)!;
      if (record.unsure || !record.verified) expect(given).toBe('look-up');
    }
    expect(question.uses.every((ref) => unit.sure(ref))).toBe(true);
  }
});

describe('every safety question shows its cautions before the answer', () => {
  test.each([stepHazards, storedEnergy, rollAway])('$id', (family) => {
    const questions = asked(40, (seed) => ask(unit, family, seed));
    expect(questions.length).toBeGreaterThan(0);
    for (const { cautions } of questions) expect(cautions.length).toBeGreaterThan(0);
  });
});

for (const family of [stepHazards, storedEnergy, rollAway, slingLoad, lookUpFirst])
  describeRules(family, { seeds: 100 });
