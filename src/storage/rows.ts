/** The shapes of stored rows, checked whenever one is read: what is in the database is foreign until then. */

import type { Attempt } from '../core/memory/attempt.ts';
import type { Drill } from '../core/memory/drill.ts';
import type { Draft } from '../core/questions/draft.ts';
import type { Answer } from '../core/questions/question.ts';
import { SLIP_UPS, type SlipUp } from '../core/questions/slip-ups.ts';
import { z } from './zod.ts';

const ids = z.array(z.string());
const record = z.record(z.string(), z.string());
const set = z.strictObject({ form: z.literal('set'), picks: ids });
const order = z.strictObject({ form: z.literal('order'), order: ids });
const pair = z.strictObject({ form: z.literal('pair'), pairs: record });
const fill = z.strictObject({ form: z.literal('fill'), cells: record });

const answer: z.ZodType<Answer> = z.discriminatedUnion('form', [
  set,
  z.strictObject({ form: z.literal('one'), pick: z.string() }),
  order,
  z.strictObject({ form: z.literal('number'), value: z.string() }),
  pair,
  fill,
  z.strictObject({ form: z.literal('place'), spot: z.string() }),
]);

export const draftValue: z.ZodType<Draft> = z.discriminatedUnion('form', [
  set,
  z.strictObject({ form: z.literal('one'), pick: z.string().nullable() }),
  order,
  z.strictObject({ form: z.literal('number'), text: z.string() }),
  pair,
  fill,
  z.strictObject({ form: z.literal('place'), spot: z.string().nullable() }),
]);

const slipUp = z.enum(Object.keys(SLIP_UPS) as [SlipUp, ...SlipUp[]]);
const count = z.int().nonnegative();

export const attemptRow: z.ZodType<Attempt> = z.strictObject({
  id: z.string().min(1),
  deck: z.string(),
  revision: z.int(),
  family: z.string(),
  fact: z.string(),
  seed: z.int(),
  facts: ids.min(1),
  form: z.enum(['set', 'one', 'order', 'number', 'pair', 'fill', 'place']),
  guessRate: z.number().min(0).max(1),
  answer,
  right: z.boolean(),
  slipUps: z.array(slipUp),
  missed: ids,
  seconds: z.number().nonnegative(),
  interrupted: z.boolean(),
  at: z.int(),
  day: z.int(),
  zone: z.string(),
  device: z.string().min(1),
  sequence: z.int().positive(),
  drill: z.string(),
});

export const drillRow: z.ZodType<Drill> = z.strictObject({
  id: z.string().min(1),
  deck: z.string(),
  revision: z.int(),
  day: z.int(),
  minutes: z.number().positive(),
  startedAt: z.int(),
  items: z.array(z.strictObject({ fact: z.string(), family: z.string(), seed: z.int() })),
  index: count,
  draft: draftValue.nullable(),
  verdict: z.strictObject({ right: z.boolean(), slipUps: z.array(slipUp), missed: ids }).nullable(),
  spentMs: z.number().nonnegative(),
  shownAt: z.int().nullable(),
  answered: count,
  right: count,
});

export interface StoredDeck {
  readonly id: string;
  readonly revision: number;
  /** The deck file as it was loaded. */
  readonly text: string;
  /** Milliseconds since 1970. */
  readonly loadedAt: number;
}

export const deckRow: z.ZodType<StoredDeck> = z.strictObject({
  id: z.string().min(1),
  revision: z.int(),
  text: z.string(),
  loadedAt: z.int(),
});

/** How a deck is practised. */
export interface Practice {
  /** Date of the class, YYYY-MM-DD, or null. */
  readonly classDate: string | null;
  readonly minutes: number;
  /** Days of a week on which practice is expected, 1 to 7. */
  readonly daysAWeek: number;
}

export const practiceValue: z.ZodType<Practice> = z.strictObject({
  classDate: z.iso.date().nullable(),
  minutes: z.int().min(1).max(120),
  daysAWeek: z.int().min(1).max(7).default(7),
});

/** What a plan to a class date hands on to the next one. */
export interface StoredPlan {
  readonly classDay: number;
  /** By local day: where the next plan starts from. */
  readonly prices: readonly (readonly [day: number, price: number])[];
  /** The most that so many minutes a day can reach, and what that was reckoned for; null until it was. */
  readonly ceilings: {
    readonly madeFor: string;
    readonly each: readonly { readonly minutes: number; readonly atMost: number }[];
  } | null;
  /** The learner's own scale and the day it was estimated on; its numbers are null when the usual one serves. */
  readonly scale: {
    readonly day: number;
    readonly adopted: { readonly first: number; readonly growth: number } | null;
  } | null;
}

export const planValue: z.ZodType<StoredPlan> = z.strictObject({
  classDay: z.int(),
  prices: z.array(z.tuple([z.int(), z.number().nonnegative()])),
  ceilings: z
    .strictObject({
      madeFor: z.string(),
      each: z.array(z.strictObject({ minutes: z.number().positive(), atMost: z.number().min(0) })),
    })
    .nullable(),
  scale: z
    .strictObject({
      day: z.int(),
      adopted: z.strictObject({ first: z.number(), growth: z.number() }).nullable(),
    })
    .nullable(),
});

export const textValue = z.string().min(1);

/** A case run as its moves: deck and seed make it again. */
export interface StoredCase {
  readonly deck: string;
  readonly revision: number;
  readonly seed: number;
  /** Ids of the tests asked, in order. */
  readonly asked: readonly string[];
  /** Id of the fault named; null until one is. */
  readonly named: string | null;
}

export const caseValue: z.ZodType<StoredCase> = z.strictObject({
  deck: z.string(),
  revision: z.int(),
  seed: z.int(),
  asked: ids,
  named: z.string().nullable(),
});
