/** What the browser says about keeping the data: whether it promised to, and how much room there is. */
import type { Database } from './database.ts';
import { readSetting } from './read-rows.ts';
import { z } from './zod.ts';

const ASKED = 'persistence-asked';

/** promised: only the person can remove it. not-promised: it may go when the device runs short. unknown: no answer. */
export type Keeping = 'promised' | 'not-promised' | 'unknown';

export interface StorageState {
  readonly keeping: Keeping;
  /** Whether the browser was ever asked for the promise. */
  readonly asked: boolean;
  /** Bytes in use and in all, as the browser estimates; null where it does not tell. */
  readonly used: number | null;
  readonly room: number | null;
}

const manager = () => (typeof navigator === 'undefined' ? undefined : navigator.storage);

/** Asks for the promise; some browsers ask the person in turn. */
export async function askToKeep(db: Database): Promise<Keeping> {
  await db.settings.put({ key: ASKED, value: true });
  const storage = manager();
  if (!storage?.persist) return 'unknown';
  return (await storage.persist()) ? 'promised' : 'not-promised';
}

export const wasAsked = async (db: Database) => (await readSetting(db, ASKED, z.boolean())) ?? false;

export async function storageState(db: Database): Promise<StorageState> {
  const storage = manager();
  const [asked, persisted, estimate] = await Promise.all([
    wasAsked(db),
    storage?.persisted?.() ?? null,
    storage?.estimate?.() ?? null,
  ]);
  return {
    keeping: persisted === null ? 'unknown' : persisted ? 'promised' : 'not-promised',
    asked,
    used: estimate?.usage ?? null,
    room: estimate?.quota ?? null,
  };
}
