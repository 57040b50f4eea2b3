/**
 * Faults: one thing wrong with a unit, and what a row of the chart then does, with the input driving. A fault
 * changes the train, the elements that end up applied, or both; the train is then solved afresh, so no outcome
 * is ever taken from a rule of thumb. Slipping and weak elements are not faults here: what they do is a matter
 * of degree, and is not asked.
 */
import type { Element, Train } from '../gears/train.ts';
import { elementOf } from '../gears/train.ts';
import type { Rational } from '../rational.ts';
import type { Row, Unit } from '../unit/unit.ts';
import { type Behaviour, behaviourOf, commandedIn } from './behaviour.ts';

export type Fault =
  /** A brake or clutch that never takes hold, a one-way that never holds. */
  | { readonly kind: 'element-fails'; readonly element: string }
  /** A brake or clutch that never lets go, a one-way that is locked both ways round. */
  | { readonly kind: 'element-stuck'; readonly element: string };

export type Outcome =
  /** As charted: the row's own ratio, or no drive where the row must not drive. */
  | { readonly kind: 'works' }
  | { readonly kind: 'no-drive' | 'output-held' | 'tied-up' }
  | { readonly kind: 'becomes'; readonly range: string; readonly ratio: Rational }
  /** Drives at a ratio that no range has. */
  | { readonly kind: 'other-ratio'; readonly ratio: Rational };

/** A train and the brakes and clutches that are on in it. */
interface Condition {
  readonly train: Train;
  readonly friction: readonly string[];
}

function withFault({ train, friction }: Condition, fault: Fault): Condition {
  const element = elementOf(train, fault.element);
  const oneWay = element.kind === 'one-way';
  const without = train.elements.filter((other) => other !== element);
  switch (fault.kind) {
    case 'element-fails':
      return oneWay
        ? { train: { ...train, elements: without }, friction }
        : { train, friction: friction.filter((id) => id !== element.id) };
    case 'element-stuck': {
      const locked: Element = { id: element.id, kind: 'clutch', between: element.between };
      return {
        train: oneWay ? { ...train, elements: [...without, locked] } : train,
        friction: friction.includes(element.id) ? friction : [...friction, element.id],
      };
    }
  }
}

/** Whether the unit does what the row's own solution says. */
function asCharted(row: Pick<Row, 'solution'>, actual: Behaviour): boolean {
  const { state, ratio } = row.solution;
  if (actual.does === 'drives') return ratio !== null && actual.ratio.equals(ratio);
  return actual.does === (state === 'free' ? 'no-drive' : state);
}

/** What a row of the unit's chart does with this fault; `null` is a sound unit. An unknown element throws. */
export function outcomeOf(unit: Unit, fault: Fault | null, row: Pick<Row, 'applied' | 'solution'>): Outcome {
  const { train } = unit.deck;
  const sound: Condition = { train, friction: commandedIn(train, row.applied) };
  const condition = fault ? withFault(sound, fault) : sound;
  const actual = behaviourOf(unit, condition.friction, condition.train);
  if (asCharted(row, actual)) return { kind: 'works' };
  if (actual.does !== 'drives') return { kind: actual.does };
  return actual.range === null
    ? { kind: 'other-ratio', ratio: actual.ratio }
    : { kind: 'becomes', range: actual.range, ratio: actual.ratio };
}
