/** What can go wrong with storage, as values; src/words/en/storage.ts has the sentence for each ("storage.<code>"). */
import { Dexie } from 'dexie';
import type { Result } from '../core/result.ts';

export const STORE_TROUBLES = [
  'full',
  'blocked',
  'newer',
  'deleted',
  'elsewhere',
  'unavailable',
  'unwritten',
] as const;
/**
 * full: no space left, nothing was written. blocked: an older Detent in another tab holds the database.
 * newer: a newer Detent wrote it, here or in another tab. deleted: it was taken off from another tab.
 * elsewhere: the drill at hand went on, ended or was replaced in another tab, nothing was written.
 * unavailable: the browser gives no database. unwritten: it gave one and could not write to it just now; a disk
 * that is full can look like this. Nothing was written.
 */
export type StoreTroubleCode = (typeof STORE_TROUBLES)[number];

export interface StoreTrouble {
  readonly code: StoreTroubleCode;
  /** The browser's own words, for a report. */
  readonly detail: string;
}

export type Told<T> = Promise<Result<T, StoreTrouble>>;

/** Thrown inside the store only, when another tab holds the database. */
export class Blocked extends Error {
  override readonly name = 'Blocked';
}

/** Thrown inside the store only, when another tab deleted the database. */
export class Deleted extends Error {
  override readonly name = 'Deleted';
}

/** Thrown inside the store only, when another tab has taken the drill at hand further. */
export class Elsewhere extends Error {
  override readonly name = 'Elsewhere';
}

const causesOf = (error: unknown): Error[] => {
  if (!(error instanceof Error)) return [];
  const inner = (error as { inner?: unknown }).inner;
  return [error, ...(inner === error ? [] : causesOf(inner))];
};

const CODES: Readonly<Record<string, StoreTroubleCode>> = {
  [Dexie.errnames.QuotaExceeded]: 'full',
  [Dexie.errnames.Version]: 'newer',
  Blocked: 'blocked',
  Deleted: 'deleted',
  Elsewhere: 'elsewhere',
  [Dexie.errnames.DatabaseClosed]: 'unavailable',
  [Dexie.errnames.MissingAPI]: 'unavailable',
  [Dexie.errnames.OpenFailed]: 'unavailable',
  SecurityError: 'unavailable',
};

/** What may be behind these is said by when they came: while the database was opened, or on it. */
const UNSPECIFIC: ReadonlySet<string> = new Set([
  Dexie.errnames.InvalidState,
  Dexie.errnames.Unknown,
  Dexie.errnames.Timeout,
  Dexie.errnames.Abort,
]);

/** The trouble behind an error, or undefined when it is a mistake of our own. `opened`: the database was open. */
export function troubleOf(error: unknown, opened: boolean): StoreTrouble | undefined {
  const causes = causesOf(error);
  const codes = causes.flatMap(({ name }): readonly StoreTroubleCode[] => {
    if (UNSPECIFIC.has(name)) return [opened ? 'unwritten' : 'unavailable'];
    const code = CODES[name];
    return code ? [code] : [];
  });
  // A full disk is behind an aborted transaction, a newer version behind a failed opening.
  const code =
    codes.find((candidate) => candidate !== 'unavailable' && candidate !== 'unwritten') ?? codes[0];
  return code && { code, detail: causes.map((cause) => `${cause.name}: ${cause.message}`).join(' · ') };
}
