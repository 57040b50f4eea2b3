import { describe, expect, test } from 'vitest';
import { creeps, faultChart, rowsOf } from '../../../src/core/faults/chart.ts';
import { conditionWith } from '../../../src/core/faults/condition.ts';
import { type Fault, faultId } from '../../../src/core/faults/fault.ts';
import { type Outcome, outcomeOf } from '../../../src/core/faults/outcome.ts';
import { faultSpace } from '../../../src/core/faults/space.ts';
import { positionsFor } from '../../../src/core/hydraulics/feeds.ts';
import type { Unit } from '../../../src/core/unit/unit.ts';
import { everyUnit } from '../../units.ts';
import { bruteOutcome, isOverHeld } from './brute.ts';
import { fullUnits } from './decks.ts';

const told = (outcome: Outcome): string | number => {
  if ('ratio' in outcome) return outcome.ratio.valueOf();
  return outcome.kind === 'slips' ? `slips ${outcome.elements.join(' ')}` : outcome.kind;
};

/** Every fault in every row, in every lever position that can command the row. */
function* everyCase(unit: Unit, faults: readonly (Fault | null)[] = faultSpace(unit)) {
  for (const fault of faults)
    for (const row of rowsOf(unit))
      for (const position of positionsFor(unit.deck, row.id)) yield { fault, row, position: position.id };
}

describe('every single fault on every published train, in every row and lever position', () => {
  test.each(fullUnits().map((unit) => [unit.deck.id, unit] as const))(
    'F3 %s: as worked out apart, in floats and by inequalities',
    (_, unit) => {
      const kinds = new Set<string>();
      for (const { fault, row, position } of everyCase(unit)) {
        const outcome = outcomeOf(unit, fault, row, position);
        const other = bruteOutcome(unit.deck, fault, row.id, position);
        const name = `${faultId(fault!)} in ${row.id}, lever ${position}`;
        kinds.add(outcome.kind);
        if (typeof other === 'number') expect(told(outcome), name).toBeCloseTo(other, 6);
        else expect(told(outcome), name).toBe(other);
      }
      expect(kinds.size).toBeGreaterThan(1);
    },
  );

  test('F1 with the fault taken away the chart is back', () => {
    for (const unit of [...fullUnits(), ...everyUnit()])
      for (const { row, position } of everyCase(unit, [null]))
        expect(outcomeOf(unit, null, row, position)).toEqual({ kind: 'works' });
  });

  test('F4 a tie-up is over-held: the equations leave the input no freedom, and only then', () => {
    for (const unit of fullUnits()) {
      if (unit.deck.train.elements.some(({ kind }) => kind === 'one-way')) continue;
      let tied = 0;
      for (const { fault, row, position } of everyCase(unit)) {
        const { train, friction } = conditionWith(unit, fault, row, position)!;
        const { kind } = outcomeOf(unit, fault, row, position);
        expect(isOverHeld(train, friction)).toBe(kind === 'tied-up');
        if (kind === 'tied-up') tied++;
      }
      expect(tied > 0).toBe(unit.ranges.length > 1);
    }
  });

  test('F5 a range becomes only one whose ratio it drives at', () => {
    for (const unit of fullUnits())
      for (const { fault, row, position } of everyCase(unit)) {
        const outcome = outcomeOf(unit, fault, row, position);
        const range = outcome.kind === 'becomes' && unit.ranges.find(({ id }) => id === outcome.range)!;
        if (range) expect(range.ratio.equals((outcome as { ratio: typeof range.ratio }).ratio)).toBe(true);
        if (outcome.kind === 'other-ratio')
          expect(unit.ranges.some(({ ratio }) => ratio.equals(outcome.ratio))).toBe(false);
      }
  });

  test('F6 neutral creeps where it drives', () => {
    const found = fullUnits().flatMap((unit) =>
      faultSpace(unit).flatMap((fault) =>
        faultChart(unit, fault)
          .filter(creeps)
          .map(({ row }) => `${unit.deck.id} ${faultId(fault)} ${row.id}`),
      ),
    );
    // neutral applies nothing in these decks; with the carrier on its one-way, C1 alone is range 1
    expect(found).toContain('ravigneaux-4-a element-stuck:C1 N');
    expect(found.every((name) => name.endsWith(' N'))).toBe(true);
  });

  test('F13 a lost feed does what the element failing does; F14 a lost sensor does nothing to a row', () => {
    for (const unit of fullUnits())
      for (const { fault, row, position } of everyCase(unit)) {
        const outcome = outcomeOf(unit, fault, row, position);
        if (fault!.kind === 'feed-lost')
          expect(outcome).toEqual(
            outcomeOf(unit, { kind: 'element-fails', element: fault!.element }, row, position),
          );
        if (fault!.kind === 'sensor-lost') expect(outcome).toEqual({ kind: 'works' });
      }
  });
});
