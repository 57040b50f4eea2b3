/** What the torque families say alike: what may be asked of an element in a range, its proof, its lines. */
import { CASE, elementOf, MEMBERS, type Train, willis } from '../../gears/train.ts';
import { makeDecimal, type Rational } from '../../rational.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import { floatSpeeds } from '../second-route.ts';
import { elementNames } from './chart-parts.ts';
import { reckonableRanges } from './gear-parts.ts';
import { perUnit } from './per-unit.ts';

export interface Carried {
  readonly element: string;
  readonly range: Range;
  /** On the first of its shafts, per 1 on the input; never 0. */
  readonly torque: Rational;
}

/** Every element in every range whose torque is settled and not 0. */
export const carriedIn = perUnit((unit: Unit): Carried[] =>
  reckonableRanges(unit).flatMap((range) =>
    range.applied.flatMap((element): Carried[] => {
      const torque = range.torques.elements.get(element);
      return torque && torque.n !== 0n ? [{ element, range, torque }] : [];
    }),
  ),
);

const STALL = ' stall';

/**
 * The same torque without any balance: hold the output still, let the element go, and turn the input once. All
 * the work that goes in comes out at the element, over what its first shaft turns past its second
 * (docs/sources.md [ONE-WAY-STALL]). Null where that way does not settle it.
 */
export function torqueByWork(train: Train, applied: readonly string[], element: string): number | null {
  const stalled: Train = {
    ...train,
    elements: [...train.elements, { id: STALL, kind: 'brake', between: [train.output, CASE] }],
  };
  const speeds = floatSpeeds(stalled, [...applied.filter((id) => id !== element), STALL]);
  if (!speeds) return null;
  const speedOf = (shaft: string) => (shaft === CASE ? 0 : speeds.get(shaft));
  const [first, second] = elementOf(train, element).between.map(speedOf);
  if (typeof first !== 'number' || typeof second !== 'number' || first === second) return null;
  return -1 / (first - second);
}

export const torqueText = (torque: Rational): string => makeDecimal(torque, 1).replace('-', '−');

/** "B1 in range 4, with C1" */
export function carriedInWords({ element, range }: Carried): Phrase {
  const others = range.applied.filter((id) => id !== element);
  return say('torque.carried', {
    element: thing('element', element),
    range: thing('range', range.id),
    count: others.length,
    others: elementNames(others),
  });
}

/** How each gearset that carries torque shares it, and what keeps the element's own shaft in balance. */
export function balanceInWords(unit: Unit, { element, range }: Carried, inputNm: Rational): Phrase[] {
  const { train } = unit.deck;
  const sets = train.gearsets.flatMap((set): Phrase[] => {
    const shares = range.torques.members.get(set.id)!;
    const [sun, ring, carrier] = MEMBERS.map((member) => shares[member]?.mul(inputNm) ?? null);
    if (!sun || !ring || !carrier || sun.n === 0n) return [];
    const parts = willis(set);
    return [
      say('torque.set', {
        gearset: thing('gearset', set.id),
        sunPart: String(parts.sun).replace('-', '−'),
        ringPart: String(parts.ring).replace('-', '−'),
        carrierPart: String(parts.carrier).replace('-', '−'),
        sun: torqueText(sun),
        ring: torqueText(ring),
        carrier: torqueText(carrier),
      }),
    ];
  });
  const [shaft] = elementOf(train, element).between.filter((name) => name !== CASE);
  const sign = elementOf(train, element).between[0] === shaft ? 1n : -1n;
  const own = range.torques.elements.get(element)!.mul(inputNm).mul(sign);
  return [
    ...sets,
    say('torque.shaft', {
      shaft: thing('shaft', shaft!),
      element: thing('element', element),
      torque: torqueText(own),
    }),
    say('torque.case', {
      input: torqueText(inputNm),
      output: torqueText(range.ratio.mul(inputNm)),
      reaction: torqueText(range.torques.reaction.mul(inputNm)),
    }),
  ];
}
