/**
 * The shapes in which assignments, reports and what belongs to them are kept. Messages are kept as the text they
 * came in, with the few fields they are found by; src/exchange reads the text.
 */
import type { Correction } from '../core/assign/corrections.ts';
import type { Flag, Learner } from '../core/assign/report.ts';
import type { FactColumns, LearnerDigest } from '../core/group/digest.ts';
import type { DrillItem } from '../core/memory/drill.ts';
import type { Ref } from '../core/unit/unit.ts';
import { z } from './zod.ts';

const id = z.string().min(1);

/** An assignment that was made here, or taken in from an instructor. */
export interface StoredAssignment {
  readonly id: string;
  readonly issue: number;
  readonly madeAt: number;
  readonly deck: string;
  readonly role: 'made' | 'taken';
  /** The message, deck and all. */
  readonly text: string;
  /** Names the instructor expects; never handed out. */
  readonly roster: readonly string[];
  /** Milliseconds since 1970. */
  readonly savedAt: number;
}

export const assignmentRow: z.ZodType<StoredAssignment> = z.strictObject({
  id,
  issue: z.int().positive(),
  madeAt: z.int(),
  deck: id,
  role: z.enum(['made', 'taken']),
  text: z.string(),
  roster: z.array(z.string()),
  savedAt: z.int(),
});

export interface StoredReport {
  /** Id of the report. Two reports with one id and other contents are two rows. */
  readonly id: string;
  readonly assignment: string;
  readonly learner: string;
  readonly madeAt: number;
  /** What the seal is on, and the seal. */
  readonly text: string;
  readonly seal: { readonly key: string; readonly signature: string } | null;
  readonly savedAt: number;
}

export const reportRow: z.ZodType<StoredReport> = z.object({
  id,
  assignment: id,
  learner: id,
  madeAt: z.int(),
  text: z.string(),
  seal: z.strictObject({ key: z.string(), signature: z.string() }).nullable(),
  savedAt: z.int(),
});

export const correctionRow: z.ZodType<Correction> = z.strictObject({
  id,
  deck: id,
  revision: z.int(),
  refs: z.array(z.string().transform((text) => text as Ref)),
  facts: z.array(z.string()),
  note: z.string(),
  at: z.int(),
}) as z.ZodType<Correction>;

export const flagRow: z.ZodType<Flag> = z.strictObject({
  id,
  deck: id,
  revision: z.int(),
  family: z.string(),
  fact: z.string(),
  seed: z.int(),
  note: z.string(),
  at: z.int(),
});

export interface StoredDigest {
  readonly assignment: string;
  readonly learner: string;
  /** What it was made of, as the maker likes: another text means it is out of date. */
  readonly madeOf: string;
  readonly digest: LearnerDigest;
}

const COLUMNS = [
  'stability', 'difficulty', 'firstDay', 'lastDay', 'asked', 'missed', 'rightDays', 'held', 'tries', 'triesRight',
  'latest', 'before', 'after',
] as const satisfies readonly (keyof FactColumns)[]; // biome-ignore format: names read across

/** A thousand of these are read at once: lengths and numbers are looked at, one by one, and no more. */
function isDigest(value: unknown): value is LearnerDigest {
  if (typeof value !== 'object' || value === null) return false;
  const { learner, name, answers, facts, columns, slipUps, confusions } = value as Partial<LearnerDigest>;
  const texts = [learner, name, ...(Array.isArray(facts) ? facts : [null])];
  if (!texts.every((text) => typeof text === 'string') || !Number.isInteger(answers)) return false;
  if (!Array.isArray(slipUps) || !Array.isArray(confusions) || !columns) return false;
  return COLUMNS.every((column) => {
    const numbers = columns[column];
    return Array.isArray(numbers) && numbers.length === facts!.length && numbers.every(Number.isFinite);
  });
}

export const digestRow: z.ZodType<StoredDigest> = z.strictObject({
  assignment: id,
  learner: id,
  madeOf: z.string(),
  digest: z.custom<LearnerDigest>(isDigest),
});

export interface StoredRevision {
  readonly deck: string;
  readonly revision: number;
  /** The deck file. */
  readonly text: string;
  readonly savedAt: number;
}

export const revisionRow: z.ZodType<StoredRevision> = z.strictObject({
  deck: id,
  revision: z.int().positive(),
  text: z.string(),
  savedAt: z.int(),
});

/** Codes read so far of a message that is cut into several. */
export interface StoredChain {
  readonly chain: string;
  readonly of: number;
  /** By their numbers, from 1. */
  readonly pieces: Readonly<Record<number, string>>;
}

export const chainValue: z.ZodType<StoredChain> = z.strictObject({
  chain: id,
  of: z.int().positive(),
  pieces: z.record(z.string(), z.string()),
});

/** A sheet that was printed for a learner, so that its marks can be typed in. */
export interface StoredSheet {
  readonly id: string;
  readonly assignment: string;
  readonly learner: string;
  readonly name: string;
  readonly deck: string;
  readonly revision: number;
  readonly items: readonly DrillItem[];
  /** Milliseconds since 1970. */
  readonly madeAt: number;
  /** When its marks were typed in; null while they are not. */
  readonly markedAt: number | null;
}

export const sheetValue: z.ZodType<StoredSheet> = z.strictObject({
  id,
  assignment: id,
  learner: id,
  name: z.string(),
  deck: id,
  revision: z.int(),
  items: z.array(z.strictObject({ fact: z.string(), family: z.string(), seed: z.int() })),
  madeAt: z.int(),
  markedAt: z.int().nullable(),
});

export const learnerValue: z.ZodType<Learner> = z.strictObject({ id, name: z.string() });

const isKey = (value: unknown, type: string) =>
  typeof CryptoKey !== 'undefined' && value instanceof CryptoKey && value.type === type;

export const keyRow = z.object({
  id,
  pair: z.custom<CryptoKeyPair>((value) => {
    const { privateKey, publicKey } = (value ?? {}) as Partial<CryptoKeyPair>;
    return isKey(privateKey, 'private') && isKey(publicKey, 'public');
  }),
});
