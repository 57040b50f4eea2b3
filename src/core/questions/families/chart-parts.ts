/** What several chart families say alike: fact ids, options, the rows that may be asked, a row in words. */

import type { Range, Row, Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import type { Answer, FactId, Lure, Option } from '../question.ts';

export const rangeFact = (range: string): FactId => `range:${range}/elements`;

/** Rows with nothing unverified in them. */
export const sureRanges = (unit: Unit): Range[] => unit.ranges.filter((range) => unit.sure(range.ref));

export const elementOptions = (unit: Unit): Option[] =>
  unit.deck.train.elements.map((element) => ({ id: element.id, label: thing('element', element.id) }));

export const rangeOptions = (ranges: readonly { readonly id: string }[]): Option[] =>
  ranges.map((range) => ({ id: range.id, label: thing('range', range.id) }));

export const setAnswer = (picks: readonly string[]): Answer => ({ form: 'set', picks });

/** The verified ones of the rows printed just above and below; the chart's order is what the eye slips in. */
export function neighboursOf(unit: Unit, range: { readonly id: string }): Range[] {
  const place = unit.ranges.findIndex((row) => row.id === range.id);
  return [unit.ranges[place - 1], unit.ranges[place + 1]].filter(
    (row) => row !== undefined && unit.sure(row.ref),
  ) as Range[];
}

export const oneWayIds = (unit: Unit): string[] =>
  unit.deck.train.elements.filter((element) => element.kind === 'one-way').map((element) => element.id);

/** Friction elements: those that oil or a servo can apply. One-ways act by themselves. */
export const frictionIds = (unit: Unit): string[] =>
  unit.deck.train.elements.filter((element) => element.kind !== 'one-way').map((element) => element.id);

/** Two rows that hold the same elements. */
export const sameRow = (a: Pick<Row, 'applied'>, b: Pick<Row, 'applied'>): boolean =>
  a.applied.length === b.applied.length && a.applied.every((id, place) => id === b.applied[place]);

/** What the raw chart says of a range, for a second look at an answer. */
export const rawApplied = (unit: Unit, range: string): readonly string[] =>
  unit.deck.chart.ranges.find((row) => row.id === range)!.applied;

export const elementNames = (ids: readonly string[]): Phrase[] => ids.map((id) => thing('element', id));

/** "Range 4: B1 and C1." */
export const rowInWords = (range: Range): Phrase =>
  say('chart.row', { range: thing('range', range.id), elements: elementNames(range.applied) });

/** "B1 holds s1 still." or "C2 makes s4 and s3 turn as one." */
export function elementInWords(unit: Unit, id: string): Phrase {
  const { kind, between, overruns } = unit.deck.train.elements.find((element) => element.id === id)!;
  const [first, second] = between;
  if (kind === 'one-way')
    return say('chart.one-way-joins', {
      element: thing('element', id),
      first: thing('shaft', first),
      second: thing('shaft', second),
      blocked: overruns === 'backward' ? 'forward' : 'backward',
    });
  const toCase = first === 'case' || second === 'case';
  return say(toCase ? 'chart.brake-holds' : 'chart.clutch-joins', {
    element: thing('element', id),
    first: thing('shaft', first === 'case' ? second : first),
    second: thing('shaft', first === 'case' ? first : second),
  });
}

/** Drops the slip-ups that give the same answer by the same rule, so that each is named once. */
export function distinctLures(lures: readonly Lure[]): Lure[] {
  const seen = new Set<string>();
  return lures.filter((lure) => {
    const key = JSON.stringify([lure.slipUp, lure.answer]);
    return !seen.has(key) && seen.add(key);
  });
}
