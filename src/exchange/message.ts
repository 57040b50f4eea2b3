/**
 * What is handed over, as JSON: an assignment (with its deck, where the other side may not have it) or a report
 * with its seal. Every message states its format; a newer one is refused, nothing of it taken. Unknown keys are
 * refused too: a message is read whole or not at all.
 */
import { type Assignment, COUNTING, type Counting } from '../core/assign/assignment.ts';
import type { Report, Seal, SealedReport } from '../core/assign/report.ts';
import { fail, pass, type Result } from '../core/result.ts';
import { AREAS } from '../core/self-check/areas.ts';
import type { Ref } from '../core/unit/unit.ts';
import { type ReceivedBackup, readBackup } from './backup.ts';
import { columns, packAttempts, unpackAttempts } from './columns.ts';
import {
  date,
  fact,
  id,
  list,
  moment,
  ref,
  revision,
  share,
  short,
  time,
  whereWrong,
  words,
  zone,
} from './fields.ts';
import { canonical, MAX_TEXT, readJson } from './json.ts';
import { checkSeal, type Proof, sealText } from './seal.ts';
import { type ExchangeTrouble, trouble } from './trouble.ts';
import { z } from './zod.ts';

/** The format this program reads and writes. */
export const FORMAT = 1;

const correction = z.strictObject({
  id,
  deck: id,
  revision,
  refs: list(
    ref.transform((text) => text as Ref),
    2000,
  ),
  facts: list(fact, 5000),
  note: words,
  at: moment,
});

const scope = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('deck') }),
  z.strictObject({ kind: z.literal('areas'), areas: list(z.enum(AREAS), AREAS.length, 1) }),
  z.strictObject({ kind: z.literal('facts'), facts: list(fact, 5000, 1) }),
]);

const COUNTINGS = Object.keys(COUNTING) as Counting[];

const assignment = z.strictObject({
  id,
  issue: z.int().min(1).max(100_000),
  deck: z.strictObject({ id, revision }),
  scope,
  counting: z.partialRecord(z.enum(AREAS), z.enum(COUNTINGS)).exactOptional(),
  group: short,
  classAt: z.strictObject({ date, time, zone }),
  minutes: z.int().min(1).max(120),
  threshold: z.strictObject({ share, cautioned: z.boolean() }),
  note: words.nullable(),
  corrections: list(correction, 500),
  madeAt: moment,
}) satisfies z.ZodType<Assignment>;

const flag = z.strictObject({
  id,
  deck: id,
  revision,
  family: id,
  fact,
  seed: z.int(),
  note: words,
  at: moment,
});

const report = z.strictObject({
  id,
  assignment: id,
  deck: id,
  learner: z.strictObject({ id, name: short }),
  madeAt: moment,
  attempts: columns,
  flags: list(flag, 2000),
  corrections: list(id, 500),
});

const seal = z.strictObject({ key: z.string().max(100), signature: z.string().max(100) });

const head = z.looseObject({ detentMessage: z.int().min(1), kind: z.string() });

const message = z.discriminatedUnion('kind', [
  z.strictObject({
    detentMessage: z.literal(FORMAT),
    kind: z.literal('assignment'),
    assignment,
    /** The deck file as it is, or null. It is checked by whoever loads decks. */
    deck: z.record(z.string(), z.unknown()).nullable(),
  }),
  z.strictObject({
    detentMessage: z.literal(FORMAT),
    kind: z.literal('report'),
    report,
    seal: seal.nullable(),
  }),
]);

export type Received =
  | ReceivedBackup
  | {
      readonly kind: 'assignment';
      readonly assignment: Assignment;
      /** The deck file that came with it, not checked yet; null when none did. */
      readonly deckText: string | null;
    }
  | {
      readonly kind: 'report';
      readonly sealed: SealedReport;
      readonly proof: Proof;
      /** What the seal is on; kept, so that it can be checked again, with `count` attempts in it. */
      readonly text: string;
      readonly count: number;
    }
  | {
      readonly kind: 'deck';
      /** A deck file, not checked yet. */
      readonly deckText: string;
    };

/** Text of an assignment. `deckText` must be JSON: decks are checked before they are assigned. */
export function writeAssignment(own: Assignment, deckText: string | null): string {
  const deck: unknown = deckText === null ? null : JSON.parse(deckText);
  return JSON.stringify({ detentMessage: FORMAT, kind: 'assignment', assignment: own, deck });
}

const wireOf = (own: Report) => ({ ...own, attempts: packAttempts(own.attempts) });

/** The report with the device's seal on it; without a key pair it goes unsealed. */
export async function sealReport(own: Report, pair: CryptoKeyPair | null): Promise<SealedReport> {
  return { report: own, seal: pair ? await sealText(canonical(wireOf(own)), pair) : null };
}

/** Text of a report. */
export const writeReport = ({ report: own, seal: on }: SealedReport): string =>
  `{"detentMessage":${FORMAT},"kind":"report","report":${canonical(wireOf(own))},"seal":${canonical(on)}}`;

/** A report from what a message was read to; the text is that of `Received`. */
async function takeReport(
  wire: z.infer<typeof report>,
  raw: unknown,
  on: Seal | null,
): Promise<Result<Received, ExchangeTrouble>> {
  const attempts = unpackAttempts(wire.deck, wire.attempts);
  if (!attempts.success) return fail(trouble('wrong-shape', whereWrong(attempts.error)));
  const text = canonical(raw);
  const sealed = { report: { ...wire, attempts: attempts.data }, seal: on };
  return pass({
    kind: 'report',
    sealed,
    proof: await checkSeal(text, on),
    text,
    count: attempts.data.length,
  });
}

/** Reads a stored report again: the text and seal a `Received` had. */
export async function readReport(text: string, on: Seal | null): Promise<Result<Received, ExchangeTrouble>> {
  const json = readJson(text);
  if (!json.ok) return json;
  const read = report.safeParse(json.value);
  return read.success
    ? takeReport(read.data, json.value, on)
    : fail(trouble('wrong-shape', whereWrong(read.error)));
}

const own = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? (value as Record<string, unknown>)[key]
    : undefined;

/** Reads a message, a deck file or a backup from its text of at most so many characters. */
export async function readMessage(text: string, most = MAX_TEXT): Promise<Result<Received, ExchangeTrouble>> {
  const json = readJson(text, most);
  if (!json.ok)
    return json.error.code === 'damaged' && !/^\uFEFF?\s*\{/.test(text) ? fail(trouble('not-ours')) : json;
  if (own(json.value, 'detentDeck') !== undefined) return pass({ kind: 'deck', deckText: text });
  if (own(json.value, 'detentBackup') !== undefined) return readBackup(json.value);
  const top = head.safeParse(json.value);
  if (!top.success) return fail(trouble('not-ours'));
  if (top.data.detentMessage > FORMAT) return fail(trouble('newer'));
  const read = message.safeParse(json.value);
  if (!read.success) return fail(trouble('wrong-shape', whereWrong(read.error)));
  const { data } = read;
  if (data.kind === 'report') return takeReport(data.report, own(json.value, 'report'), data.seal);
  return pass({
    kind: 'assignment',
    assignment: data.assignment,
    deckText: data.deck === null ? null : JSON.stringify(data.deck),
  });
}
