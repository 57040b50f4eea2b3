/**
 * Resistance of a copper winding when it is warm or cold: R = R20 × (1 + 0.00393 × (T - 20)). Ohms and °C,
 * exact. For the winding alone: harness and connector add a constant, and wire that is not annealed copper has
 * another coefficient. Source: docs/sources.md [COPPER-1].
 */
import { type Limits, type Place, placeIn } from '../measure/limits.ts';
import { ONE, parseRational, type Rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';

/** Per kelvin, at 20 °C, annealed copper. */
export const COPPER_AT_20 = parseRational('0.00393')!;

export type WindingError = {
  readonly code:
    | 'resistance-not-positive'
    /** So cold that the straight-line law gives nothing left (below about -234 °C). */
    | 'too-cold';
};

function growth(celsius: Rational): Result<Rational, WindingError> {
  const factor = ONE.add(COPPER_AT_20.mul(celsius.sub(20n)));
  return factor.lte(0n) ? fail({ code: 'too-cold' }) : pass(factor);
}

/** What a winding of `ohmsAt20` measures at this temperature: 5.0 at 100 °C is 6.572. */
export function resistanceAt(ohmsAt20: Rational, celsius: Rational): Result<Rational, WindingError> {
  if (ohmsAt20.lte(0n)) return fail({ code: 'resistance-not-positive' });
  const factor = growth(celsius);
  return factor.ok ? pass(ohmsAt20.mul(factor.value)) : factor;
}

/** What a winding measured warm or cold would measure at 20 °C: 15.0 at 80 °C is 12.138. */
export function resistanceAt20(ohms: Rational, celsius: Rational): Result<Rational, WindingError> {
  if (ohms.lte(0n)) return fail({ code: 'resistance-not-positive' });
  const factor = growth(celsius);
  return factor.ok ? pass(ohms.div(factor.value)) : factor;
}

/** Where a reading lies in a band that is stated at 20 °C, after it is brought back to 20 °C. */
export function placeInBandAt20(
  band: Limits,
  ohms: Rational,
  celsius: Rational,
): Result<Place, WindingError> {
  const at20 = resistanceAt20(ohms, celsius);
  return at20.ok ? pass(placeIn(band, at20.value)) : at20;
}
