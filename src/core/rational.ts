/**
 * Exact fractions. One door to fraction.js, so that no float can slip in: only whole numbers, bigints and
 * decimal or fraction text become a `Rational`.
 */
import Fraction from 'fraction.js';

export type Rational = Fraction;

export const ZERO: Rational = new Fraction(0n);
export const ONE: Rational = new Fraction(1n);

/** numerator / denominator, both whole. A zero denominator throws. */
export function rational(numerator: bigint | number, denominator: bigint | number = 1n): Rational {
  return new Fraction(BigInt(numerator), BigInt(denominator));
}

/**
 * Reads "3.480", "-1.8", "8/3", "72" exactly. Null for anything else; no exponents, no thousands marks.
 * parseRational('0.659') is 659/1000.
 */
export function parseRational(text: string): Rational | null {
  const match = /^([+-]?)(\d{1,30})(?:\.(\d{1,30})|\/(\d{1,30}))?$/.exec(text.trim());
  if (!match) return null;
  const [, sign, whole, decimals, denominator] = match;
  if (denominator !== undefined && BigInt(denominator) === 0n) return null;
  const scale = denominator !== undefined ? BigInt(denominator) : 10n ** BigInt(decimals?.length ?? 0);
  const size = BigInt(whole! + (decimals ?? ''));
  return new Fraction(sign === '-' ? -size : size, scale);
}

/** "n/d" in lowest terms, or "n" when whole: the inverse of `parseRational`. */
export function makeRational(value: Rational): string {
  return value.toFraction();
}

/** Rounded half away from zero, always with `decimals` places: makeDecimal(2/3, 3) is "0.667". */
export function makeDecimal(value: Rational, decimals: number): string {
  const scale = 10n ** BigInt(decimals);
  const units = (2n * value.n * scale + value.d) / (2n * value.d);
  const digits = units.toString().padStart(decimals + 1, '0');
  const sign = value.s < 0n && units > 0n ? '-' : '';
  return decimals === 0
    ? sign + digits
    : `${sign}${digits.slice(0, digits.length - decimals)}.${digits.slice(digits.length - decimals)}`;
}

/** How many places a decimal text states: "3.480" states 3. */
export function decimalsOf(text: string): number {
  return text.split('.')[1]?.length ?? 0;
}
