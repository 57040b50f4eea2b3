/** Working along a precedence: what may come next, and whether a whole order is legal. */
import { fail, pass, type Result } from '../result.ts';
import { beforeOf, comparable, mustPrecede, type Precedence } from './precedence.ts';

export type OrderError =
  | { readonly code: 'step-unknown' | 'step-twice'; readonly step: string }
  /** Steps that the order leaves out. */
  | { readonly code: 'steps-missing'; readonly steps: readonly string[] }
  /** The first step done before all it needs, and what it lacks. */
  | { readonly code: 'too-early'; readonly step: string; readonly needs: readonly string[] };

/**
 * Whether these steps, done in this order from the start, respect every relation. They need not be all of them;
 * see `checkOrder` for a whole order.
 */
export function checkBeginning(
  precedence: Precedence,
  order: readonly string[],
): Result<ReadonlySet<string>, OrderError> {
  const done = new Set<string>();
  for (const step of order) {
    if (!precedence.before.has(step)) return fail({ code: 'step-unknown', step });
    if (done.has(step)) return fail({ code: 'step-twice', step });
    const needs = [...beforeOf(precedence, step)].filter((earlier) => !done.has(earlier));
    if (needs.length > 0) return fail({ code: 'too-early', step, needs });
    done.add(step);
  }
  return pass(done);
}

/** Whether this is a legal order of all the steps. */
export function checkOrder(
  precedence: Precedence,
  order: readonly string[],
): Result<readonly string[], OrderError> {
  const begun = checkBeginning(precedence, order);
  if (!begun.ok) return begun;
  const steps = precedence.ids.filter((id) => !begun.value.has(id));
  return steps.length > 0 ? fail({ code: 'steps-missing', steps }) : pass(order);
}

/** Steps that may be done now, in the order of the list. `done` in any order. */
export function nextSteps(precedence: Precedence, done: Iterable<string>): string[] {
  const behind = new Set(done);
  return precedence.ids.filter(
    (id) => !behind.has(id) && [...beforeOf(precedence, id)].every((earlier) => behind.has(earlier)),
  );
}

/** The only order of these steps; null when two of them have no fixed order. */
export function chainOf(precedence: Precedence, steps: readonly string[]): string[] | null {
  const unique = [...new Set(steps)];
  const fixed = unique.every((one, index) =>
    unique.slice(index + 1).every((other) => comparable(precedence, one, other)),
  );
  return fixed
    ? unique.sort((a, b) => (mustPrecede(precedence, a, b) ? -1 : mustPrecede(precedence, b, a) ? 1 : 0))
    : null;
}

function* chainsEndingIn(precedence: Precedence, lasts: Iterable<string>, size: number): Generator<string[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (const last of lasts)
    for (const start of chainsEndingIn(precedence, beforeOf(precedence, last), size - 1))
      yield [...start, last];
}

/** Every chain of this many steps, each in its only order. There can be very many: see `countChains`. */
export const chains = (precedence: Precedence, size: number): Generator<string[]> =>
  chainsEndingIn(precedence, precedence.ids, size);

/** How many chains there are of this size: counted, not listed. */
export function countChains(precedence: Precedence, size: number): bigint {
  if (size === 0) return 1n;
  let ending = new Map(precedence.ids.map((id) => [id, 1n]));
  for (let length = 2; length <= size; length++)
    ending = new Map(
      precedence.ids.map((id) => [
        id,
        [...beforeOf(precedence, id)].reduce((sum, earlier) => sum + ending.get(earlier)!, 0n),
      ]),
    );
  return [...ending.values()].reduce((sum, count) => sum + count, 0n);
}
