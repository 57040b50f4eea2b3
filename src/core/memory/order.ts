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

/** Where a device's answers ended: its counter, and the trusted time and day reached. */
export interface RunEnd {
  readonly sequence: number;
  readonly at: number;
  readonly day: number;
}

type Place = Pick<Attempt, 'device' | 'sequence' | 'id'> & { readonly at: number };

/** How far a log has been put in order: what comes after it can be placed without it. */
export interface OrderEnd {
  readonly devices: ReadonlyMap<string, RunEnd>;
  /** The last one in the order; null when there is none. */
  readonly last: Place | null;
}

export const BEFORE_ALL: OrderEnd = { devices: new Map(), last: null };

const byPlace = (a: Place, b: Place) =>
  a.at - b.at || byText(a.device, b.device) || a.sequence - b.sequence || byText(a.id, b.id);

const placeOf = ({ attempt: { device, sequence, id }, at }: Placed): Place => ({ at, device, sequence, id });

/** `before` is where this device's earlier answers ended. Every time here is that time or later. */
function placeOnDevice(attempts: readonly Attempt[], before: RunEnd | undefined): Placed[] {
  const counted = [...attempts].sort((a, b) => a.sequence - b.sequence || a.at - b.at || byText(a.id, b.id));
  const trusted = longestRise(counted.map((attempt) => attempt.at));
  let last: Pick<Attempt, 'at' | 'day'> = before ?? counted.find((_, index) => trusted.has(index))!;
  return counted.map((attempt, index) => {
    if (trusted.has(index)) last = attempt;
    return { attempt, at: last.at, day: last.day };
  });
}

/**
 * Places attempts behind a log that was placed before. Null when that is not all there is to it: one of them is
 * earlier than something placed already, or its device's counter or clock went back, so the whole has to be placed
 * anew. (When every time of a device is at or after the end of its longest run, that run goes on in the new ones and
 * nothing before it changes.)
 */
export function placeAfter(
  attempts: Iterable<Attempt>,
  end: OrderEnd,
): { readonly placed: readonly Placed[]; readonly end: OrderEnd } | null {
  const once = new Map<string, Attempt>();
  for (const attempt of attempts) if (!once.has(attempt.id)) once.set(attempt.id, attempt);
  const devices = new Map<string, Attempt[]>();
  for (const attempt of once.values()) {
    const before = end.devices.get(attempt.device);
    if (before && (attempt.sequence <= before.sequence || attempt.at < before.at)) return null;
    const own = devices.get(attempt.device);
    if (own) own.push(attempt);
    else devices.set(attempt.device, [attempt]);
  }
  const ends = new Map(end.devices);
  const placed = [...devices].flatMap(([device, own]) => {
    const run = placeOnDevice(own, ends.get(device));
    const { attempt, at, day } = run.at(-1)!;
    ends.set(device, { sequence: attempt.sequence, at, day });
    return run;
  });
  const keyed = placed
    .map((each) => ({ each, place: placeOf(each) }))
    .sort((a, b) => byPlace(a.place, b.place));
  const [first] = keyed;
  if (first && end.last && byPlace(first.place, end.last) <= 0) return null;
  return {
    placed: keyed.map(({ each }) => each),
    end: { devices: ends, last: keyed.at(-1)?.place ?? end.last },
  };
}

/** The attempts in the order they count; input order and repeats make no difference. */
export const inOrder = (attempts: Iterable<Attempt>): readonly Placed[] =>
  placeAfter(attempts, BEFORE_ALL)!.placed;
