/** Shifts: pairs of forward ranges and what each element does between them. */
import type { Random } from '../../random.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { sameRow } from './chart-parts.ts';

export interface Shift {
  readonly from: Range;
  readonly to: Range;
}

/** comes-on: off before, on after. goes-off: on before, off after. */
export const CHANGES = ['comes-on', 'goes-off', 'stays-on', 'stays-off'] as const;
export type Change = (typeof CHANGES)[number];

/**
 * Forward ranges from the lowest up, one for each ratio: where two rows drive alike (with and without engine
 * braking, say) the first in the chart stands for both.
 */
export function forwardLadder(unit: Unit): Range[] {
  const forward = unit.ranges.filter((range) => range.ratio.compare(0n) > 0);
  return forward
    .filter(
      (range, place) =>
        forward.findIndex((row) => row.ratio.equals(range.ratio) || sameRow(row, range)) === place,
    )
    .sort((a, b) => b.ratio.compare(a.ratio));
}

const sureShift = (unit: Unit, { from, to }: Shift) => unit.sure(from.ref) && unit.sure(to.ref);

/** The shifts up to the next range, both rows verified. */
export function nextShifts(unit: Unit): Shift[] {
  const ladder = forwardLadder(unit);
  return ladder
    .slice(1)
    .map((to, place) => ({ from: ladder[place]!, to }))
    .filter((shift) => sureShift(unit, shift));
}

/** Every two verified forward ranges, as the shift up. */
export function everyShift(unit: Unit): Shift[] {
  const ladder = forwardLadder(unit);
  return ladder
    .flatMap((from, place) => ladder.slice(place + 1).map((to) => ({ from, to })))
    .filter((shift) => sureShift(unit, shift));
}

export function changeOf(element: string, { from, to }: Shift): Change {
  const [before, after] = [from.applied.includes(element), to.applied.includes(element)];
  if (before) return after ? 'stays-on' : 'goes-off';
  return after ? 'comes-on' : 'stays-off';
}

/** Elements that do this in the shift, in the order of the train. */
export const elementsThat = (unit: Unit, change: Change, shift: Shift): string[] =>
  unit.deck.train.elements.map(({ id }) => id).filter((id) => changeOf(id, shift) === change);

/** As many as fit a phone at thumb size without hiding the prompt. */
const MOST_ELEMENTS = 6;

/** Every element on before or after, filled up with others that the eye could take for them. */
export function elementsAsked(unit: Unit, shift: Shift, random: Random): string[] {
  const all = unit.deck.train.elements.map(({ id }) => id);
  const taking = all.filter((id) => changeOf(id, shift) !== 'stays-off');
  const idle = random.sample(
    all.filter((id) => !taking.includes(id)),
    Math.max(0, MOST_ELEMENTS - taking.length),
  );
  return all.filter((id) => taking.includes(id) || idle.includes(id));
}
