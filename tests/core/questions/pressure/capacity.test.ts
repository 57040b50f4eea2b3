import { describe, expect, test } from 'vitest';
import { ask } from '../../../../src/core/questions/ask.ts';
import { clutchTorque } from '../../../../src/core/questions/families/pressure/clutch-torque.ts';
import { pistonForce } from '../../../../src/core/questions/families/pressure/piston-force.ts';
import { pressureNeeded } from '../../../../src/core/questions/families/pressure/pressure-needed.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Family, Posed } from '../../../../src/core/questions/question.ts';
import type { DeckCapacity } from '../../../../src/core/unit/capacity.ts';
import { makeUnit } from '../../../../src/core/unit/unit.ts';
import { deckOf, everyUnit, PUBLISHED } from '../../../units.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';

const mm = (value: string) => ({ value, unit: 'mm' as const });
const inch = (value: string) => ({ value, unit: 'in' as const });

const METRIC: DeckCapacity = {
  piston: { outer: mm('140'), inner: mm('80') },
  spring: { value: '900', unit: 'N' },
  frictions: 5,
  lining: { outer: mm('145'), inner: mm('115') },
  friction: '0.13',
  pressure: { value: '1000', unit: 'kPa' },
};

const IMPERIAL: DeckCapacity = {
  piston: { outer: inch('5.5'), inner: inch('3.0') },
  spring: { value: '200', unit: 'lbf' },
  frictions: 4,
  lining: { outer: inch('5.5'), inner: inch('4.5') },
  friction: '0.12',
  pressure: { value: '100', unit: 'psi' },
};

/** A train whose first clutch, UD, has this capacity and nothing else has any. */
function unitWith(capacity: DeckCapacity) {
  const deck = deckOf(PUBLISHED.find(({ id }) => id === 'four-range-two-crossed-sets')!);
  const elements = deck.train.elements.map(({ capacity: _, ...element }) =>
    element.id === 'UD' ? { ...element, capacity } : element,
  );
  return makeUnit({ ...deck, train: { ...deck.train, elements } });
}

const posed = (family: Family, fact: string, capacity: DeckCapacity, steps: number): Posed =>
  family.pose(unitWith(capacity), fact, scripted({ ints: [steps] }))!;
const said = (question: Posed, value: string) => judge(question, { form: 'number', value });

// Arithmetic from F = pA − spring and T = N μ F (ro + ri) / 2, worked by hand; π/4 × (140² − 80²) = 10 367.26 mm²
describe('piston-force', () => {
  test.each([
    [METRIC, 8, '400', '3246.90'],
    [METRIC, 12, '600', '5320.35'],
    [METRIC, 20, '1000', '9467.26'],
    [IMPERIAL, 12, '60', '801.38'],
  ])('case %#: %i steps of the gauge are %s, and press with %s', (capacity, steps, gauge, force) => {
    const question = posed(pistonForce, 'skill:piston-force', capacity, steps);
    expect(question.prompt.values!.gauge).toBe(gauge);
    expect(said(question, force).right).toBe(true);
    expect(said(question, (Number(force) * 1.02).toFixed(2)).right).toBe(false);
  });

  test('slip-ups are known', () => {
    const slips = (value: string) => said(posed(pistonForce, 'skill:piston-force', METRIC, 8), value).slipUps;
    expect(slips('4146.90')).toEqual(['spring-left-out']);
    expect(slips('5046.90')).toEqual(['spring-added']);
    // π/4 × 140² × 0.4 − 900
    expect(slips('5257.5')).toEqual(['inner-left-out']);
    // π × (140² − 80²) × 0.4 − 900
    expect(slips('15687.6')).toEqual(['diameter-for-radius']);
    // π/4 × 60² × 0.4 − 900 = 231
    expect(slips('231')).toEqual(['widths-subtracted-first']);
    expect(slips('3246900')).toEqual(['thousand-off']);
  });

  test('where the spring wins there is no force to ask for', () => {
    const stiff = { ...METRIC, spring: { value: '5', unit: 'kN' as const } };
    expect(posed(pistonForce, 'skill:piston-force', stiff, 8)).toBeUndefined();
    expect(posed(pistonForce, 'skill:piston-force', stiff, 12)).toBeDefined();
  });
});

