/**
 * Who uses this device: a name, a database of his own, and if he wants one a PIN, each. The learner who was here
 * before there were names keeps his database as it is and is only named. docs/spec/learners.md.
 */
import { pass } from '../../core/result.ts';
import { readRows } from '../read-rows.ts';
import { openStore, type Store } from '../store.ts';
import { tellerOf } from '../tell.ts';
import type { Told } from '../trouble.ts';
import { tellNamesChanged } from './changes.ts';
import {
  deleteDatabase,
  FIRST_DATABASE,
  isLearnerDatabase,
  learnerDatabases,
  newDatabaseName,
} from './databases.ts';
import { type IdleMinutes, USUAL_IDLE_MINUTES } from './idle.ts';
import { countTry, type Lock, lockValue, newLock, waitLeft } from './lock.ts';
import { isSameName } from './name.ts';
import { hashPin, isPinOf, measureIterations } from './pin.ts';
import { RegistryDatabase } from './registry-database.ts';
import { idleValue, learnerRow, type StoredLearner } from './registry-rows.ts';

export interface KnownLearner {
  readonly id: string;
  readonly name: string;
  readonly hasPin: boolean;
  /** When somebody else took his PIN off, as long as he was not told; else null. Milliseconds since 1970. */
  readonly pinOffAt: number | null;
}

export interface Listing {
  /** In the order in which they were added. */
  readonly learners: readonly KnownLearner[];
  /** Rows that cannot be read; they are left as they are. */
  readonly unreadable: number;
  /** Those whose taking off another tab still holds up. */
  readonly leaving: number;
  readonly idleMinutes: IdleMinutes;
  readonly hasShopPin: boolean;
}

/** waitMs: how long no further try counts. */
export type PinTry =
  | { readonly kind: 'right' }
  | { readonly kind: 'wrong' | 'waiting'; readonly waitMs: number };

export interface Registry {
  listing(): Told<Listing>;
  /** Names the one who had the device alone, and a second one; null when both are called the same. */
  found(first: string, second: string, at: number): Told<{ first: string; second: string } | null>;
  /** The new learner's id; null when one of that name is there. */
  add(name: string, at: number): Told<string | null>;
  /** False when another one has that name. */
  rename(id: string, name: string): Told<boolean>;

  /** The learner's store, kept open; null when he is no longer on the device. */
  storeOf(id: string): Told<Store | null>;

  /** Null takes it off. */
  setPin(id: string, pin: string | null): Told<void>;
  tryPin(id: string, pin: string, at: number): Told<PinTry>;
  /** For a PIN that was forgotten: the learner is told at his next start. */
  takePinOff(id: string, at: number): Told<void>;
  noteToldOfPin(id: string): Told<void>;

  /** Guards what concerns everybody: names, idle time, wiping. Null takes it off. */
  setShopPin(pin: string | null): Told<void>;
  tryShopPin(pin: string, at: number): Told<PinTry>;
  setIdleMinutes(minutes: IdleMinutes): Told<void>;

  /** Takes a learner off with all that was stored under his name. False: another tab holds it up, and it goes on later. */
  remove(id: string): Told<boolean>;
  /** Takes every learner off. False as with `remove`. What the shop chose stays. */
  wipe(): Told<boolean>;
  /** Goes on with what was held up. True when nothing is left of it. */
  finishRemovals(): Told<boolean>;
  close(): void;
}

const IDLE = 'idle-minutes';
const SHOP_LOCK = 'shop-lock';

const makeLock = async (pin: string): Promise<Lock> =>
  newLock(await hashPin(pin, await measureIterations(() => performance.now())));

const databaseOf = (row: unknown): string | undefined => {
  const name = (row as { database?: unknown } | undefined)?.database;
  return typeof name === 'string' && isLearnerDatabase(name) ? name : undefined;
};

