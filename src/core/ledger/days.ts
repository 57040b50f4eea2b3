/** What each local day brought: seconds practised, and what got mixed up how often. */
import type { Attempt } from '../memory/attempt.ts';
import { secondsTaken } from '../memory/pace.ts';
import type { SlipUp } from '../questions/slip-ups.ts';

export interface DayTally {
  /** Results included. */
  readonly seconds: number;
  readonly slipUps: ReadonlyMap<SlipUp, number>;
}

/** By local day; the latest ones. */
export type Days = ReadonlyMap<number, DayTally>;

/** Of so many days it is kept what they brought. */
export const DAYS_KEPT = 60;

export function addToDays(before: Days, attempts: Iterable<Attempt>): Days {
  const days = new Map(before);
  const fresh = new Map<number, { seconds: number; slipUps: Map<SlipUp, number> }>();
  for (const attempt of attempts) {
    let own = fresh.get(attempt.day);
    if (!own) {
      const known = before.get(attempt.day);
      own = { seconds: known?.seconds ?? 0, slipUps: new Map(known?.slipUps) };
      fresh.set(attempt.day, own);
      days.set(attempt.day, own);
    }
    own.seconds += secondsTaken(attempt);
    for (const slipUp of attempt.slipUps) own.slipUps.set(slipUp, (own.slipUps.get(slipUp) ?? 0) + 1);
  }
  if (days.size <= DAYS_KEPT) return days;
  const latest = [...days.keys()].sort((a, b) => b - a).slice(0, DAYS_KEPT);
  return new Map(latest.reverse().map((day) => [day, days.get(day)!]));
}

export const secondsOnDay = (days: Days, day: number): number => days.get(day)?.seconds ?? 0;
