import { describe, expect, test } from 'vitest';
import { unitConvert } from '../../../../src/core/questions/families/measuring/unit-convert.ts';
import { judge } from '../../../../src/core/questions/judge.ts';
import type { Deck } from '../../../../src/core/unit/deck.ts';
import type { Amount } from '../../../../src/core/unit/record.ts';
import { makeUnit } from '../../../../src/core/unit/unit.ts';
import type { UnitSymbol } from '../../../../src/core/units/units.ts';
import { deckOf, PUBLISHED } from '../../../units.ts';
import { describeRules } from '../rules.ts';
import { scripted } from '../scripted.ts';

const bare = deckOf(PUBLISHED.find(({ id }) => id === 'textbook-sun-held-23-55')!);

type Kind = 'torque' | 'pressure' | 'length' | 'volume' | 'temperature';

/** A deck that has entered just this amount. */
function deckWith(kind: Kind, amount: Amount<UnitSymbol>): Deck {
  const of = <U extends UnitSymbol>() => amount as Amount<U>;
  switch (kind) {
    case 'torque':
      return { ...bare, torques: [{ id: 't', torque: of() }] };
    case 'length':
      return {
        ...bare,
        fits: [
          {
            id: 'f',
            kind: 'end-play',
            where: 'here',
            method: 'bare',
            instrument: 'dial',
            effect: 'closes',
            parts: [],
            limits: { low: of(), high: of() },
          },
        ],
      };
    case 'volume':
      return { ...bare, fluids: [{ id: 'l', type: 'any', dryFill: of() }] };
    case 'temperature':
      return { ...bare, fluids: [{ id: 'l', type: 'any', levelAt: { low: of(), high: of() } }] };
    case 'pressure': {
      const [first, ...others] = bare.train.elements;
      const wide = { value: '100', unit: 'mm' as const };
      const narrow = { value: '80', unit: 'mm' as const };
      return {
        ...bare,
        train: {
          ...bare.train,
          elements: [
            {
              ...first!,
              capacity: {
                piston: { outer: wide, inner: narrow },
                spring: { value: '500', unit: 'N' },
                frictions: 4,
                lining: { outer: wide, inner: narrow },
                friction: '0.12',
                pressure: of(),
              },
            },
            ...others,
          ],
        },
      };
    }
  }
}

function posed(kind: Kind, value: string, from: UnitSymbol, to: UnitSymbol) {
  const unit = makeUnit(deckWith(kind, { value, unit: from }));
  const found = unitConvert.pose(unit, `skill:convert-${kind}`, scripted({ picks: [null, to] }));
  if (found?.space.form !== 'number') throw new Error('a number is asked');
  return found;
}

describe('unit-convert on exact factors', () => {
  // Products of the inch, the pound, standard gravity and the quarts (docs/sources.md [UNIT-1], [UNIT-2]);
  // NIST SP 811 prints 1.355 818, 0.112 984 8 and 6.894 757 for lbf·ft, lbf·in and psi (quoted second-hand).
  test.each([
    ['torque', '8', 'N·m', 'lbf·ft', 5.900497],
    ['torque', '8', 'N·m', 'lbf·in', 70.805966],
    ['torque', '25', 'N·m', 'lbf·ft', 18.439054],
    ['torque', '100', 'N·m', 'lbf·ft', 73.756215],
    ['torque', '7', 'lbf·ft', 'N·m', 9.490726],
    ['torque', '12', 'lbf·ft', 'N·m', 16.269815],
    ['torque', '12', 'lbf·in', 'lbf·ft', 1],
    ['pressure', '30', 'psi', 'kPa', 206.842719],
    ['pressure', '100', 'psi', 'bar', 6.894757],
    ['pressure', '250', 'psi', 'kPa', 1723.689323],
    ['pressure', '20', 'bar', 'psi', 290.075475],
    ['length', '0.030', 'in', 'mm', 0.762],
    ['length', '0.005', 'in', 'mm', 0.127],
    ['length', '0.21', 'mm', 'in', 0.008268],
    ['length', '1.5', 'mm', 'in', 0.059055],
    ['volume', '8', 'US qt', 'L', 7.570824],
    ['volume', '1', 'L', 'US qt', 1.056688],
    ['temperature', '175', '°F', '°C', 79.444],
    ['temperature', '65', '°C', '°F', 149],
  ] as const)('%s: %s %s is in %s %d', (kind, value, from, to, expected) => {
    const question = posed(kind, value, from, to);
    expect(question.prompt.values).toMatchObject({ value, unit: from, to });
    if (question.space.form !== 'number') throw new Error('a number is asked');
    const { decimals, tolerance } = question.space;
    const said = (given: number) => judge(question, { form: 'number', value: given.toFixed(6) }).right;
    expect(said(Number(expected.toFixed(decimals)))).toBe(true);
    expect(said(expected + Number(tolerance) * 1.1)).toBe(false);
    expect(Number(tolerance)).toBeLessThan(Math.max(0.012 * expected, 2 * 10 ** -decimals, 1.01));
  });
});

describe('unit-convert: slip-ups of the trade are known', () => {
  test.each([
    // 12 lbf·in set as 12 lbf·ft is twelve times too much
    ['torque', '12', 'lbf·in', 'N·m', '16.27', 'inch-for-foot-pounds'],
    ['torque', '25', 'N·m', 'lbf·ft', '33.9', 'factor-turned-round'],
    ['length', '0.030', 'in', 'mm', '0.0012', 'factor-turned-round'],
    ['pressure', '7', 'bar', 'psi', '10.15', 'decimal-point-moved'],
    // an imperial quart is 1.1365 L
    ['volume', '8', 'US qt', 'L', '9.09', 'other-quart'],
    ['temperature', '200', '°F', '°C', '111', 'zero-left-out'],
    ['temperature', '80', '°C', '°F', '202', 'zero-too-late'],
  ] as const)('%s: %s %s in %s as %s', (kind, value, from, to, given, slipUp) => {
    const verdict = judge(posed(kind, value, from, to), { form: 'number', value: given });
    expect(verdict.right).toBe(false);
    expect(verdict.slipUps).toEqual([slipUp]);
  });

  test('nothing entered, nothing asked', () => {
    expect(unitConvert.facts(makeUnit(bare))).toEqual([]);
  });
});

describeRules(unitConvert, { seeds: 60 });
