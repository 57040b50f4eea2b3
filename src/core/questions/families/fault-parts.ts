/** What the fault families say alike: when a unit may be asked, an outcome in words, the check by speeds. */
import { solveBySpeeds } from '../../faults/by-speeds.ts';
import type { ElementFault } from '../../faults/fault.ts';
import { outcomeOf, type TrainOutcome } from '../../faults/outcome.ts';
import { solveSpeeds } from '../../gears/solve.ts';
import type { Train } from '../../gears/train.ts';
import { makeDecimal } from '../../rational.ts';
import { type Range, type Ref, trainRefs, type Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import { rawApplied, sureRanges } from './chart-parts.ts';

/** Fewer ranges than this make too small a question. */
export const FEWEST_RANGES = 4;

/** Ranges a fault may be asked about; none when the train is unverified or a one-way belies the chart. */
export function faultRanges(unit: Unit): Range[] {
  if (!trainRefs(unit.deck).every((ref) => unit.sure(ref))) return [];
  const ranges = sureRanges(unit);
  const sound = ranges.every((range) => outcomeOf(unit, null, range).kind === 'works');
  return sound && ranges.length >= FEWEST_RANGES ? ranges : [];
}

/** All a computed fault rests on: the whole train, and the rows named. */
export const faultRefs = (unit: Unit, ranges: readonly Range[]): Ref[] => [
  ...trainRefs(unit.deck),
  ...ranges.map((range) => range.ref),
];

export const rangeNames = (ranges: readonly { readonly id: string }[]): Phrase[] =>
  ranges.map(({ id }) => thing('range', id));

/** "Range 3: drives as 1, at 2.875 : 1." */
export function outcomeInWords(unit: Unit, range: Range, outcome: TrainOutcome): Phrase {
  const decimals = unit.ranges[0]!.decimals;
  return say(`outcome.${outcome.kind}`, {
    range: thing('range', range.id),
    ...('ratio' in outcome ? { ratio: makeDecimal(outcome.ratio, decimals) } : {}),
    ...(outcome.kind === 'becomes' ? { becomes: thing('range', outcome.range) } : {}),
  });
}

/** The outcome of a fault on a range by the second route, from the raw deck; any other ratio is one kind. */
export function recheck(
  unit: Unit,
  fault: ElementFault,
  range: string,
): Exclude<TrainOutcome['kind'], 'becomes'> {
  const raw = unit.deck.train;
  const charted = rawApplied(unit, range);
  const isFaulty = ({ id }: { readonly id: string }) => id === fault.element;
  const stuck = fault.kind === 'element-stuck';
  const train: Train = {
    ...raw,
    elements: stuck
      ? raw.elements.map((element) => (isFaulty(element) ? { ...element, kind: 'clutch' } : element))
      : raw.elements.filter((element) => !isFaulty(element)),
  };
  const on = train.elements
    .filter(({ id, kind }) => kind !== 'one-way' && (charted.includes(id) || (stuck && id === fault.element)))
    .map(({ id }) => id);
  const { state, ratio } = solveBySpeeds(train, on);
  if (state !== 'drives') return state === 'free' ? 'no-drive' : state;
  const own = solveSpeeds(raw, charted).ratio;
  return own && ratio?.equals(own) ? 'works' : 'other-ratio';
}
