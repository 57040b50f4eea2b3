/**
 * Opens a database with its first verb and makes values of what can go wrong. A database that was deleted from
 * another tab stays shut in this one: opened again it would be a new, empty one that nobody knows of.
 */
import type { Dexie } from 'dexie';
import { fail, pass } from '../core/result.ts';
import { Blocked, Deleted, type Told, troubleOf } from './trouble.ts';

export type Tell = <T>(act: () => Promise<T>) => Told<T>;

/** Opens the database; throws `Blocked` as long as another tab keeps it from being upgraded. */
function opener(db: Dexie): () => Promise<unknown> {
  const waiting = new Set<() => void>();
  let blocked = false;
  let deleted = false;
  db.on('blocked', () => {
    blocked = true;
    for (const turnAway of waiting) turnAway();
  });
  db.on('versionchange', ({ newVersion }: IDBVersionChangeEvent) => {
    if (newVersion === null) deleted = true;
  });
  return async () => {
    if (deleted) throw new Deleted('the database was deleted from another tab');
    if (db.isOpen()) return;
    const opened = db.open().then(() => {
      blocked = false;
    });
    let turnAway = () => {};
    const turnedAway = new Promise<never>((_, reject) => {
      turnAway = () => reject(new Blocked('another tab holds the database'));
    });
    if (blocked) turnAway();
    waiting.add(turnAway);
    await Promise.race([opened, turnedAway]).finally(() => waiting.delete(turnAway));
  };
}

/** What an act on this database gives, or the trouble it met; a mistake of our own is thrown. */
export function tellerOf(db: Dexie): Tell {
  const open = opener(db);
  return async (act) => {
    let opened = false;
    try {
      await open();
      opened = true;
      return pass(await act());
    } catch (error) {
      const trouble = troubleOf(error, opened);
      if (!trouble) throw error;
      return fail(trouble);
    }
  };
}
