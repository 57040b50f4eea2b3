/** The rows of a chart with their places, and what the train does in one, for rules that read rows. */
import { type Settled, settle } from '../../core/gears/one-way.ts';
import { type Solution, solveSpeeds } from '../../core/gears/solve.ts';
import { CASE, shaftsOf, type Train } from '../../core/gears/train.ts';
import type { Deck, DeckRange, DeckRow } from '../../core/unit/deck.ts';
import type { Path } from '../finding.ts';

/** One-ways that a train may have: every combination of them is tried. */
export const MOST_ONE_WAYS = 6;

export interface Placed<T> {
  readonly at: Path;
  readonly row: T;
}

export const rangesOf = (deck: Deck): Placed<DeckRange>[] =>
  deck.chart.ranges.map((row, index) => ({ at: ['chart', 'ranges', index], row }));

export const neutralsOf = (deck: Deck): Placed<DeckRow>[] =>
  (deck.chart.neutral ?? []).map((row, index) => ({ at: ['chart', 'neutral', index], row }));

export const rowsOf = (deck: Deck): Placed<DeckRow>[] => [...rangesOf(deck), ...neutralsOf(deck)];

export function oneWaysOf(train: Train): string[] {
  return train.elements.filter((element) => element.kind === 'one-way').map((element) => element.id);
}

/** Whether solving tells anything: the train has an input and an output of its own, and all these elements. */
function stands(train: Train, applied: readonly string[]): boolean {
  const { input, output } = train;
  const joined = joinedShafts(train);
  return (
    input !== output &&
    [input, output].every((shaft) => joined.includes(shaft)) &&
    applied.every((id) => train.elements.some((element) => element.id === id))
  );
}

/** Shafts that a gearset or an element sits on, the case left out. */
export function joinedShafts(train: Train): string[] {
  return shaftsOf({ ...train, input: CASE, output: CASE });
}

/** What the train does with exactly these on; null when other findings leave nothing to solve. */
export function solveRow(train: Train, applied: readonly string[]): Solution | null {
  return stands(train, applied) ? solveSpeeds(train, applied) : null;
}

/** The same with the one-ways left to themselves; null also when there are too many of them to try. */
export function settleRow(train: Train, applied: readonly string[]): Settled | null {
  return stands(train, applied) && oneWaysOf(train).length <= MOST_ONE_WAYS ? settle(train, applied) : null;
}
