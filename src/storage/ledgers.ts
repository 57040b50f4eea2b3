/**
 * Ledgers (src/core/ledger) kept between openings, so that a long log opens as quickly as a short one. A kept ledger
 * is only ever a short cut: it counts for the log as it was when only this device's own answers have been added
 * since. Whatever else changes the log or what counts in it (answers put in from a backup, corrections, other
 * weights, another format) makes it void, and the whole log is folded again. docs/spec/storage.md L3 to L5.
 */
import { Dexie } from 'dexie';
import { addToLedger, EMPTY_LEDGER, type Ledger, ledgerOf } from '../core/ledger/ledger.ts';
import type { Attempt } from '../core/memory/attempt.ts';
import { MODEL, WEIGHTS } from '../core/memory/recall.ts';
import { correctionRow } from './classroom-rows.ts';
import type { Database } from './database.ts';
import { type KeptLedger, keptIn, rowOf } from './ledger-rows.ts';
import { readRows, readSetting } from './read-rows.ts';
import { attemptRow } from './rows.ts';
import { z } from './zod.ts';

/** Raised whenever a ledger holds something else than before, or more stored answers can be read than before. */
const FORMAT = 1;

/** Answers that may have come since a ledger was kept before it is kept anew. */
const MOST_BEHIND = 64;

const CHANGES = 'log-changes';

const keyOf = (deck: string, weights: readonly number[]) =>
  `${weights === WEIGHTS ? 'usual' : 'own'}:${deck}`;

/** To be called by whatever adds, changes or removes answers other than the next one of this device. */
export async function noteLogChange(db: Database): Promise<void> {
  const before = await readSetting(db, CHANGES, z.int());
  await db.settings.put({ key: CHANGES, value: (before ?? 0) + 1 });
}

export interface LedgerRead {
  readonly ledger: Ledger;
  /** To be kept for the next opening; null when the kept one still does. */
  readonly keep: KeptLedger | null;
}

/** Reads a deck's ledger: the kept one and what this device has added since, or all of the log. */
export async function readLedger(
  db: Database,
  deck: string,
  device: string | undefined,
  weights: readonly number[],
): Promise<LedgerRead> {
  const key = keyOf(deck, weights);
  const [changes, correctionRows, keptRow] = await Promise.all([
    readSetting(db, CHANGES, z.int()),
    db.corrections.where('deck').equals(deck).toArray(),
    db.ledgers.get(key),
  ]);
  const corrections = readRows(correctionRows, correctionRow);
  const ids = corrections.map(({ id }) => id).sort();
  const stamp = JSON.stringify([FORMAT, MODEL, weights, changes ?? 0, ids]);
  const terms = { corrections, weights };
  const readAll = (rows: readonly unknown[]): Attempt[] => readRows(rows, attemptRow);

  const kept = keptIn(keptRow, stamp);
  if (kept) {
    const { sequence } = (device && kept.end.devices.get(device)) || { sequence: 0 };
    const since =
      device === undefined
        ? []
        : await db.attempts
            .where('[deck+device+sequence]')
            .between([deck, device, sequence + 1], [deck, device, Dexie.maxKey])
            .toArray();
    const ledger = addToLedger(kept, readAll(since), terms);
    if (ledger) return { ledger, keep: since.length > MOST_BEHIND ? { key, stamp, ledger } : null };
  }
  const rows = await db.attempts.where('deck').equals(deck).toArray();
  const ledger = rows.length === 0 ? EMPTY_LEDGER : ledgerOf(readAll(rows), terms);
  return { ledger, keep: rows.length > MOST_BEHIND ? { key, stamp, ledger } : null };
}

/** Keeps a ledger. Its stamp tells what it was made under, so that one that came too late does no harm. */
export async function keepLedger(db: Database, kept: KeptLedger): Promise<void> {
  await db.ledgers.put(rowOf(kept));
}
