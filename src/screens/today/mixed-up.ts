/** Slip-ups of the last weeks, most frequent first: what a person mixes up, told by name. */
import type { Days } from '../../core/ledger/days.ts';
import type { SlipUp } from '../../core/questions/slip-ups.ts';

const DAYS_BACK = 14;
const SHOWN = 3;

export interface MixedUp {
  readonly slipUp: SlipUp;
  readonly times: number;
}

export function mixedUp(days: Days, today: number): MixedUp[] {
  const times = new Map<SlipUp, number>();
  for (const [day, { slipUps }] of days)
    if (day > today - DAYS_BACK)
      for (const [slipUp, count] of slipUps) times.set(slipUp, (times.get(slipUp) ?? 0) + count);
  return [...times]
    .map(([slipUp, count]) => ({ slipUp, times: count }))
    .sort((a, b) => b.times - a.times || (a.slipUp < b.slipUp ? -1 : 1))
    .slice(0, SHOWN);
}
