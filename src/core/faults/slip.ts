/**
 * Which elements slip when pressure is low or a plate is missing: those that hold less than the range asks of
 * them at full load. A deck does not say what torque the unit is built for, so full load is reckoned from the
 * elements themselves: the input torque that leaves the weakest of them, in the range that asks most of it, 15 %
 * in hand, sound and at full pressure. Where that is not the unit's own figure, the order in which elements slip may still
 * be right and the pressure at which they do may not; a question must say what it reckons with.
 * Uniform wear throughout (docs/sources.md [CLUTCH-1], [PISTON-1], [FULL-LOAD]).
 */
import { facesOf, forceForN, marginOf, torqueCapacityNm } from '../capacity/clutch.ts';
import { pistonForceN, pressureForKpa, ringAreaMm2 } from '../capacity/piston.ts';
import { parseRational, type Rational, rational, ZERO } from '../rational.ts';
import type { Result } from '../result.ts';
import type { DeckCapacity } from '../unit/capacity.ts';
import type { DeckElement } from '../unit/deck.ts';
import type { Length } from '../unit/record.ts';
import type { Range, Unit } from '../unit/unit.ts';
import { valueIn } from '../units/convert.ts';
import type { Fault } from './fault.ts';

/** Share of the torque at which the weakest element slips. No pack holds just this share with one plate less. */
const FULL_LOAD = rational(100, 115);

/** How an element is worse off than sound. */
export interface Weakness {
  /** Pressure in percent of what it should be. */
  readonly percent?: number | undefined;
  /** Friction plates too few. */
  readonly platesShort?: number | undefined;
}

/** What a fault does to the strength of each element; null for faults that leave it as it is. */
export function weaknessOf(fault: Fault | null): ((element: string) => Weakness) | null {
  if (fault?.kind === 'low-pressure') return () => ({ percent: fault.percent });
  if (fault?.kind === 'friction-short')
    return (element) => (element === fault.element ? { platesShort: 1 } : {});
  return null;
}

/** The value of what a checked deck makes sure of. */
function sure<T>(result: Result<T, unknown>): T {
  if (result.ok) return result.value;
  throw new Error(`a capacity that the deck's checks should have refused: ${JSON.stringify(result.error)}`);
}

/** The capacity of an element in the terms of src/core/capacity. */
function modelOf(
  { piston, spring, lining, frictions, friction, pressure }: DeckCapacity,
  platesShort: number,
) {
  const mm = (length: Length) => sure(valueIn(length, 'mm'));
  return {
    apply: {
      areaMm2: sure(ringAreaMm2(mm(piston.outer), piston.inner ? mm(piston.inner) : ZERO)),
      springN: sure(valueIn(spring, 'N')),
    },
    clutch: {
      model: 'uniform-wear' as const,
      face: { outerMm: mm(lining.outer).div(2n), innerMm: mm(lining.inner).div(2n) },
      faces: facesOf(frictions - platesShort),
      friction: parseRational(friction)!,
    },
    fullKpa: sure(valueIn(pressure, 'kPa')),
  };
}

/** Torque a brake or clutch holds, in N·m; null where its capacity is not recorded. */
export function holdsNm(
  { capacity }: DeckElement,
  { percent = 100, platesShort = 0 }: Weakness = {},
): Rational | null {
  if (!capacity) return null;
  if (capacity.frictions <= platesShort) return ZERO;
  const { apply, clutch, fullKpa } = modelOf(capacity, platesShort);
  return sure(torqueCapacityNm(clutch, sure(pistonForceN(apply, fullKpa.mul(rational(percent, 100))))));
}

/** The pressure at which it just holds a torque, in percent of full. */
function percentFor(capacity: DeckCapacity, torqueNm: Rational): Rational {
  const { apply, clutch, fullKpa } = modelOf(capacity, 0);
  return sure(pressureForKpa(apply, sure(forceForN(clutch, torqueNm))))
    .mul(100n)
    .div(fullKpa);
}

/** What a brake or clutch holds over what is asked of it; null where the torque it carries is not settled. */
export interface Margin {
  readonly element: string;
  readonly margin: Rational | null;
}