describe('clutch-torque', () => {
  test.each([
    [METRIC, 8, 274.36],
    [METRIC, 12, 449.57],
    [METRIC, 20, 799.98],
    [IMPERIAL, 12, 160.277],
  ])('case %#: at %i steps of the gauge it holds %d', (capacity, steps, torque) => {
    const question = posed(clutchTorque, 'skill:clutch-torque', capacity, steps);
    expect(said(question, torque.toFixed(2)).right).toBe(true);
    expect(said(question, (torque * 1.03).toFixed(2)).right).toBe(false);
    expect(said(question, (torque / 2).toFixed(2)).slipUps).toEqual(['one-face-per-friction']);
    expect(said(question, (torque * 2).toFixed(2)).slipUps).toEqual(['diameter-for-radius']);
  });

  test('the two models of a face differ by less than the tolerance: uniform pressure is right as well', () => {
    // 275.58 N·m by 2/3 × (ro³ − ri³) / (ro² − ri²)
    expect(said(posed(clutchTorque, 'skill:clutch-torque', METRIC, 8), '275.58').right).toBe(true);
  });
});

describe('pressure-needed', () => {
  /** UD carries the whole input torque in range 1 of this train. */
  const needed = (capacity: DeckCapacity, tens: number) =>
    pressureNeeded.pose(unitWith(capacity), 'skill:pressure-needed', {
      ...scripted({ ints: [tens] }),
      pick: (items) =>
        items.find((item) => {
          const { carried } = item as { carried: { element: string; range: { id: string } } };
          return carried.element === 'UD' && carried.range.id === '1';
        })!,
    });

  test('400 N·m ask for 4733.73 N on the plates and 543.42 kPa', () => {
    const question = needed(METRIC, 40)!;
    expect(question.prompt.values!.torque).toBe('400');
    expect(said(question, '543.42').right).toBe(true);
    expect(said(question, '565').right).toBe(false);
    // 4733.73 / 10.36726, and (4733.73 − 900) / 10.36726
    expect(said(question, '456.6').slipUps).toEqual(['spring-left-out']);
    // about what a full disc would need as well: 5633.73 / 15.394 = 366
    expect(said(question, '369.8').slipUps).toEqual(['spring-taken-off', 'inner-left-out']);
    // (2 × 4733.73 + 900) / 10.36726
    expect(said(question, '1000').slipUps).toEqual(['one-face-per-friction']);
  });

  test('the pressure that holds 160 lbf·ft is about the 60 psi that 160.277 lbf·ft come from', () => {
    expect(said(needed(IMPERIAL, 16)!, '59.9').right).toBe(true);
  });

  test('more than the greatest pressure is never asked for', () => {
    expect(needed({ ...METRIC, pressure: { value: '500', unit: 'kPa' } }, 40)).toBeUndefined();
    for (const unit of everyUnit())
      for (let seed = 0; seed < 40; seed++) {
        const question = ask(unit, pressureNeeded, seed);
        if (question?.answers[0].form !== 'number') continue;
        const [n, d = '1'] = question.answers[0].value.split('/');
        const capacities = unit.deck.train.elements.flatMap(({ capacity }) => (capacity ? [capacity] : []));
        const most = Math.max(...capacities.map(({ pressure }) => Number(pressure.value)));
        expect(Number(n) / Number(d)).toBeLessThanOrEqual(most);
      }
  });
});

describeRules(pistonForce, { seeds: 60 });
describeRules(clutchTorque, { seeds: 60 });
describeRules(pressureNeeded, { seeds: 60 });
