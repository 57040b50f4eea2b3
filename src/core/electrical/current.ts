/**
 * Current, power, duty. Volts, ohms, amperes, watts; exact. A mean current under duty holds where the freewheel
 * path keeps the current flowing; ripple, driver drop and inductance are left out, which a question must say.
 * Source: docs/sources.md [CURRENT-1].
 */
import { ONE, type Rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';

export type CurrentError = {
  readonly code:
    | 'resistance-not-positive'
    | 'voltage-negative'
    | 'duty-out-of-range'
    | 'frequency-not-positive'
    | 'time-negative'
    | 'no-period'
    | 'no-resistors';
};

interface Load {
  readonly volts: Rational;
  readonly ohms: Rational;
}

/** currentOf({ volts: 12, ohms: 15 }) is 0.8 A. */
export function currentOf({ volts, ohms }: Load): Result<Rational, CurrentError> {
  if (volts.lt(0n)) return fail({ code: 'voltage-negative' });
  return ohms.lte(0n) ? fail({ code: 'resistance-not-positive' }) : pass(volts.div(ohms));
}

/** powerOf({ volts: 12, ohms: 15 }) is 9.6 W. */
export function powerOf(load: Load): Result<Rational, CurrentError> {
  const current = currentOf(load);
  return current.ok ? pass(current.value.mul(load.volts)) : current;
}

/** Duty is the share of the time that it is on, 0 to 1: meanCurrentOf({ 13.8 V, 5 Ω }, 2/5) is 1.104 A. */
export function meanCurrentOf(load: Load, duty: Rational): Result<Rational, CurrentError> {
  if (duty.lt(0n) || duty.gt(1n)) return fail({ code: 'duty-out-of-range' });
  const current = currentOf(load);
  return current.ok ? pass(current.value.mul(duty)) : current;
}

/** On over on and off together. */
export function dutyOf(on: Rational, off: Rational): Result<Rational, CurrentError> {
  if (on.lt(0n) || off.lt(0n)) return fail({ code: 'time-negative' });
  const period = on.add(off);
  return period.n === 0n ? fail({ code: 'no-period' }) : pass(on.div(period));
}

/** How long a pulse is on and off, in ms: 50 Hz at 2/5 is 8 and 12. */
export function pulseMs(
  hertz: Rational,
  duty: Rational,
): Result<{ readonly on: Rational; readonly off: Rational }, CurrentError> {
  if (hertz.lte(0n)) return fail({ code: 'frequency-not-positive' });
  if (duty.lt(0n) || duty.gt(1n)) return fail({ code: 'duty-out-of-range' });
  const period = hertz.inverse().mul(1000n);
  return pass({ on: period.mul(duty), off: period.mul(ONE.sub(duty)) });
}

function combine(
  resistors: readonly Rational[],
  total: (resistors: readonly Rational[]) => Rational,
): Result<Rational, CurrentError> {
  if (resistors.length === 0) return fail({ code: 'no-resistors' });
  return resistors.some((ohms) => ohms.lte(0n))
    ? fail({ code: 'resistance-not-positive' })
    : pass(total(resistors));
}

/** inSeries([5, 12]) is 17. */
export const inSeries = (resistors: readonly Rational[]): Result<Rational, CurrentError> =>
  combine(resistors, ([first, ...rest]) => rest.reduce((sum, ohms) => sum.add(ohms), first!));

/** inParallel([12, 12]) is 6. */
export const inParallel = (resistors: readonly Rational[]): Result<Rational, CurrentError> =>
  combine(resistors, ([first, ...rest]) =>
    rest.reduce((sum, ohms) => sum.add(ohms.inverse()), first!.inverse()).inverse(),
  );