/** The names of this device. The database opens with the first verb. */
export function openRegistry(name?: string): Registry {
  const db = new RegistryDatabase(name);
  const tell = tellerOf(db);
  const stores = new Map<string, Store>();

  const present = async () =>
    readRows(await db.learners.toArray(), learnerRow)
      .filter((row) => !row.leaving)
      .sort((a, b) => a.addedAt - b.addedAt || (a.id < b.id ? -1 : 1));
  const learner = async (id: string) => {
    const [row] = readRows([await db.learners.get(id)], learnerRow);
    return row?.leaving ? undefined : row;
  };
  const put = (row: StoredLearner) => db.learners.put(learnerRow.parse(row));
  const change = (id: string, how: (row: StoredLearner) => StoredLearner) =>
    db.transaction('rw', db.learners, async () => {
      const row = await learner(id);
      if (row) await put(how(row));
    });
  const freshRow = (rowName: string, at: number, database = newDatabaseName()): StoredLearner => ({
    id: crypto.randomUUID(),
    name: rowName,
    database,
    addedAt: at,
    lock: null,
    pinOffAt: null,
    leaving: false,
  });
  const shopLock = async () => readRows([(await db.settings.get(SHOP_LOCK))?.value], lockValue)[0];

  /** Counted in one transaction, hashed outside of any, cleared in another. */
  const tryLock = async (
    pin: string,
    at: number,
    read: () => Promise<Lock | null | undefined>,
    write: (lock: Lock) => Promise<unknown>,
  ): Promise<PinTry> => {
    const counted = await db.transaction('rw', db.learners, db.settings, async () => {
      const lock = await read();
      if (!lock) return null;
      const tried = countTry(lock, at);
      if (tried.lock !== lock) await write(tried.lock);
      return tried;
    });
    if (!counted) return { kind: 'right' };
    if (counted.waitMs > 0) return { kind: 'waiting', waitMs: counted.waitMs };
    if (!(await isPinOf(pin, counted.lock.pin))) return { kind: 'wrong', waitMs: waitLeft(counted.lock, at) };
    await db.transaction('rw', db.learners, db.settings, async () => {
      const lock = await read();
      // Another PIN may have been set meanwhile: its tries are its own.
      if (lock?.pin.salt === counted.lock.pin.salt) await write({ ...lock, wrong: 0 });
    });
    return { kind: 'right' };
  };

  /** A store that is open in this tab hears of it as those of other tabs do, and stays shut from then on. */
  const dropDatabase = (database: string): Promise<boolean> => {
    stores.delete(database);
    return deleteDatabase(database);
  };
  /** Databases first, then the rows: a row that is left over tells what is still to be done. */
  const finish = async (): Promise<boolean> => {
    const leaving = readRows(await db.learners.toArray(), learnerRow).filter((row) => row.leaving);
    let all = true;
    for (const row of leaving)
      if (await dropDatabase(row.database)) await db.learners.delete(row.id);
      else all = false;
    return all;
  };
  const tellChanged = async <T>(told: Told<T>, changed: (value: T) => boolean = () => true): Told<T> => {
    const result = await told;
    if (result.ok && changed(result.value)) tellNamesChanged();
    return result;
  };

  return {
    listing: () =>
      tell(() =>
        db.transaction('r', db.learners, db.settings, async () => {
          const rows = await db.learners.toArray();
          const readable = readRows(rows, learnerRow);
          const [idle] = readRows([(await db.settings.get(IDLE))?.value], idleValue);
          return {
            learners: (await present()).map((row) => ({
              id: row.id,
              name: row.name,
              hasPin: row.lock !== null,
              pinOffAt: row.pinOffAt,
            })),
            unreadable: rows.length - readable.length,
            leaving: readable.filter((row) => row.leaving).length,
            idleMinutes: idle === undefined ? USUAL_IDLE_MINUTES : idle,
            hasShopPin: (await db.settings.get(SHOP_LOCK)) !== undefined,
          };
        }),
      ),
    found: (firstName, secondName, at) =>
      tellChanged(
        tell(() =>
          db.transaction('rw', db.learners, async () => {
            if (isSameName(firstName, secondName)) return null;
            if ((await db.learners.count()) > 0) return null;
            const first = freshRow(firstName, at, FIRST_DATABASE);
            const second = freshRow(secondName, at + 1);
            await put(first);
            await put(second);
            return { first: first.id, second: second.id };
          }),
        ),
        Boolean,
      ),
    add: (newName, at) =>
      tellChanged(
        tell(() =>
          db.transaction('rw', db.learners, async () => {
            if ((await present()).some((row) => isSameName(row.name, newName))) return null;
            const row = freshRow(newName, at);
            await put(row);
            return row.id;
          }),
        ),
        Boolean,
      ),
    rename: (id, newName) =>
      tellChanged(
        tell(() =>
          db.transaction('rw', db.learners, async () => {
            if ((await present()).some((row) => row.id !== id && isSameName(row.name, newName))) return false;
            await change(id, (row) => ({ ...row, name: newName }));
            return true;
          }),
        ),
        Boolean,
      ),

    async storeOf(id) {
      const before = await tell(() => learner(id));
      if (!before.ok) return before;
      if (!before.value) return pass(null);
      const { database } = before.value;
      const opening = async (store: Store) => ({ store, told: await store.chosenDeck() });
      const kept = stores.get(database);
      let { store, told } = await opening(kept ?? openStore(database));
      // Of somebody who had this database before him.
      if (kept && !told.ok && told.error.code === 'deleted')
        ({ store, told } = await opening(openStore(database)));
      if (!told.ok) {
        if (store !== kept) store.close();
        return told;
      }
      // Looked at again now that the database is open: whoever takes him off from here on makes it shut itself.
      const after = await tell(() => learner(id));
      if (!after.ok) return after;
      if (!after.value) {
        store.close();
        await tell(() => dropDatabase(database));
        return pass(null);
      }
      stores.set(database, store);
      // So that a backup, or a report he hands in, says whose it is.
      const known = await store.classroom.learner();
      if (known.ok && !known.value) await store.classroom.nameLearner(after.value.name);
      return pass(store);
    },

    setPin: (id, pin) =>
      tellChanged(
        tell(async () => {
          const lock = pin === null ? null : await makeLock(pin);
          await change(id, (row) => ({ ...row, lock, pinOffAt: null }));
        }),
      ),
    tryPin: (id, pin, at) =>
      tell(() =>
        tryLock(
          pin,
          at,
          async () => (await learner(id))?.lock,
          (lock) => change(id, (row) => ({ ...row, lock })),
        ),
      ),
    takePinOff: (id, at) =>
      tellChanged(tell(() => change(id, (row) => (row.lock ? { ...row, lock: null, pinOffAt: at } : row)))),
    noteToldOfPin: (id) => tellChanged(tell(() => change(id, (row) => ({ ...row, pinOffAt: null })))),

    setShopPin: (pin) =>
      tellChanged(
        tell(async () => {
          if (pin === null) await db.settings.delete(SHOP_LOCK);
          else await db.settings.put({ key: SHOP_LOCK, value: await makeLock(pin) });
        }),
      ),
    tryShopPin: (pin, at) =>
      tell(() => tryLock(pin, at, shopLock, (lock) => db.settings.put({ key: SHOP_LOCK, value: lock }))),
    setIdleMinutes: (minutes) =>
      tellChanged(
        tell(async () => {
          await db.settings.put({ key: IDLE, value: idleValue.parse(minutes) });
        }),
      ),

    remove: (id) =>
      tellChanged(
        tell(async () => {
          await change(id, (row) => ({ ...row, leaving: true }));
          return finish();
        }),
      ),
    wipe: () =>
      tellChanged(
        tell(async () => {
          // Rows that cannot be read go too, and databases that no row names any more.
          const lost = (await db.learners.toArray()).filter(
            (row) => readRows([row], learnerRow).length === 0,
          );
          await db.transaction('rw', db.learners, async () => {
            for (const row of await present()) await put({ ...row, leaving: true });
          });
          let all = await finish();
          for (const row of lost) {
            const database = databaseOf(row);
            if (database !== undefined && !(await dropDatabase(database))) all = false;
            await db.learners.delete((row as { id: string }).id);
          }
          for (const database of await learnerDatabases()) if (!(await dropDatabase(database))) all = false;
          return all;
        }),
      ),
    finishRemovals: () => tell(finish),
    close() {
      for (const store of stores.values()) store.close();
      stores.clear();
      db.close();
    },
  };
}
