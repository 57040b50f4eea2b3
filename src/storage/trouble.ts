/** What can go wrong with storage, as values; src/words/en/storage.ts has the sentence for each ("storage.<code>"). */
import { Dexie } from 'dexie';
import type { Result } from '../core/result.ts';

export const STORE_TROUBLES = ['full', 'blocked', 'newer', 'deleted', 'elsewhere', 'unavailable'] as const;
/**
 * full: no space left, nothing was written. blocked: an older Detent in another tab holds the database.
 * newer: a newer Detent wrote it, here or in another tab. deleted: it was taken off from another tab.
 * unavailable: the browser gives no database.
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
  [Dexie.errnames.InvalidState]: 'unavailable',
  [Dexie.errnames.Unknown]: 'unavailable',
  [Dexie.errnames.Timeout]: 'unavailable',
  [Dexie.errnames.Abort]: 'unavailable',
  SecurityError: 'unavailable',
};

/** The trouble behind an error, or undefined when it is a mistake of our own. */
export function troubleOf(error: unknown): StoreTrouble | undefined {
  const causes = causesOf(error);
  const codes = causes.flatMap((cause) => CODES[cause.name] ?? []);
  const code = codes.find((candidate) => candidate !== 'unavailable') ?? codes[0];
  return code && { code, detail: causes.map((cause) => `${cause.name}: ${cause.message}`).join(' · ') };
}
