/** Slip-ups of the last weeks, most frequent first: what a person mixes up, told by name. */
import type { Attempt } from '../../core/memory/attempt.ts';
import type { SlipUp } from '../../core/questions/slip-ups.ts';

const DAYS_BACK = 14;
const SHOWN = 3;

export interface MixedUp {
  readonly slipUp: SlipUp;
  readonly times: number;
}

export function mixedUp(attempts: readonly Attempt[], day: number): MixedUp[] {
  const times = new Map<SlipUp, number>();
  for (const attempt of attempts)
    if (attempt.day > day - DAYS_BACK)
      for (const slipUp of attempt.slipUps) times.set(slipUp, (times.get(slipUp) ?? 0) + 1);
  return [...times]
    .map(([slipUp, count]) => ({ slipUp, times: count }))
    .sort((a, b) => b.times - a.times || (a.slipUp < b.slipUp ? -1 : 1))
    .slice(0, SHOWN);
}
