/**
 * The chart of a draft solved row by row while it is typed: what each row gives in the train as it stands, beside
 * what plate or book states. A row waits while it names an element that is not described yet.
 */
import { settle } from '../gears/one-way.ts';
import { type State, solveSpeeds } from '../gears/solve.ts';
import type { Train } from '../gears/train.ts';
import { decimalsOf, makeDecimal, parseRational, type Rational, rational } from '../rational.ts';
import type { DeckDraft } from './draft.ts';
import { figureFrom } from './finish.ts';
import { solvableTrain } from './train.ts';

export interface RowReading {
  readonly state: State | 'waits';
  /** What the train gives; null unless it drives. */
  readonly ratio: Rational | null;
  /** Whether that is what is stated, rounded or cut off there; null when nothing is stated, or solved. */
  readonly agrees: boolean | null;
}

export interface ChartReading {
  readonly ranges: readonly RowReading[];
  readonly neutral: readonly RowReading[];
}

function agreesWith(ratio: Rational, typed: string | undefined): boolean | null {
  const text = figureFrom(typed ?? '');
  const stated = parseRational(text);
  if (!stated) return null;
  const decimals = decimalsOf(text);
  const missing = ratio.abs().sub(stated.abs());
  const cut = ratio.s === stated.s && missing.gte(0n) && missing.lt(rational(1n, 10n ** BigInt(decimals)));
  return cut || makeDecimal(ratio, decimals) === makeDecimal(stated, decimals);
}

interface TypedRow {
  readonly applied?: readonly string[] | undefined;
  readonly ratio?: string | undefined;
}

function readRow(train: Train | null, row: TypedRow, neutral: boolean): RowReading {
  const applied = row.applied ?? [];
  if (!train || !applied.every((id) => train.elements.some((element) => element.id === id)))
    return { state: 'waits', ratio: null, agrees: null };
  // In a neutral row one-ways act by themselves; in a range those that hold are listed.
  const { state, ratio } = neutral ? settle(train, applied).solution : solveSpeeds(train, applied);
  return { state, ratio, agrees: ratio && agreesWith(ratio, row.ratio) };
}

/** One reading for each row of the draft, in its order. */
export function readRows(draft: DeckDraft): ChartReading {
  const train = solvableTrain(draft);
  const { ranges = [], neutral = [] } = draft.chart ?? {};
  return {
    ranges: ranges.map((row) => readRow(train, row, false)),
    neutral: neutral.map((row) => readRow(train, row, true)),
  };
}
