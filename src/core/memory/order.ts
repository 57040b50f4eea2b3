/**
 * Puts a log in the order it happened, the same for every copy of it: each attempt once, by time, device and
 * counter. A device's own counter is trusted over its clock: of its times the longest run that never goes
 * back is kept, and an answer outside that run (a clock set wrong for a while) takes the time and day of the
 * one before it. docs/spec/memory.md M10, M11.
 */
import type { Attempt } from './attempt.ts';

/** An attempt with the time and day it counts for. */
export interface Placed {
  readonly attempt: Attempt;
  readonly at: number;
  readonly day: number;
}

const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** Which entries belong to the longest run that never goes back; of equally long ones that with the earlier times. */
function longestRise(values: readonly number[]): Set<number> {
  const before: number[] = [];
  /** tails[n]: the entry that ends the lowest run of n + 1. */
  const tails: number[] = [];
  for (const [index, value] of values.entries()) {
    let [low, high] = [0, tails.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (values[tails[middle]!]! <= value) low = middle + 1;
      else high = middle;
    }
    before[index] = tails[low - 1] ?? -1;
    tails[low] = index;
  }
  const run = new Set<number>();
  for (let index = tails.at(-1) ?? -1; index >= 0; index = before[index]!) run.add(index);
  return run;
}

function placeOnDevice(attempts: readonly Attempt[]): Placed[] {
  const counted = [...attempts].sort((a, b) => a.sequence - b.sequence || a.at - b.at || byText(a.id, b.id));
  const trusted = longestRise(counted.map((attempt) => attempt.at));
  let last = counted.find((_, index) => trusted.has(index))!;
  return counted.map((attempt, index) => {
    if (trusted.has(index)) last = attempt;
    return { attempt, at: last.at, day: last.day };
  });
}

/** The attempts in the order they count; input order and repeats make no difference. */
export function inOrder(attempts: Iterable<Attempt>): Placed[] {
  const once = new Map<string, Attempt>();
  for (const attempt of attempts) if (!once.has(attempt.id)) once.set(attempt.id, attempt);
  const devices = new Map<string, Attempt[]>();
  for (const attempt of once.values()) {
    const own = devices.get(attempt.device);
    if (own) own.push(attempt);
    else devices.set(attempt.device, [attempt]);
  }
  return [...devices.values()]
    .flatMap(placeOnDevice)
    .sort(
      (a, b) =>
        a.at - b.at ||
        byText(a.attempt.device, b.attempt.device) ||
        a.attempt.sequence - b.attempt.sequence ||
        byText(a.attempt.id, b.attempt.id),
    );
}
