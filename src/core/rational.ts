/**
 * Exact fractions. One door to fraction.js, so that no float can slip in: whole numbers, bigints and decimal
 * or fraction text become a `Rational`, and a `Rational` reckons only with its like and with bigints (the
 * library itself would take 0.1 and guess a fraction).
 */
import Fraction from 'fraction.js';

export type Exact = Rational | bigint;

/** s × n / d in lowest terms: n is not negative, d is positive, s is 1n or -1n (1n for zero). */
export interface Rational {
  readonly s: bigint;
  readonly n: bigint;
  readonly d: bigint;
  add(other: Exact): Rational;
  sub(other: Exact): Rational;
  mul(other: Exact): Rational;
  /** Dividing by zero throws, as does the inverse of zero. */
  div(other: Exact): Rational;
  inverse(): Rational;
  neg(): Rational;
  abs(): Rational;
  floor(): Rational;
  ceil(): Rational;
  /** -1, 0 or 1; `value.compare(0n)` is the sign. */
  compare(other: Exact): number;
  equals(other: Exact): boolean;
  lt(other: Exact): boolean;
  lte(other: Exact): boolean;
  gt(other: Exact): boolean;
  gte(other: Exact): boolean;
  /** The nearest float: for drawing and statistics, never for judging. */
  valueOf(): number;
  toFraction(): string;
}

export const ZERO: Rational = new Fraction(0n);
export const ONE: Rational = new Fraction(1n);

/** numerator / denominator, both whole. A zero denominator throws, and so does a number that is not whole. */
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
