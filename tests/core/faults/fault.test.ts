import { describe, expect, test } from 'vitest';
import { behaviourOf } from '../../../src/core/faults/behaviour.ts';
import { solveBySpeeds } from '../../../src/core/faults/by-speeds.ts';
import type { Fault } from '../../../src/core/faults/fault.ts';
import { outcomeOf } from '../../../src/core/faults/outcome.ts';
import { settle } from '../../../src/core/gears/one-way.ts';
import { unpluggedAt } from '../../../src/core/hydraulics/pressurised.ts';
import { makeUnit, rangeOf } from '../../../src/core/unit/unit.ts';
import { deckOf, everyUnit, PUBLISHED, publishedUnits } from '../../units.ts';

const unitOf = (id: string) => makeUnit(deckOf(PUBLISHED.find((train) => train.id === id)!));
const said = (id: string, fault: Fault | null, range: string) => {
  const unit = unitOf(id);
  const outcome = outcomeOf(unit, fault, rangeOf(unit, range)!);
  return outcome.kind === 'becomes' ? `becomes ${outcome.range}` : outcome.kind;
};
const fails = (element: string): Fault => ({ kind: 'element-fails', element });
const stuck = (element: string): Fault => ({ kind: 'element-stuck', element });

describe('worked by hand on the published trains (tests/published names their sources)', () => {
  test.each([
    // Ravigneaux: C1 in–s1, C2 in–carrier, C3 in–s2, B1 holds s2, B2 and one-way F2 hold the carrier
    ['ravigneaux-4-a', 'C1', '1', 'no-drive', 'nothing turns s1'],
    ['ravigneaux-4-a', 'B2', '1m', 'works', 'F2 holds the carrier in its place while pulling'],
    ['ravigneaux-4-a', 'F2', '1', 'no-drive', 'the carrier has no reaction left'],
    ['ravigneaux-4-a', 'F2', '1m', 'works', 'B2 holds the carrier anyway'],
    ['ravigneaux-4-a', 'B1', '2', 'becomes 1', 'with s2 free F2 takes the carrier, as in 1'],
    ['ravigneaux-4-a', 'C2', '3', 'becomes 1', 'the carrier is let go, and F2 takes it'],
    ['ravigneaux-4-a', 'B2', 'R', 'no-drive', 'in R the carrier is pushed forward, which F2 lets through'],
    // five-speed: one-way F1 holds s1 to the case, F2 joins s2 to s3 beside K3
    ['five-speed-3sets-a', 'K3', '1', 'works', 'F2 joins s2 and s3 in its place'],
    ['five-speed-3sets-a', 'B1', '1', 'works', 'F1 holds s1 in its place'],
    ['five-speed-3sets-a', 'K1', '2', 'becomes 1', 'F1 holds s1, which is 1'],
    ['five-speed-3sets-a', 'B2', '1', 'no-drive', 'nothing holds s3'],
    // four ranges, crossed sets: no one-way, so whatever uses it is gone
    ['four-range-two-crossed-sets', 'UD', '2', 'no-drive', ''],
    ['four-range-two-crossed-sets', 'UD', '4', 'works', ''],
  ])('%s, %s fails, range %s: %s (%s)', (train, element, range, expected) => {
    expect(said(train, fails(element), range)).toBe(expected);
  });

  test.each([
    ['ravigneaux-4-a', 'B1', '1', 'becomes 2', 'the carrier runs ahead of F2, as in 2'],
    ['ravigneaux-4-a', 'C2', '1', 'becomes 3', 'the carrier turns with the input and F2 overruns'],
    ['ravigneaux-4-a', 'B1', '1m', 'tied-up', 's2 and carrier both held while s1 is driven'],
    ['ravigneaux-4-a', 'B1', '3', 'tied-up', 'all of it turns as one, so none of it can be held'],
    ['ravigneaux-4-a', 'C3', '3', 'works', 'all turns as one already'],
    ['ravigneaux-4-a', 'F2', '3', 'tied-up', 'a one-way locked both ways is a brake'],
    ['ravigneaux-4-a', 'F2', 'R', 'works', 'it is held by B2 there'],
    ['four-range-two-crossed-sets', 'OD', '1', 'tied-up', 'input braked by LR'],
    ['four-range-two-crossed-sets', 'B24', '2', 'works', ''],
    ['four-range-two-crossed-sets', 'RV', '3', 'works', 'direct drive, all at input speed'],
  ])('%s, %s stuck on, range %s: %s (%s)', (train, element, range, expected) => {
    expect(said(train, stuck(element), range)).toBe(expected);
  });

  test('an element stuck on makes a neutral row drive when it completes a range', () => {
    // the test's neutral row applies nothing; C1 stuck on is range 1 through the one-way
    const unit = unitOf('ravigneaux-4-a');
    const [neutral] = unit.neutrals;
    expect(outcomeOf(unit, null, neutral!)).toEqual({ kind: 'works' });
    expect(outcomeOf(unit, stuck('C1'), neutral!)).toMatchObject({ kind: 'becomes', range: '1' });
    expect(outcomeOf(unit, stuck('B1'), neutral!)).toEqual({ kind: 'works' });
  });
});

