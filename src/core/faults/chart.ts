/** The whole chart with a fault in the unit: what each row does, ranges first, then the rows that must not drive. */
import type { Row, Unit } from '../unit/unit.ts';
import type { Fault } from './fault.ts';
import { type Outcome, outcomeOf } from './outcome.ts';
import { usualPosition } from './pressure.ts';

export interface FaultCell {
  readonly row: Row;
  /** Where the lever stands; null with no lever recorded. */
  readonly position: string | null;
  readonly outcome: Outcome;
}

/** Ranges in chart order, then neutral rows. */
export const rowsOf = (unit: Unit): Row[] => [...unit.ranges, ...unit.neutrals];

/** What every row does with this fault, each in the lever position that usually commands it. */
export function faultChart(unit: Unit, fault: Fault | null): FaultCell[] {
  return rowsOf(unit).map((row) => {
    const position = usualPosition(unit.deck, row);
    return { row, position, outcome: outcomeOf(unit, fault, row, position) };
  });
}

/** A row that must not drive and does: the unit creeps. */
export const creeps = ({ row, outcome }: Pick<FaultCell, 'row' | 'outcome'>): boolean =>
  row.solution.ratio === null && (outcome.kind === 'becomes' || outcome.kind === 'other-ratio');
