/**
 * Which way a resistance goes with heat. A fluid temperature sensor falls (NTC), a copper winding rises. Enough
 * to pair resistances with temperatures, and to find a printed table that cannot be right.
 * Source: docs/sources.md [SENSOR-2].
 */
import type { Limits } from '../measure/limits.ts';
import { limitsOf } from '../measure/limits.ts';
import type { Rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';

export const HEAT_SENSES = ['falls', 'rises'] as const;
/** What the resistance does as it gets hotter. */
export type HeatSense = (typeof HEAT_SENSES)[number];

export interface HeatPair {
  readonly celsius: Rational;
  readonly ohms: Rational;
}

/** The only pairing that keeps to the sense. Equal temperatures or resistances have no one pairing. */
export function pairByHeat(
  temperatures: readonly Rational[],
  resistances: readonly Rational[],
  sense: HeatSense,
): Result<HeatPair[], { readonly code: 'counts-differ' | 'values-equal' }> {
  if (temperatures.length !== resistances.length) return fail({ code: 'counts-differ' });
  const ascending = (values: readonly Rational[]) => values.toSorted((a, b) => a.compare(b));
  const hasEqual = (values: readonly Rational[]) =>
    values.some((value, index) => index > 0 && value.equals(values[index - 1]!));
  const [celsius, ohms] = [ascending(temperatures), ascending(resistances)];
  if (hasEqual(celsius) || hasEqual(ohms)) return fail({ code: 'values-equal' });
  if (sense === 'falls') ohms.reverse();
  return pass(celsius.map((value, index) => ({ celsius: value, ohms: ohms[index]! })));
}

/** A row of a printed table, ends of the band as printed. */
export interface HeatRow {
  readonly celsius: Rational;
  readonly low: Rational;
  readonly high: Rational;
}

export interface HeatTableError {
  readonly code: 'limits-swapped' | 'temperatures-equal' | 'wrong-sense';
  /** Temperature of the row at fault; of two, the hotter. */
  readonly celsius: Rational;
}

/** Bands of a table, coldest first; each must lie wholly on the right side of the one before. */
export function checkHeatTable(
  rows: readonly HeatRow[],
  sense: HeatSense,
): Result<{ readonly celsius: Rational; readonly band: Limits }[], HeatTableError> {
  const bands: { celsius: Rational; band: Limits }[] = [];
  for (const { celsius, low, high } of rows.toSorted((a, b) => a.celsius.compare(b.celsius))) {
    const band = limitsOf(low, high);
    if (!band.ok) return fail({ code: 'limits-swapped', celsius });
    const before = bands.at(-1);
    if (before?.celsius.equals(celsius)) return fail({ code: 'temperatures-equal', celsius });
    const kept = !before || (sense === 'falls' ? high.lt(before.band.low) : low.gt(before.band.high));
    if (!kept) return fail({ code: 'wrong-sense', celsius });
    bands.push({ celsius, band: band.value });
  }
  return pass(bands);
}
