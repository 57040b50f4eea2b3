/** Questions answered with a number: how near is near enough, and wrong numbers far enough off to tell apart. */
import { makeDecimal, parseRational, type Rational, rational } from '../../rational.ts';
import type { Answer, FactId, Lure } from '../question.ts';
import type { SlipUp } from '../slip-ups.ts';

export const numberAnswer = (value: Rational): Answer => ({ form: 'number', value: value.toFraction() });

/** Lures of a number: those within twice the tolerance of the answer could not be told from it, and are dropped. */
export function numberLures(
  answer: Rational,
  tolerance: string,
  fact: FactId,
  wrong: readonly { readonly slipUp: SlipUp; readonly value: Rational }[],
): Lure[] {
  const apart = parseRational(tolerance)!.mul(2n);
  return wrong
    .filter(({ value }) => value.sub(answer).abs().gt(apart))
    .map(({ slipUp, value }) => ({ answer: numberAnswer(value), slipUp, fact }));
}

/** A share of a value as a tolerance, up to a whole step of the last place: a rounded answer is always right. */
export function shareOf(value: Rational, share: Rational, decimals: number): string {
  const last = rational(1n, 10n ** BigInt(decimals));
  return makeDecimal(value.abs().mul(share).div(last).ceil().mul(last), decimals);
}

/** The number a person gave, for checking by the second route. */
export const floatOf = (answer: Answer): number | null =>
  answer.form === 'number' ? (parseRational(answer.value)?.valueOf() ?? null) : null;

/**
 * Whether the number a person gave is the one that the second route finds, a float: within the tolerance, and the
 * slack beyond it for what floats lose.
 */
export function isNear(answer: Answer, really: number, tolerance: string, slack: number): boolean {
  const said = floatOf(answer);
  return said !== null && Math.abs(said - really) <= Number(tolerance) + slack;
}
