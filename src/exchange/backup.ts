/**
 * A backup as a message: everything of one person's store, answers as columns (columns.ts). As a file it is the
 * JSON packed with gzip, whose own checksum tells every change; a small one goes through a chain of codes as any
 * message does. What is in it besides answers is checked by whoever stores it. docs/exchange.md has the format.
 */
import type { Attempt } from '../core/memory/attempt.ts';
import { fail, pass, type Result } from '../core/result.ts';
import { utf8 } from './bytes.ts';
import { columns, MAX_ATTEMPTS, packAttempts, unpackAttempts } from './columns.ts';
import { gzip } from './deflate.ts';
import { id, list, moment, whereWrong } from './fields.ts';
import { type ExchangeTrouble, trouble } from './trouble.ts';
import { z } from './zod.ts';

export const BACKUP_FORMAT = 1;

/** Characters of the largest backup that is read; 100,000 answers have some 15,000,000. */
export const MAX_BACKUP = 64_000_000;

const head = z.looseObject({ detentBackup: z.int().min(1) });

const backup = z.strictObject({
  detentBackup: z.literal(BACKUP_FORMAT),
  madeAt: moment,
  /** By deck, a part at a time. */
  answers: list(z.strictObject({ deck: id, attempts: columns }), 1000),
  contents: z.record(z.string(), z.unknown()),
});

export interface ReceivedBackup {
  readonly kind: 'backup';
  /** Milliseconds since 1970. */
  readonly madeAt: number;
  /** Not checked yet but for its answers. */
  readonly contents: Readonly<Record<string, unknown>>;
}

function* partsOf(attempts: readonly Attempt[]): Generator<{ deck: string; part: Attempt[] }> {
  const decks = new Map<string, Attempt[]>();
  for (const attempt of attempts) {
    const own = decks.get(attempt.deck);
    if (own) own.push(attempt);
    else decks.set(attempt.deck, [attempt]);
  }
  for (const [deck, own] of decks)
    for (let at = 0; at < own.length; at += MAX_ATTEMPTS)
      yield { deck, part: own.slice(at, at + MAX_ATTEMPTS) };
}

/** Text of a backup. */
export function writeBackup(
  { attempts, ...contents }: { readonly attempts: readonly Attempt[] } & Readonly<Record<string, unknown>>,
  madeAt: number,
): string {
  const inOrder = attempts.toSorted((a, b) => a.at - b.at || a.sequence - b.sequence);
  const answers = [...partsOf(inOrder)].map(({ deck, part }) => ({ deck, attempts: packAttempts(part) }));
  return JSON.stringify({ detentBackup: BACKUP_FORMAT, madeAt, answers, contents });
}

/** The text as the bytes of a file. */
export const backupFile = (text: string): Promise<Uint8Array<ArrayBuffer>> => gzip(utf8(text));

export function readBackup(value: unknown): Result<ReceivedBackup, ExchangeTrouble> {
  const top = head.safeParse(value);
  if (!top.success) return fail(trouble('wrong-shape', 'detentBackup'));
  if (top.data.detentBackup > BACKUP_FORMAT) return fail(trouble('newer'));
  const read = backup.safeParse(value);
  if (!read.success) return fail(trouble('wrong-shape', whereWrong(read.error)));
  const attempts: Attempt[] = [];
  for (const { deck, attempts: packed } of read.data.answers) {
    const own = unpackAttempts(deck, packed);
    if (!own.success) return fail(trouble('wrong-shape', `answers.${whereWrong(own.error)}`));
    for (const attempt of own.data) attempts.push(attempt);
  }
  return pass({ kind: 'backup', madeAt: read.data.madeAt, contents: { ...read.data.contents, attempts } });
}
