/**
 * How many legal orders a precedence has, exactly. Parts that no relation joins are counted apart and
 * interleaved; within a part the count runs over the sets of steps that can have been done, each counted once.
 * There may be 2^n of those, so a limit stops it. Source: docs/sources.md [ORDER-1].
 */
import { fail, pass, type Result } from '../result.ts';
import { beforeOf, comparable, type Precedence } from './precedence.ts';

/** Sets of done steps that are looked at unless a limit is given. */
export const SETS_LIMIT = 200_000;

/** Steps joined by relations, whatever their direction. */
function parts(precedence: Precedence): string[][] {
  const left = new Set(precedence.ids);
  const found: string[][] = [];
  for (const first of precedence.ids) {
    if (!left.delete(first)) continue;
    const part = [first];
    for (const step of part)
      for (const other of [...left])
        if (comparable(precedence, step, other)) {
          left.delete(other);
          part.push(other);
        }
    found.push(part);
  }
  return found;
}

/** Orders of one part; null when more than `limit` sets of done steps would be needed. */
function countPart(precedence: Precedence, part: readonly string[], limit: number): bigint | null {
  const needs = part.map((id) =>
    [...beforeOf(precedence, id)].reduce((mask, earlier) => mask | (1n << BigInt(part.indexOf(earlier))), 0n),
  );
  let ways = new Map([[0n, 1n]]);
  let sets = 1;
  for (let size = 0; size < part.length; size++) {
    const grown = new Map<bigint, bigint>();
    for (const [done, count] of ways)
      for (const [step, need] of needs.entries()) {
        const bit = 1n << BigInt(step);
        if ((done & bit) === 0n && (done & need) === need)
          grown.set(done | bit, (grown.get(done | bit) ?? 0n) + count);
      }
    sets += grown.size;
    if (sets > limit) return null;
    ways = grown;
  }
  return [...ways.values()][0]!;
}

function binomial(n: number, k: number): bigint {
  let result = 1n;
  for (let i = 1; i <= k; i++) result = (result * BigInt(n - k + i)) / BigInt(i);
  return result;
}

/** The number of legal orders of all steps; refused as `too-wide` when too much is free to move. */
export function countOrders(
  precedence: Precedence,
  limit = SETS_LIMIT,
): Result<bigint, { readonly code: 'too-wide'; readonly limit: number }> {
  let orders = 1n;
  let placed = 0;
  for (const part of parts(precedence)) {
    const own = countPart(precedence, part, limit);
    if (own === null) return fail({ code: 'too-wide', limit });
    placed += part.length;
    orders *= own * binomial(placed, part.length);
  }
  return pass(orders);
}
