/** What records of a deck have in common: a name, where a value comes from, and amounts as they were entered. */
import type { Limits } from '../measure/limits.ts';
import type { Rational } from '../rational.ts';
import { valueIn } from '../units/convert.ts';
import type { UnitSymbol } from '../units/units.ts';

/** Where a value comes from and whether it may be asked. An `unsure` value is kept and printed, never asked. */
export interface Provenance {
  /** Id of one of the deck's sources. */
  readonly source?: string | undefined;
  readonly measuredBy?: string | undefined;
  readonly unsure?: true | undefined;
  readonly verified?: { readonly by: string /** YYYY-MM-DD */; readonly on: string } | undefined;
  readonly note?: string | undefined;
}

export interface Named {
  readonly id: string;
  /** What the shop calls it; the id is shown where there is none. */
  readonly name?: string | undefined;
}

/** Units that a deck may enter each kind of amount in. */
export const LENGTH_UNITS = ['mm', 'in'] as const;
export const TORQUE_UNITS = ['N·m', 'lbf·ft', 'lbf·in', 'kgf·m'] as const;
export const PRESSURE_UNITS = ['kPa', 'MPa', 'bar', 'psi', 'kgf/cm²'] as const;
export const FORCE_UNITS = ['N', 'kN', 'lbf', 'kgf'] as const;
export const VOLUME_UNITS = ['L', 'mL', 'US qt', 'imp qt'] as const;
export const MASS_UNITS = ['kg', 'lb'] as const;
export const TEMPERATURE_UNITS = ['°C', '°F'] as const;
export const RESISTANCE_UNITS = ['Ω', 'kΩ'] as const;

/**
 * A `Quantity` (src/core/units) of one kind: the figure as it was written, in the unit it was written in.
 * Convert with `valueIn`; nothing is rounded before that.
 */
export interface Amount<U extends UnitSymbol> {
  /** Decimal text: "1.78". */
  readonly value: string;
  readonly unit: U;
}

export type Length = Amount<(typeof LENGTH_UNITS)[number]>;
export type Torque = Amount<(typeof TORQUE_UNITS)[number]>;
export type GaugePressure = Amount<(typeof PRESSURE_UNITS)[number]>;
export type Force = Amount<(typeof FORCE_UNITS)[number]>;
export type Volume = Amount<(typeof VOLUME_UNITS)[number]>;
export type Mass = Amount<(typeof MASS_UNITS)[number]>;
export type Temperature = Amount<(typeof TEMPERATURE_UNITS)[number]>;
export type Resistance = Amount<(typeof RESISTANCE_UNITS)[number]>;

/** A printed band, both ends in it. */
export interface Band<A> {
  readonly low: A;
  readonly high: A;
}

/** The exact figure in another unit of its kind. Unreadable text or another kind is a mistake of ours and throws. */
export function exactIn(amount: Amount<UnitSymbol>, unit: UnitSymbol): Rational {
  const exact = valueIn(amount, unit);
  if (!exact.ok) throw new Error(`${amount.value} ${amount.unit} in ${unit}: ${exact.error.code}`);
  return exact.value;
}

/** Both ends in one unit. */
export const limitsIn = ({ low, high }: Band<Amount<UnitSymbol>>, unit: UnitSymbol): Limits => ({
  low: exactIn(low, unit),
  high: exactIn(high, unit),
});

export const ENDS = ['front', 'rear'] as const;
/** Ends of the unit. The front is where the engine sits: the converter's end. */
export type End = (typeof ENDS)[number];
