/**
 * What the families on force and torque say alike: elements whose capacity may be asked, in the units the deck
 * was written in. Reckoning is in mm, N and kPa (src/core/capacity); only the end is converted.
 */
import type { Clutch } from '../../../capacity/clutch.ts';
import type { Piston } from '../../../capacity/piston.ts';
import type { Random } from '../../../random.ts';
import { makeDecimal, type Rational, rational, ZERO } from '../../../rational.ts';
import { clutchOf, type DeckCapacity, pistonOf } from '../../../unit/capacity.ts';
import { exactIn, type Force, type GaugePressure, type Torque } from '../../../unit/record.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { convert } from '../../../units/convert.ts';
import type { UnitSymbol } from '../../../units/units.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { FactId, Lure } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { numberLures } from '../number-parts.ts';
import { perUnit } from '../per-unit.ts';

export interface AskedCapacity {
  readonly element: string;
  readonly capacity: DeckCapacity;
  readonly piston: Piston;
  /** With the friction at the middle of the lining. */
  readonly clutch: Clutch;
  readonly torqueUnit: Extract<Torque['unit'], 'N·m' | 'lbf·ft'>;
  readonly uses: readonly Ref[];
}

/** Elements whose capacity is recorded and nothing of it unverified. */
export const askedCapacities = perUnit((unit: Unit): AskedCapacity[] =>
  unit.deck.train.elements.flatMap(({ id, capacity }): AskedCapacity[] => {
    const uses: Ref[] = [`element:${id}`, `capacity:${id}`];
    if (!capacity || !uses.every((ref) => unit.sure(ref))) return [];
    return [
      {
        element: id,
        capacity,
        piston: pistonOf(capacity),
        clutch: clutchOf(capacity, 'uniform-wear'),
        torqueUnit: capacity.lining.outer.unit === 'in' ? 'lbf·ft' : 'N·m',
        uses,
      },
    ];
  }),
);

/** Gauges are read in such steps. */
const STEPS: Readonly<Record<GaugePressure['unit'], Rational>> = {
  kPa: rational(50),
  MPa: rational(1, 20),
  bar: rational(1, 2),
  psi: rational(5),
  'kgf/cm²': rational(1, 2),
};

/** A pressure from 30 % of the greatest up to it, and what a gauge in the deck's unit shows of it. */
export function drawGauge({ pressure }: DeckCapacity, random: Random) {
  const { unit } = pressure;
  const step = STEPS[unit];
  const most = Number(exactIn(pressure, unit).div(step).floor().toFraction());
  const shown = step.mul(BigInt(random.int(Math.max(1, Math.ceil(most * 0.3)), Math.max(1, most))));
  return {
    kpa: inUnit(shown, unit, 'kPa'),
    inWords: { gauge: pressureText(shown, unit), gaugeUnit: unit },
  };
}

/** The exact value in another unit, from a number. */
export function inUnit(value: Rational, from: UnitSymbol, to: UnitSymbol): Rational {
  const exact = convert(value, from, to);
  if (!exact.ok) throw new Error(`${from} to ${to}: ${exact.error.code}`);
  return exact.value;
}

export const FORCE_DECIMALS: Readonly<Record<Force['unit'], number>> = { N: 0, kN: 2, lbf: 0, kgf: 0 };

export const pressureText = (value: Rational, unit: GaugePressure['unit']): string =>
  makeDecimal(value, unit === 'MPa' ? 2 : unit === 'bar' || unit === 'kgf/cm²' ? 1 : 0);

/** "1500 kPa" of whole figures and "14.5 bar" of others, always as the deck writes its unit. */
export const amountText = ({ value, unit }: { readonly value: string; readonly unit: string }): string =>
  `${value} ${unit}`;

export interface WrongFigure {
  readonly slipUp: SlipUp;
  readonly value: Rational | undefined;
}

/** Lures of a force, torque or pressure: what comes out as nothing, less than that, or not at all is none. */
export const positiveLures = (
  answer: Rational,
  tolerance: string,
  fact: FactId,
  wrong: readonly WrongFigure[],
): Lure[] =>
  numberLures(
    answer,
    tolerance,
    fact,
    wrong.flatMap(({ slipUp, value }) => (value?.gt(0n) ? [{ slipUp, value }] : [])),
  );

/** What is given of piston and plates, as entered. */
export function partsInWords({
  element,
  capacity,
}: AskedCapacity): Readonly<Record<string, string | number | Phrase>> {
  const { piston, spring, lining } = capacity;
  return {
    element: thing('element', element),
    outer: amountText(piston.outer),
    inner: piston.inner ? amountText(piston.inner) : 'none',
    spring: amountText(spring),
    frictions: capacity.frictions,
    friction: capacity.friction,
    liningOuter: amountText(lining.outer),
    liningInner: amountText(lining.inner),
  };
}

/** "π ÷ 4 × (140² − 80²) = 10367 mm²", in the piston's own unit. */
export function areaInWords({ capacity, piston }: AskedCapacity): Phrase {
  const { outer, inner } = capacity.piston;
  const unit = outer.unit;
  const area = inUnit(piston.areaMm2, 'mm²', unit === 'mm' ? 'mm²' : 'in²');
  return say('pressure.area', {
    outer: outer.value,
    inner: inner ? makeDecimal(exactIn(inner, unit), unit === 'mm' ? 1 : 3).replace(/\.?0+$/, '') : 'none',
    area: makeDecimal(area, unit === 'mm' ? 0 : 3),
    unit,
  });
}

/** The same piston with no hole in it. */
export function fullDisc({ capacity }: AskedCapacity): Piston {
  return pistonOf({ ...capacity, piston: { outer: capacity.piston.outer } });
}

/** The same piston without its spring. */
export const noSpring = ({ piston }: AskedCapacity): Piston => ({ ...piston, springN: ZERO });

/** Figures of a capacity as floats in mm, N and kPa, from what the deck says, for a second look. */
export function floatFigures({ piston, spring, lining, frictions, friction }: DeckCapacity) {
  const mm = (length: { readonly value: string; readonly unit: 'mm' | 'in' }) =>
    Number(length.value) * (length.unit === 'in' ? 25.4 : 1);
  const newtons = { N: 1, kN: 1000, lbf: 4.448222, kgf: 9.80665 };
  const [outer, inner] = [mm(piston.outer), piston.inner ? mm(piston.inner) : 0];
  return {
    areaMm2: (Math.PI / 4) * (outer * outer - inner * inner),
    springN: Number(spring.value) * newtons[spring.unit],
    /** N·m for each newton on the plates. */
    perNewton: (2 * frictions * Number(friction) * (mm(lining.outer) + mm(lining.inner))) / 4 / 1000,
  };
}
