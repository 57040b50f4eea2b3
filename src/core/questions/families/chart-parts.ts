/** What several chart families say alike: fact ids, options, the rows that may be asked. */

import type { Range, Unit } from '../../unit/unit.ts';
import { thing } from '../phrase.ts';
import type { Answer, FactId, Option } from '../question.ts';

export const rangeFact = (range: string): FactId => `range:${range}/elements`;

/** Rows with nothing unverified in them. */
export const sureRanges = (unit: Unit): Range[] => unit.ranges.filter((range) => unit.sure(range.ref));

export const elementOptions = (unit: Unit): Option[] =>
  unit.deck.train.elements.map((element) => ({ id: element.id, label: thing('element', element.id) }));

export const rangeOptions = (ranges: readonly { readonly id: string }[]): Option[] =>
  ranges.map((range) => ({ id: range.id, label: thing('range', range.id) }));

export const setAnswer = (picks: readonly string[]): Answer => ({ form: 'set', picks });

/** The rows printed just above and below; the chart's order is what the eye slips in. */
export function neighboursOf(unit: Unit, range: { readonly id: string }): Range[] {
  const place = unit.ranges.findIndex((row) => row.id === range.id);
  return [unit.ranges[place - 1], unit.ranges[place + 1]].filter((row) => row !== undefined);
}
