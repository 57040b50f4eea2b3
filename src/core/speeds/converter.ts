/**
 * The torque converter: pump turns with the engine, turbine with the transmission's input. They are one speed
 * only with the converter clutch locked. Source: docs/sources.md [CONVERTER-1].
 */
import { squareRoot } from '../inexact.ts';
import type { Rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';

export interface ConverterSpeeds {
  readonly pumpRpm: Rational;
  readonly turbineRpm: Rational;
}

export type ConverterError = {
  readonly code: 'pump-still' | 'speed-negative' | 'torque-ratio-below-one' | 'torque-not-positive';
};

export interface ConverterState {
  /** Turbine / pump: 0 at stall; above 1 the wheels drive the engine. */
  readonly speedRatio: Rational;
  readonly slipRpm: Rational;
  /** Slip as a share of the pump's speed. */
  readonly slip: Rational;
}

/** 2000 and 1960 rpm: speed ratio 0.98, slip 40 rpm, 0.02 of the pump's speed. */
export function converterState({
  pumpRpm,
  turbineRpm,
}: ConverterSpeeds): Result<ConverterState, ConverterError> {
  if (pumpRpm.lt(0n) || turbineRpm.lt(0n)) return fail({ code: 'speed-negative' });
  if (pumpRpm.n === 0n) return fail({ code: 'pump-still' });
  const slipRpm = pumpRpm.sub(turbineRpm);
  return pass({ speedRatio: turbineRpm.div(pumpRpm), slipRpm, slip: slipRpm.div(pumpRpm) });
}

/** Power out over power in: speed ratio × torque ratio, which is 1 from coupling on. */
export function converterEfficiency(
  speeds: ConverterSpeeds,
  torqueRatio: Rational,
): Result<Rational, ConverterError> {
  if (torqueRatio.lt(1n)) return fail({ code: 'torque-ratio-below-one' });
  const state = converterState(speeds);
  return state.ok ? pass(state.value.speedRatio.mul(torqueRatio)) : state;
}

/** Capacity factor K = pump speed / √torque, in rpm/√(N·m); the root to 12 digits. */
export function capacityFactor(pumpRpm: Rational, torqueNm: Rational): Result<Rational, ConverterError> {
  if (pumpRpm.lt(0n)) return fail({ code: 'speed-negative' });
  return torqueNm.lte(0n) ? fail({ code: 'torque-not-positive' }) : pass(pumpRpm.div(squareRoot(torqueNm)));
}
