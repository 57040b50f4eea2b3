/** What a test wants from a Result: the value where it must be there, or the code of the refusal. */
import { parseRational, type Rational } from '../src/core/rational.ts';
import type { Result } from '../src/core/result.ts';

/** The value; a refusal fails the test with its code. */
export function given<T>(result: Result<T, { readonly code: string }>): T {
  if (!result.ok) throw new Error(`refused: ${result.error.code}`);
  return result.value;
}

/** The code of the refusal, null when there is none. */
export const refusal = <C extends string>(result: Result<unknown, { readonly code: C }>): C | null =>
  result.ok ? null : result.error.code;

/** Exact number from text; unreadable text fails the test. */
export function exact(text: string): Rational {
  const value = parseRational(text);
  if (!value) throw new Error(`not a number: ${text}`);
  return value;
}
