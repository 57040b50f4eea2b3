/** The shapes in which names are kept, checked whenever one is read. */
import { z } from '../zod.ts';
import { isLearnerDatabase } from './databases.ts';
import { IDLE_CHOICES, type IdleMinutes } from './idle.ts';
import { type Lock, lockValue } from './lock.ts';

export interface StoredLearner {
  readonly id: string;
  readonly name: string;
  /** Where his answers are. */
  readonly database: string;
  /** Milliseconds since 1970. */
  readonly addedAt: number;
  readonly lock: Lock | null;
  /** When somebody else took his PIN off, as long as he was not told; else null. */
  readonly pinOffAt: number | null;
  /** He is being taken off: his database goes first, then this row. */
  readonly leaving: boolean;
}

export const learnerRow: z.ZodType<StoredLearner> = z.strictObject({
  id: z.string().min(1),
  name: z.string().min(1),
  database: z.string().refine(isLearnerDatabase),
  addedAt: z.int(),
  lock: lockValue.nullable(),
  pinOffAt: z.int().nullable(),
  leaving: z.boolean(),
});

export const idleValue: z.ZodType<IdleMinutes> = z.union(IDLE_CHOICES.map((choice) => z.literal(choice)));
