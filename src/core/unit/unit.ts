/**
 * A unit: a deck that has been solved. Questions, drawings and reports read only this. Everything computed
 * is exact; what is not verified stays visible but is never asked (`sure`).
 */
import { settle } from '../gears/one-way.ts';
import { type Solution, solveSpeeds } from '../gears/solve.ts';
import { solveTorques, type Torques } from '../gears/torque.ts';
import type { Rational } from '../rational.ts';
import type { Deck, DeckRange, DeckRow } from './deck.ts';

/**
 * Points at one value of a deck: "range:4", "element:C1", "solenoid:S2", "cell:4/C1", "step:strip/pump-off".
 * Stable for ever.
 */
export type Ref = `${RefKind}:${string}`;
export type RefKind =
  | 'range'
  | 'neutral'
  | 'cell'
  | 'element'
  | 'gearset'
  | 'solenoid'
  | 'position'
  | 'sensor'
  | 'step';

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
  /** True when nothing about the value is marked unsure; cells of a row count with it. */
  sure(ref: Ref): boolean;
}

/** Which deck values a set of elements acting in the train rests on: all gearsets and elements. */
export function trainRefs(deck: Deck): Ref[] {
  return [
    ...deck.train.gearsets.map((set): Ref => `gearset:${set.id}`),
    ...deck.train.elements.map((element): Ref => `element:${element.id}`),
  ];
}

function unsureRefs(deck: Deck): Set<Ref> {
  const unsure = new Set<Ref>();
  const note = (kind: RefKind, records: readonly { id: string; unsure?: true | undefined }[] = []) => {
    for (const record of records) if (record.unsure) unsure.add(`${kind}:${record.id}`);
  };
  note('gearset', deck.train.gearsets);
  note('element', deck.train.elements);
  note('range', deck.chart.ranges);
  note('neutral', deck.chart.neutral);
  note('solenoid', deck.solenoids);
  note('position', deck.lever?.positions);
  note('sensor', deck.sensors);
  for (const sequence of deck.sequences ?? [])
    for (const step of sequence.steps)
      if (step.unsure || sequence.unsure) unsure.add(`step:${sequence.id}/${step.id}`);
  const cells = (kind: 'range' | 'neutral', rows: readonly DeckRow[] = []) => {
    for (const row of rows) {
      for (const element of row.unsureCells ?? []) {
        unsure.add(`${kind}:${row.id}`);
        unsure.add(`cell:${row.id}/${element}`);
      }
    }
  };
  cells('range', deck.chart.ranges);
  cells('neutral', deck.chart.neutral);
  return unsure;
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
  const unsure = unsureRefs(deck);
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
