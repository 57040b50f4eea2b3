/** How a memory stands, in the four words a screen may use. docs/spec/memory.md M14 to M17. */
import { type FactMemory, HOLDING_DAYS } from './fold.ts';
import { recallOn } from './recall.ts';

export const STANDINGS = ['not-tried', 'setting', 'holding', 'slipped'] as const;
export type Standing = (typeof STANDINGS)[number];

/** Recall below which what once held counts as slipped. */
export const SLIPPED_BELOW = 0.8;

/**
 * not-tried: never asked. holding: right first on two separate days since the last miss, and likely to be
 * recalled on this day. slipped: held before, and since then missed or grown unlikely. setting: all else.
 */
export function standingOf(memory: FactMemory | undefined, day: number): Standing {
  if (!memory) return 'not-tried';
  const likely = recallOn(memory, day) >= SLIPPED_BELOW;
  if (memory.rightDays >= HOLDING_DAYS) return likely ? 'holding' : 'slipped';
  return memory.held && memory.rightDays === 0 ? 'slipped' : 'setting';
}
