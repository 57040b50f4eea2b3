/** Fields that messages share, each with its limits: what comes from outside is short, plain and finite. */

import { isZone, minutesOfTime } from '../core/assign/due.ts';
import type { Attempt } from '../core/memory/attempt.ts';
import { dayOfDate } from '../core/memory/day.ts';
import type { Answer } from '../core/questions/question.ts';
import { SLIP_UPS, type SlipUp } from '../core/questions/slip-ups.ts';
import { z } from './zod.ts';

export const id = z.string().min(1).max(80);
export const short = z.string().max(200);
export const words = z.string().max(2000);
export const fact = z.string().min(1).max(200);
export const ref = z.string().regex(/^[a-z]+:\S{1,150}$/);
export const revision = z.int().min(1).max(1_000_000);
export const count = z.int().min(0).max(10_000_000);
/** Milliseconds since 1970, up to the year 9999. */
export const moment = z.int().min(0).max(253_402_300_799_999);
export const day = z.int().min(0).max(2_932_896);
export const zone = z.string().max(60).refine(isZone);
export const date = z.string().refine((text) => dayOfDate(text) !== null);
export const time = z.string().refine((text) => minutesOfTime(text) !== null);
export const share = z.number().min(0).max(1);

/**
 * A list whose reading ends at its first wrong entry, which is told. A library that tells them all can be given a
 * million, by a message that was a few thousand letters before it was unpacked.
 */
export const list = <T extends z.ZodType>(entry: T, most: number, least = 0): z.ZodType<z.output<T>[]> =>
  z.unknown().transform((value, context): z.output<T>[] => {
    const wrong = (path: readonly PropertyKey[]) => {
      context.addIssue({ code: 'custom', path: [...path] });
      return z.NEVER;
    };
    if (!Array.isArray(value) || value.length < least || value.length > most) return wrong([]);
    const entries: z.output<T>[] = [];
    for (const [index, one] of value.entries()) {
      const read = entry.safeParse(one);
      if (!read.success) return wrong([index, ...(read.error.issues[0]?.path ?? [])]);
      entries.push(read.data);
    }
    return entries;
  });

const MAX_FIELDS = 400;
const optionId = z.string().max(120);
const ids = list(optionId, 60);
const record = z.custom<Record<string, string>>((value) => {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
  const fields = Object.entries(value);
  return (
    fields.length <= MAX_FIELDS &&
    fields.every((field) => field.every((text) => optionId.safeParse(text).success))
  );
});

const answer: z.ZodType<Answer> = z.discriminatedUnion('form', [
  z.strictObject({ form: z.literal('set'), picks: ids }),
  z.strictObject({ form: z.literal('one'), pick: optionId }),
  z.strictObject({ form: z.literal('order'), order: ids }),
  z.strictObject({ form: z.literal('number'), value: optionId }),
  z.strictObject({ form: z.literal('pair'), pairs: record }),
  z.strictObject({ form: z.literal('fill'), cells: record }),
  z.strictObject({ form: z.literal('place'), spot: optionId }),
]);

/** A newer Detent may know slip-ups that have no name here: the attempt counts all the same. */
const slipUps = list(short, 40).transform((names) =>
  names.filter((name): name is SlipUp => Object.hasOwn(SLIP_UPS, name)),
);

export const attempt = z.strictObject({
  id,
  deck: id,
  revision,
  family: id,
  fact,
  seed: z.int(),
  facts: list(fact, 60, 1),
  form: z.enum(['set', 'one', 'order', 'number', 'pair', 'fill', 'place']),
  guessRate: share,
  answer,
  right: z.boolean(),
  slipUps,
  missed: list(fact, 60),
  seconds: z.number().min(0).max(10_000_000),
  interrupted: z.boolean(),
  at: moment,
  day,
  zone,
  device: id,
  sequence: z.int().min(1).max(100_000_000),
  drill: short,
}) satisfies z.ZodType<Attempt>;

/** The first place where a value is not what it should be: "attempts.3.day". */
export const whereWrong = (error: z.ZodError): string =>
  (error.issues[0]?.path ?? []).map(String).join('.').slice(0, 100);