describe('properties', () => {
  test('no fault gives the chart back, range by range, on every unit', () => {
    for (const unit of everyUnit())
      for (const row of [...unit.ranges, ...unit.neutrals])
        expect(outcomeOf(unit, null, row), `${unit.deck.id} ${row.id}`).toEqual({ kind: 'works' });
  });

  test('an element that fails where it is off, or sticks where it is on, changes nothing', () => {
    for (const unit of publishedUnits())
      for (const { id, kind } of unit.deck.train.elements)
        for (const range of unit.ranges) {
          if (kind === 'one-way') continue;
          const fault = range.applied.includes(id) ? stuck(id) : fails(id);
          expect(outcomeOf(unit, fault, range)).toEqual({ kind: 'works' });
        }
  });

  test('torques and speeds alone agree for every set of brakes and clutches, with and without each one-way', () => {
    for (const { deck } of everyUnit()) {
      const { train } = deck;
      const oneWays = train.elements.filter((element) => element.kind === 'one-way');
      const friction = train.elements.filter((element) => element.kind !== 'one-way');
      const trains = [
        train,
        ...oneWays.map((gone) => ({ ...train, elements: train.elements.filter((other) => other !== gone) })),
      ];
      for (let mask = 0; mask < 2 ** friction.length; mask++) {
        const on = friction.filter((_, bit) => mask & (1 << bit)).map((element) => element.id);
        for (const tried of trains) {
          const { state, ratio } = settle(tried, on).solution;
          const other = solveBySpeeds(tried, on);
          expect([other.state, other.ratio?.toFraction()], `${deck.id} ${on}`).toEqual([
            state,
            ratio?.toFraction(),
          ]);
        }
      }
    }
  });

  // common practice, no source: no pressure anywhere when unplugged, and no feed by hand
  test('a unit whose solenoids all give no pressure when unplugged drives in no range', () => {
    for (const unit of publishedUnits()) {
      const dead = {
        ...unit.deck,
        solenoids: unit.deck.solenoids!.map((solenoid) => ({ ...solenoid, whenUnplugged: 'none' as const })),
      };
      for (const { id } of dead.lever!.positions)
        expect(behaviourOf(unit, unpluggedAt(dead, id)!), `${unit.deck.id} ${id}`).toEqual({
          does: 'no-drive',
        });
    }
  });

  test('an element the train does not have is refused', () => {
    const unit = unitOf('ravigneaux-4-a');
    expect(() => outcomeOf(unit, fails('C9'), unit.ranges[0]!)).toThrow('no element "C9"');
  });
});
