/** What elements hold and have to hold, for questions on slip. Null where a capacity is missing or unverified. */
import { fullLoadNm, holdsNm } from '../../../faults/slip.ts';
import type { Rational } from '../../../rational.ts';
import type { DeckElement } from '../../../unit/deck.ts';
import { exactIn } from '../../../unit/record.ts';
import { type Range, type Ref, trainRefs, type Unit } from '../../../unit/unit.ts';
import { sureRanges } from '../chart-parts.ts';

export interface Loaded {
  readonly element: DeckElement;
  readonly range: Range;
  /** At full pressure, sound. */
  readonly holdsNm: Rational;
  /** Torque on the element for each N·m at the input. */
  readonly share: Rational;
}

export const capacityRefs = (unit: Unit): Ref[] => [
  ...trainRefs(unit.deck),
  ...unit.deck.train.elements.flatMap(({ id, capacity }): Ref[] => (capacity ? [`capacity:${id}`] : [])),
];

/** Every brake and clutch of a range with the torque it carries; none where something is not settled. */
export function loadedIn(unit: Unit): Loaded[] {
  if (fullLoadNm(unit) === null || !capacityRefs(unit).every((ref) => unit.sure(ref))) return [];
  return sureRanges(unit).flatMap((range) =>
    unit.deck.train.elements.flatMap((element): Loaded[] => {
      const share = range.torques.elements.get(element.id);
      const holds = element.kind === 'one-way' ? null : holdsNm(element);
      if (!range.applied.includes(element.id) || !share || share.n === 0n || !holds) return [];
      return [{ element, range, holdsNm: holds, share: share.abs() }];
    }),
  );
}

/** The figures of an element in plain numbers, a second time: newtons at full pressure, and N·m for each newton. */
function floatModel({ capacity }: DeckElement, plates?: number) {
  const { piston, spring, lining, frictions, friction, pressure } = capacity!;
  const mm = (length: typeof lining.outer) => exactIn(length, 'mm').valueOf();
  const areaMm2 = (Math.PI / 4) * (mm(piston.outer) ** 2 - (piston.inner ? mm(piston.inner) ** 2 : 0));
  const radiusM = (mm(lining.outer) + mm(lining.inner)) / 4 / 1000;
  return {
    fullN: (areaMm2 * exactIn(pressure, 'kPa').valueOf()) / 1000,
    springN: exactIn(spring, 'N').valueOf(),
    nmPerN: 2 * (plates ?? frictions) * Number(friction) * radiusM,
  };
}

/** Torque in N·m that an element of so many plates holds at full pressure. */
export function floatHoldsNm(element: DeckElement, plates: number): number {
  const { fullN, springN, nmPerN } = floatModel(element, plates);
  return nmPerN * Math.max(fullN - springN, 0);
}

/** Share of full pressure at which an element begins to slip under a torque. */
export function floatSlipsAt(element: DeckElement, torqueNm: number): number {
  const { fullN, springN, nmPerN } = floatModel(element);
  return (torqueNm / nmPerN + springN) / fullN;
}
