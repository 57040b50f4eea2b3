/** The shape in which self-checks are kept: one row of the settings, checked whenever it is read. */
import { AREAS } from '../core/self-check/areas.ts';
import type { CheckBook } from '../core/self-check/book.ts';
import { draftValue } from './rows.ts';
import { z } from './zod.ts';

const area = z.enum(AREAS);
const count = z.int().nonnegative();

const blueprint = z.strictObject({
  questions: z.int().positive(),
  weights: z.record(area, z.number().nonnegative()),
  minutes: z.number().positive().nullable(),
  threshold: z.number(),
  unseenShare: z.number(),
  pauses: z.boolean(),
});

const check = z.strictObject({
  id: z.string().min(1),
  deck: z.string(),
  revision: z.int(),
  blueprint,
  seed: z.int(),
  items: z.array(
    z.strictObject({
      area,
      unseen: z.int().nullable(),
      family: z.string(),
      fact: z.string(),
      seed: z.int(),
    }),
  ),
  startedAt: z.int(),
  index: count,
  drafts: z.record(z.string(), draftValue),
  marked: z.array(count),
  sure: z.record(z.string(), z.boolean()),
  spentMs: z.number().nonnegative(),
  shownAt: z.int().nullable(),
  finishedAt: z.int().nullable(),
});

const past = z.strictObject({
  id: z.string().min(1),
  deck: z.string(),
  finishedAt: z.int(),
  areas: z.array(z.strictObject({ area, right: count, asked: count })),
  facts: z.array(z.string()),
});

export const checkBookValue: z.ZodType<CheckBook> = z.strictObject({
  current: check.nullable(),
  past: z.array(past),
});
