/** Several readings of one thing: their mean and how far they spread. Any one unit. */
import type { Rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';
import { type Limits, placeIn } from './limits.ts';

export interface Summary {
  readonly mean: Rational;
  readonly lowest: Rational;
  readonly highest: Rational;
  /** Highest less lowest. */
  readonly spread: Rational;
}

export function summarise(readings: readonly Rational[]): Result<Summary, { readonly code: 'no-readings' }> {
  const [first, ...rest] = readings;
  if (!first) return fail({ code: 'no-readings' });
  const mean = rest.reduce((sum, reading) => sum.add(reading), first).div(BigInt(readings.length));
  const lowest = rest.reduce((least, reading) => (reading.lt(least) ? reading : least), first);
  const highest = rest.reduce((most, reading) => (reading.gt(most) ? reading : most), first);
  return pass({ mean, lowest, highest, spread: highest.sub(lowest) });
}

export const ADVICE = ['accept', 'reseat', 'out-of-limits'] as const;
export type Advice = (typeof ADVICE)[number];

/**
 * What to make of them: readings that spread further than allowed say nothing yet (reseat the parts and read
 * again); else the mean is judged by the limits, where there are any.
 */
export function advise(summary: Summary, allowedSpread: Rational, limits?: Limits): Advice {
  if (summary.spread.gt(allowedSpread)) return 'reseat';
  return !limits || placeIn(limits, summary.mean) === 'in' ? 'accept' : 'out-of-limits';
}
