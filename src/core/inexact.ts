/**
 * The few places where shop arithmetic leaves the fractions: pi, cosine, exponential, square root. Each gives a
 * `Rational` of 12 significant digits (pi: 15), so that everything downstream has one kind of number, and so
 * that engines whose last bits differ agree. Such values stand for measurements to a few digits; they are never
 * what an exact answer is judged by.
 */
import { parseRational, type Rational, rational } from './rational.ts';

const DIGITS = 12;

/** Of 15 digits. */
export const PI: Rational = parseRational('3.14159265358979')!;

/** The float to 12 significant digits. It must be finite. */
function rounded(value: number): Rational {
  const [digits, power] = value.toExponential(DIGITS - 1).split('e') as [string, string];
  const scale = rational(10n ** BigInt(Math.abs(Number(power))));
  const mantissa = parseRational(digits)!;
  return Number(power) < 0 ? mantissa.div(scale) : mantissa.mul(scale);
}

const EXACT_COSINES: Readonly<Record<number, readonly [number, number]>> = {
  0: [1, 1],
  60: [1, 2],
  90: [0, 1],
  120: [-1, 2],
  180: [-1, 1],
};

/** Cosine of an angle in degrees; exact at 0, 60, 90, 120 and 180. */
export function cosine(degrees: Rational): Rational {
  const angle = degrees.valueOf();
  const known = EXACT_COSINES[angle];
  return known ? rational(...known) : rounded(Math.cos((angle * Math.PI) / 180));
}

/** e to this power; the power must be below 700. */
export const exponential = (power: Rational): Rational => rounded(Math.exp(power.valueOf()));

/** Square root of a number that is not negative. */
export const squareRoot = (value: Rational): Rational => rounded(Math.sqrt(value.valueOf()));
