/**
 * A PIN with the wrong tries at it. Three are free; then each wrong one doubles the wait, up to an hour. A try is
 * counted before it is looked at, so tries from several tabs, or a page closed in the middle, win nothing.
 * Who turns the device's clock forward gets round the wait; who turns it back waits once more, not for ever.
 */
import { z } from '../zod.ts';
import { type PinHash, pinHashValue } from './pin.ts';

export interface Lock {
  readonly pin: PinHash;
  /** Wrong tries since the last right one. */
  readonly wrong: number;
  /** When the last of them was, in milliseconds since 1970. */
  readonly triedAt: number;
}

export const lockValue: z.ZodType<Lock> = z.strictObject({
  pin: pinHashValue,
  wrong: z.int().nonnegative(),
  triedAt: z.int(),
});

export const newLock = (pin: PinHash): Lock => ({ pin, wrong: 0, triedAt: 0 });

const FREE_TRIES = 3;
const FIRST_WAIT_MS = 15_000;
const LONGEST_WAIT_MS = 3_600_000;

/** How long one waits after so many wrong tries, in milliseconds. */
export function waitAfter(wrong: number): number {
  if (wrong < FREE_TRIES) return 0;
  return Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** (wrong - FREE_TRIES));
}

/** What is left of the wait; never more than the whole of it, however the clock was moved. */
export function waitLeft({ wrong, triedAt }: Lock, at: number): number {
  const wait = waitAfter(wrong);
  return Math.min(wait, Math.max(0, triedAt + wait - at));
}

/** The lock with one more try counted, as long as none is waited for; a clock moved back starts the wait anew. */
export function countTry(lock: Lock, at: number): { readonly lock: Lock; readonly waitMs: number } {
  const waitMs = waitLeft(lock, at);
  if (waitMs === 0) return { lock: { ...lock, wrong: lock.wrong + 1, triedAt: at }, waitMs };
  return { lock: at < lock.triedAt ? { ...lock, triedAt: at } : lock, waitMs };
}
