/** A printed band, both ends included: "0.14 to 0.21 mm" lets 0.21 pass. One unit of length throughout. */
import type { Rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';

export interface Limits {
  readonly low: Rational;
  readonly high: Rational;
}

export const PLACES = ['low', 'in', 'high'] as const;
export type Place = (typeof PLACES)[number];

export type LimitsError = {
  readonly code: 'limits-swapped';
  readonly low: Rational;
  readonly high: Rational;
};

/** The only way to make limits: the low end must not be above the high one. */
export function limitsOf(low: Rational, high: Rational): Result<Limits, LimitsError> {
  return low.lte(high) ? pass({ low, high }) : fail({ code: 'limits-swapped', low, high });
}

/** Where a value lies; on a limit counts as in. */
export function placeIn(limits: Limits, value: Rational): Place {
  if (value.lt(limits.low)) return 'low';
  return value.gt(limits.high) ? 'high' : 'in';
}

export const middleOf = ({ low, high }: Limits): Rational => low.add(high).div(2n);
