/**
 * A band round a drum: the tension grows along the wrap by e^(friction × angle). Where the drum drags the band
 * away from the servo towards the anchor it winds itself on; turned the other way it holds far less for the same
 * servo force. Degrees, N, mm, N·m; e to 12 digits (inexact.ts). Source: docs/sources.md [BAND-1].
 */
import { exponential, PI } from '../inexact.ts';
import { ONE, type Rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';
import { type CapacityError, negative, notPositive } from './figures.ts';

/** Tight over slack tension: friction 0.12 over 300° gives 1.874. */
export function tensionRatio(friction: Rational, wrapDegrees: Rational): Result<Rational, CapacityError> {
  const wrong = notPositive({ friction, wrap: wrapDegrees });
  return wrong ? fail(wrong) : pass(exponential(friction.mul(wrapDegrees).mul(PI).div(180n)));
}

/** Which way the drum tries to turn. */
export const DRUM_SENSES = ['towards-anchor', 'towards-servo'] as const;
export type DrumSense = (typeof DRUM_SENSES)[number];

export interface Band {
  readonly friction: Rational;
  readonly wrapDegrees: Rational;
  readonly drumRadiusMm: Rational;
  /** Towards the anchor the band winds itself on. */
  readonly sense: DrumSense;
}

/** Torque the band holds with this force of the servo on its end. */
export function bandTorqueNm(band: Band, servoN: Rational): Result<Rational, CapacityError> {
  const wrong = notPositive({ radius: band.drumRadiusMm }) ?? negative({ force: servoN });
  if (wrong) return fail(wrong);
  const ratio = tensionRatio(band.friction, band.wrapDegrees);
  if (!ratio.ok) return ratio;
  const gain = band.sense === 'towards-anchor' ? ratio.value.sub(1n) : ONE.sub(ratio.value.inverse());
  return pass(servoN.mul(gain).mul(band.drumRadiusMm).div(1000n));
}
