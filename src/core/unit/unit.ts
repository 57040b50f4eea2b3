/**
 * A unit: a deck that has been solved. Questions, drawings and reports read only this. Everything computed
 * is exact; what is not verified stays visible but is never asked (`sure`).
 */
import { settle } from '../gears/one-way.ts';
import { type Solution, solveSpeeds } from '../gears/solve.ts';
import { solveTorques, type Torques } from '../gears/torque.ts';
import type { Rational } from '../rational.ts';
import type { Deck, DeckRange, DeckRow } from './deck.ts';
import { type Ref, unsureRefsOf } from './refs.ts';

export type { Ref, RefKind } from './refs.ts';

export interface Row {
  readonly id: string;
  readonly ref: Ref;
  /** In the order of the train's elements, so that equal sets are equal lists. */
  readonly applied: readonly string[];
  readonly solution: Solution;
}

export interface Range extends Row {
  readonly ratio: Rational;
  readonly torques: Torques;
  /** Decimals to show and ask the ratio with: those the deck states, else 3. */
  readonly decimals: number;
}

export interface Unit {
  readonly deck: Deck;
  /** Driving rows in chart order. */
  readonly ranges: readonly Range[];
  /** Rows that do not drive. */
  readonly neutrals: readonly Row[];
  /** True when nothing about the value is marked unsure; cells count with their row, plates with their stack. */
  sure(ref: Ref): boolean;
}

/** Which deck values a set of elements acting in the train rests on: all gearsets and elements. */
export function trainRefs(deck: Deck): Ref[] {
  return [
    ...deck.train.gearsets.map((set): Ref => `gearset:${set.id}`),
    ...deck.train.elements.map((element): Ref => `element:${element.id}`),
  ];
}

/**
 * Solves a checked deck. A deck that has not passed the checks of src/content may throw here: an unknown id,
 * or a range that does not drive, is a mistake of the caller.
 */
export function makeUnit(deck: Deck): Unit {
  const order = new Map(deck.train.elements.map((element, index) => [element.id, index]));
  const sorted = (ids: readonly string[]) => [...ids].sort((a, b) => order.get(a)! - order.get(b)!);
  const solveRange = (row: DeckRange): Range => {
    const applied = sorted(row.applied);
    const solution = solveSpeeds(deck.train, applied);
    const torques = solveTorques(deck.train, applied);
    if (!solution.ratio || !torques) throw new Error(`range "${row.id}" does not drive: ${solution.state}`);
    const decimals = row.ratio?.split('.')[1]?.length ?? 3;
    return {
      id: row.id,
      ref: `range:${row.id}`,
      applied,
      solution,
      ratio: solution.ratio,
      torques,
      decimals,
    };
  };
  const solveNeutral = (row: DeckRow): Row => {
    const applied = sorted(row.applied);
    return { id: row.id, ref: `neutral:${row.id}`, applied, solution: settle(deck.train, applied).solution };
  };
  const unsure = unsureRefsOf(deck);
  return {
    deck,
    ranges: deck.chart.ranges.map(solveRange),
    neutrals: (deck.chart.neutral ?? []).map(solveNeutral),
    sure: (ref) => !unsure.has(ref),
  };
}

/** The range with this id, or undefined. */
export function rangeOf(unit: Unit, id: string): Range | undefined {
  return unit.ranges.find((range) => range.id === id);
}
