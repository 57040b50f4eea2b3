/**
 * Ratio and slip from two measured speeds. Ratio = input / output, negative when the output turns backwards;
 * slip = input - output × the ratio commanded. As a share it is of the input or of the input expected, two
 * different figures: say which. Less than no slip is no slip at all but another range, or a wrong count.
 * Source: docs/sources.md [SPEED-1].
 */
import type { Rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';

/** Revolutions a minute. A sensor that cannot tell the sense gives no sign: take the sign of the range. */
export interface Speeds {
  readonly inputRpm: Rational;
  readonly outputRpm: Rational;
}

export type SpeedError = { readonly code: 'output-still' | 'input-still' | 'ratio-zero' };

/** With the output at rest there is no ratio. */
export function ratioOf({ inputRpm, outputRpm }: Speeds): Result<Rational, SpeedError> {
  return outputRpm.n === 0n ? fail({ code: 'output-still' }) : pass(inputRpm.div(outputRpm));
}

export interface Slip {
  /** What the input would turn at with no slip. */
  readonly expectedRpm: Rational;
  readonly slipRpm: Rational;
  /** Shares, not percent. */
  readonly ofInput: Rational;
  readonly ofExpected: Rational;
}

/** Slip against the commanded ratio: 2500 in, 1000 out at 2.34 slips 160, 6.40 % of the input. */
export function slipOf({ inputRpm, outputRpm }: Speeds, commanded: Rational): Result<Slip, SpeedError> {
  if (commanded.n === 0n) return fail({ code: 'ratio-zero' });
  if (outputRpm.n === 0n) return fail({ code: 'output-still' });
  if (inputRpm.n === 0n) return fail({ code: 'input-still' });
  const expectedRpm = outputRpm.mul(commanded);
  const slipRpm = inputRpm.sub(expectedRpm);
  return pass({
    expectedRpm,
    slipRpm,
    ofInput: slipRpm.div(inputRpm),
    ofExpected: slipRpm.div(expectedRpm),
  });
}