const frictionIn = (unit: Unit, applied: readonly string[]): DeckElement[] =>
  unit.deck.train.elements.filter(({ id, kind }) => kind !== 'one-way' && applied.includes(id));

/** Input torque at which the first element of any range slips; null where a capacity that matters is missing. */
function limitNm(unit: Unit): Rational | null {
  let limit: Rational | null = null;
  for (const { applied, torques } of unit.ranges)
    for (const element of frictionIn(unit, applied)) {
      const share = torques.elements.get(element.id);
      if (!share || share.n === 0n) continue;
      const holds = holdsNm(element);
      if (!holds) return null;
      const reached = holds.div(share.abs());
      if (!limit || reached.lt(limit)) limit = reached;
    }
  return limit;
}

const fullLoads = new WeakMap<Unit, { readonly inputNm: Rational | null }>();

/** Input torque that slipping is judged at, in N·m; null where a deck does not record enough capacities. */
export function fullLoadNm(unit: Unit): Rational | null {
  let known = fullLoads.get(unit);
  if (!known) {
    known = { inputNm: limitNm(unit)?.mul(FULL_LOAD) ?? null };
    fullLoads.set(unit, known);
  }
  return known.inputNm;
}

/**
 * The margins of the loaded brakes and clutches of a range at full load, the weakest first, those not settled
 * last; below 1 it slips. `weakness` says what is wrong with each. Null where capacities are missing.
 */
export function marginsIn(
  unit: Unit,
  range: Pick<Range, 'applied' | 'torques'>,
  weakness: (element: string) => Weakness = () => ({}),
): Margin[] | null {
  const inputNm = fullLoadNm(unit);
  if (!inputNm || inputNm.n === 0n) return null;
  const margins = frictionIn(unit, range.applied).flatMap((element): Margin[] => {
    const share = range.torques.elements.get(element.id) ?? null;
    if (share?.n === 0n) return [];
    const holds = holdsNm(element, weakness(element.id));
    const margin = share && holds ? sure(marginOf(holds, share.abs().mul(inputNm))) : null;
    return [{ element: element.id, margin }];
  });
  return margins.sort((a, b) =>
    a.margin && b.margin ? a.margin.compare(b.margin) : a.margin ? -1 : b.margin ? 1 : 0,
  );
}

/** Elements of a range that slip, the weakest first. Null where it cannot be said whether any does. */
export function slippingIn(
  unit: Unit,
  range: Pick<Range, 'applied' | 'torques'>,
  weakness: (element: string) => Weakness,
): string[] | null {
  const margins = marginsIn(unit, range, weakness);
  if (!margins) return null;
  const slipping = margins.filter(({ margin }) => margin?.lt(1n)).map(({ element }) => element);
  const open = margins.some(({ element, margin }) => {
    if (margin !== null) return false;
    const { percent = 100, platesShort = 0 } = weakness(element);
    return percent < 100 || platesShort > 0;
  });
  return slipping.length === 0 && open ? null : slipping;
}

/** Where an element of a range begins to slip as pressure falls everywhere. */
export interface SlipPoint {
  readonly element: string;
  readonly range: string;
  /** Percent of full pressure. */
  readonly percent: Rational;
}

/**
 * Every loaded brake and clutch of every range with the pressure it begins to slip at, the first to slip first.
 * Null where capacities are missing; torques that are not settled are left out.
 */
export function slipPoints(unit: Unit): SlipPoint[] | null {
  const inputNm = fullLoadNm(unit);
  if (!inputNm || inputNm.n === 0n) return null;
  return unit.ranges
    .flatMap(({ id: range, applied, torques }) =>
      frictionIn(unit, applied).flatMap((element): SlipPoint[] => {
        const share = torques.elements.get(element.id);
        if (!share || share.n === 0n) return [];
        return [
          { element: element.id, range, percent: percentFor(element.capacity!, share.abs().mul(inputNm)) },
        ];
      }),
    )
    .sort((a, b) => b.percent.compare(a.percent));
}
