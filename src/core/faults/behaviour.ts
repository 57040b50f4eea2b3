/**
 * What a unit does with these elements under pressure and the input driving: its one-ways act by themselves,
 * and a ratio that equals a charted one names that range.
 */
import { settle } from '../gears/one-way.ts';
import type { Solution } from '../gears/solve.ts';
import type { Train } from '../gears/train.ts';
import type { Rational } from '../rational.ts';
import type { Unit } from '../unit/unit.ts';

export type Behaviour =
  /** range: the charted range of this very ratio, null when no range has it. */
  | { readonly does: 'drives'; readonly ratio: Rational; readonly range: string | null }
  | { readonly does: 'no-drive' | 'output-held' | 'tied-up' };

/** The elements of a row that pressure applies: one-ways act by themselves and are left out. */
export function commandedIn(train: Train, applied: readonly string[]): string[] {
  return applied.filter((id) =>
    train.elements.some((element) => element.id === id && element.kind !== 'one-way'),
  );
}

/**
 * The charted range of this ratio. Of several (a range with and without engine braking) the one that applies
 * just these elements, else the first in the chart.
 */
function rangeAt(unit: Unit, ratio: Rational, friction: readonly string[]): string | null {
  const equal = unit.ranges.filter((range) => range.ratio.equals(ratio));
  const exact = equal.find((range) => {
    const commanded = commandedIn(unit.deck.train, range.applied);
    return commanded.length === friction.length && commanded.every((id) => friction.includes(id));
  });
  return (exact ?? equal[0])?.id ?? null;
}

const solved = new WeakMap<Train, Map<string, Pick<Solution, 'state' | 'ratio'>>>();

/** Solved once for each train and combination: many faults leave the same elements on. */
function solutionOf(train: Train, friction: readonly string[]): Pick<Solution, 'state' | 'ratio'> {
  const known = solved.get(train) ?? new Map<string, Pick<Solution, 'state' | 'ratio'>>();
  solved.set(train, known);
  const key = [...friction].sort().join(' ');
  const solution = known.get(key) ?? settle(train, friction).solution;
  known.set(key, solution);
  return solution;
}

/** `train` is the unit's own, or that train with a fault in it; `friction` are ids of its brakes and clutches. */
export function behaviourOf(
  unit: Unit,
  friction: readonly string[],
  train: Train = unit.deck.train,
): Behaviour {
  const { state, ratio } = solutionOf(train, friction);
  if (state === 'free') return { does: 'no-drive' };
  return ratio
    ? { does: 'drives', ratio, range: rangeAt(unit, ratio, friction) }
    : { does: state as 'output-held' | 'tied-up' };
}
