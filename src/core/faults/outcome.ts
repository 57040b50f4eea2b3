/**
 * What a row of the chart does with a fault, the input driving and the row commanded as charted. The train with
 * the fault in it is solved afresh, so no outcome is ever taken from a rule of thumb (docs/spec/faults.md).
 */
import type { Rational } from '../rational.ts';
import { type Row, rangeOf, type Unit } from '../unit/unit.ts';
import { type Behaviour, behaviourOf } from './behaviour.ts';
import { conditionWith } from './condition.ts';
import type { ElementFault, Fault } from './fault.ts';
import type { FaultRow } from './pressure.ts';
import { slippingIn, weaknessOf } from './slip.ts';

export const OUTCOMES = [
  'works',
  'no-drive',
  'output-held',
  'tied-up',
  'becomes',
  'other-ratio',
  'slips',
  'unsettled',
] as const;
export type OutcomeKind = (typeof OUTCOMES)[number];

export type Outcome =
  /** As charted: the row's own ratio, or no drive where the row must not drive. */
  | { readonly kind: 'works' }
  | { readonly kind: 'no-drive' | 'output-held' | 'tied-up' }
  | { readonly kind: 'becomes'; readonly range: string; readonly ratio: Rational }
  /** Drives at a ratio that no range has. */
  | { readonly kind: 'other-ratio'; readonly ratio: Rational }
  /** These hold less than the unit's full torque asks of them, the weakest first. */
  | { readonly kind: 'slips'; readonly elements: readonly string[] }
  /** The deck does not say enough. */
  | { readonly kind: 'unsettled' };

/** What is left when pressure and torque do not come into it. */
export type TrainOutcome = Exclude<Outcome, { readonly kind: 'slips' | 'unsettled' }>;

/** Whether the unit does what the row's own solution says. */
function asCharted(row: Pick<Row, 'solution'>, actual: Behaviour): boolean {
  const { state, ratio } = row.solution;
  if (actual.does === 'drives') return ratio !== null && actual.ratio.equals(ratio);
  return actual.does === (state === 'free' ? 'no-drive' : state);
}

/** Whether a range that drives as charted is held at full load: only faults that weaken an element ask. */
function held(unit: Unit, fault: Fault | null, { id }: FaultRow): Outcome {
  const range = rangeOf(unit, id);
  const weakness = weaknessOf(fault);
  if (!weakness || !range) return { kind: 'works' };
  const elements = slippingIn(unit, range, weakness);
  if (!elements) return { kind: 'unsettled' };
  return elements.length === 0 ? { kind: 'works' } : { kind: 'slips', elements };
}

/**
 * What a row of the unit's chart does with this fault; `null` is a sound unit. `position` is the lever's, the
 * first that can command the row when left out; it matters where a manual valve cuts or feeds. An unknown part
 * throws.
 */
export function outcomeOf(
  unit: Unit,
  fault: ElementFault | null,
  row: FaultRow,
  position?: string | null,
): TrainOutcome;
export function outcomeOf(unit: Unit, fault: Fault | null, row: FaultRow, position?: string | null): Outcome;
export function outcomeOf(unit: Unit, fault: Fault | null, row: FaultRow, position?: string | null): Outcome {
  const condition = conditionWith(unit, fault, row, position);
  if (!condition) return { kind: 'unsettled' };
  const actual = behaviourOf(unit, condition.friction, condition.train);
  if (asCharted(row, actual)) return actual.does === 'drives' ? held(unit, fault, row) : { kind: 'works' };
  if (actual.does !== 'drives') return { kind: actual.does };
  return actual.range === null
    ? { kind: 'other-ratio', ratio: actual.ratio }
    : { kind: 'becomes', range: actual.range, ratio: actual.ratio };
}
