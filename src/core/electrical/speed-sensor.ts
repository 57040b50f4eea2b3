/**
 * A speed sensor's frequency, the shaft's speed and the teeth of its wheel: pulses a second = teeth × rpm / 60.
 * A sensor read on both edges of each tooth gives two. Exact. Source: docs/sources.md [SENSOR-1].
 */
import type { Rational } from '../rational.ts';
import { rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';

export interface Wheel {
  readonly teeth: number;
  /** Pulses counted for each tooth; one when left out. */
  readonly edges?: 1 | 2 | undefined;
}

export type SensorError = { readonly code: 'teeth-not-whole' | 'speed-negative' | 'speed-zero' };

function pulsesOf({ teeth, edges = 1 }: Wheel): Result<Rational, SensorError> {
  return Number.isInteger(teeth) && teeth > 0
    ? pass(rational(teeth * edges))
    : fail({ code: 'teeth-not-whole' });
}

/** frequencyHz({ teeth: 45 }, 3210) is 2407.5. */
export function frequencyHz(wheel: Wheel, rpm: Rational): Result<Rational, SensorError> {
  const pulses = pulsesOf(wheel);
  if (!pulses.ok) return pulses;
  return rpm.lt(0n) ? fail({ code: 'speed-negative' }) : pass(pulses.value.mul(rpm).div(60n));
}

/** speedRpm({ teeth: 30 }, 1200) is 2400. */
export function speedRpm(wheel: Wheel, hertz: Rational): Result<Rational, SensorError> {
  const pulses = pulsesOf(wheel);
  if (!pulses.ok) return pulses;
  return hertz.lt(0n) ? fail({ code: 'speed-negative' }) : pass(hertz.mul(60n).div(pulses.value));
}

/** Pulses a turn that make this frequency of this speed: 900 Hz at 1800 rpm is 30. */
export function pulsesPerTurn(hertz: Rational, rpm: Rational): Result<Rational, SensorError> {
  if (hertz.lt(0n) || rpm.lt(0n)) return fail({ code: 'speed-negative' });
  return rpm.n === 0n ? fail({ code: 'speed-zero' }) : pass(hertz.mul(60n).div(rpm));
}

/** By how much every speed is wrong when the controller counts with the wrong wheel: read over true. */
export function misreadBy(assumed: Wheel, real: Wheel): Result<Rational, SensorError> {
  const [counted, there] = [pulsesOf(assumed), pulsesOf(real)];
  if (!counted.ok) return counted;
  return there.ok ? pass(there.value.div(counted.value)) : there;
}
