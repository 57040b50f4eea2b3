/**
 * Exact conversion between units of one kind. Nothing is rounded on the way; `show` rounds at the end, half
 * away from zero, and says whether it did. A figure printed in two units was rounded in each by itself, so one
 * column must never be judged by converting the other: `printedAlike` only tells whether both can be the same.
 */
import { decimalsOf, makeDecimal, parseRational, type Rational, rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';
import { amountOf, type Quantity, type QuantityError } from './quantity.ts';
import { compatible, UNITS, type UnitSymbol } from './units.ts';

export type ConversionError =
  | { readonly code: 'kinds-differ'; readonly from: UnitSymbol; readonly to: UnitSymbol }
  | { readonly code: 'below-absolute-zero'; readonly unit: UnitSymbol };

/** -273.15 °C by definition of the degree Celsius (docs/sources.md [UNIT-1]). */
const ABSOLUTE_ZERO = parseRational('-273.15')!;

/** convert(12, 'lbf·in', 'lbf·ft') is 1; temperatures shift as well as stretch: convert(-40, '°F', '°C') is -40. */
export function convert(
  value: Rational,
  from: UnitSymbol,
  to: UnitSymbol,
): Result<Rational, ConversionError> {
  if (!compatible(from, to)) return fail({ code: 'kinds-differ', from, to });
  const base = value.sub(UNITS[from].zero).mul(UNITS[from].scale);
  if (UNITS[from].kind === 'temperature' && base.lt(ABSOLUTE_ZERO))
    return fail({ code: 'below-absolute-zero', unit: from });
  return pass(base.div(UNITS[to].scale).add(UNITS[to].zero));
}

/** Converts a step or a tolerance, which only stretches: convertDifference(9, '°F', '°C') is 5. */
export function convertDifference(
  value: Rational,
  from: UnitSymbol,
  to: UnitSymbol,
): Result<Rational, ConversionError> {
  if (!compatible(from, to)) return fail({ code: 'kinds-differ', from, to });
  return pass(value.mul(UNITS[from].scale).div(UNITS[to].scale));
}

/** The entered quantity's exact value in another unit. */
export function valueIn(
  quantity: Quantity,
  to: UnitSymbol,
): Result<Rational, ConversionError | QuantityError> {
  const amount = amountOf(quantity);
  return amount.ok ? convert(amount.value, quantity.unit, to) : amount;
}

export interface Shown extends Quantity {
  /** Whether the shown figure is not the exact one. */
  readonly rounded: boolean;
}

/** In another unit, with this many places: show({ '0.15', 'mm' }, 'in', 3) is 0.006 in, rounded. */
export function show(
  quantity: Quantity,
  to: UnitSymbol,
  decimals: number,
): Result<Shown, ConversionError | QuantityError> {
  const exact = valueIn(quantity, to);
  if (!exact.ok) return exact;
  const value = makeDecimal(exact.value, decimals);
  return pass({ value, unit: to, rounded: !parseRational(value)!.equals(exact.value) });
}

/** One step of the last place written: 0.01 for "0.15". Fractions have none, and count as exact. */
function stepOf({ value }: Quantity): Rational {
  return value.includes('/') ? rational(0) : rational(1n, 10n ** BigInt(decimalsOf(value)));
}

/**
 * The fewest decimal places in the other unit whose step is no coarser than the written one: 0.15 mm needs 4 in
 * inches. Fractions count as whole.
 */
export function decimalsFor(quantity: Quantity, to: UnitSymbol): Result<number, ConversionError> {
  const written = rational(1n, 10n ** BigInt(decimalsOf(quantity.value)));
  const step = convertDifference(written, quantity.unit, to);
  if (!step.ok) return step;
  let decimals = 0;
  while (rational(1n, 10n ** BigInt(decimals)).gt(step.value)) decimals++;
  return pass(decimals);
}

/**
 * Whether two printed figures can be one value, each rounded to its last place: 392 kPa and 57 psi can,
 * 0.006 in and 0.21 mm cannot. True does not make either a conversion of the other.
 */
export function printedAlike(
  one: Quantity,
  other: Quantity,
): Result<boolean, ConversionError | QuantityError> {
  const [a, b] = [amountOf(one), valueIn(other, one.unit)];
  if (!a.ok) return a;
  if (!b.ok) return b;
  const step = convertDifference(stepOf(other), other.unit, one.unit);
  if (!step.ok) return step;
  return pass(a.value.sub(b.value).abs().mul(2n).lte(stepOf(one).add(step.value)));
}
