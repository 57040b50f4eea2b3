/** The names of this device's databases, and how one is deleted or looked for without making it. */

import { fail, pass } from '../../core/result.ts';
import type { Told } from '../trouble.ts';

/** The database of the one who had the device before there were names; src/storage/store.ts opens it by default. */
export const FIRST_DATABASE = 'detent';
export const REGISTRY_DATABASE = 'detent-names';
const PREFIX = 'detent-learner-';

export const newDatabaseName = (): string => `${PREFIX}${crypto.randomUUID()}`;

/** Whether a learner's answers can be in a database of this name: no other is ever deleted. */
export const isLearnerDatabase = (name: string): boolean =>
  name === FIRST_DATABASE || name.startsWith(PREFIX);

/**
 * Deletes a database and all in it; one that is not there is deleted too. False when another tab still holds it:
 * then it goes as soon as that tab lets go of it.
 */
export function deleteDatabase(name: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.deleteDatabase(name);
    request.onsuccess = () => resolve(true);
    request.onerror = () => reject(request.error);
    request.onblocked = () => resolve(false);
  });
}

/** Databases of learners that this browser can name; none where it cannot list them. */
export async function learnerDatabases(): Promise<string[]> {
  const all = (await indexedDB.databases?.()) ?? [];
  return all.flatMap(({ name }) => (name !== undefined && isLearnerDatabase(name) ? [name] : []));
}

/** Whether there is a database of names; true also where the browser cannot tell. */
async function mayHaveNames(): Promise<boolean> {
  try {
    const all = await indexedDB.databases();
    return all.some(({ name }) => name === REGISTRY_DATABASE);
  } catch {
    return true;
  }
}

/**
 * Whether names are kept on this device. Looks without making anything, and without a library: a phone
 * with one learner pays for this at each start, and opening what is not there would be the dearest part of it.
 */
export async function hasNames(): Told<boolean> {
  return (await mayHaveNames()) ? countNames() : pass(false);
}

function countNames(): Told<boolean> {
  return new Promise((resolve) => {
    const unable = (error: unknown) =>
      resolve(
        fail({
          code: 'unavailable' as const,
          detail: error instanceof Error ? `${error.name}: ${error.message}` : String(error),
        }),
      );
    try {
      const request = indexedDB.open(REGISTRY_DATABASE);
      let made = false;
      request.onupgradeneeded = () => {
        made = true;
        request.transaction?.abort();
      };
      request.onsuccess = () => {
        const db = request.result;
        const answer = (has: boolean) => {
          db.close();
          resolve(pass(has));
        };
        // Names in a shape that is not known here are names too.
        if (!db.objectStoreNames.contains('learners')) return answer(true);
        const counting = db.transaction('learners').objectStore('learners').count();
        counting.onsuccess = () => answer(counting.result > 0);
        counting.onerror = () => answer(true);
      };
      request.onerror = (event) => {
        event.preventDefault();
        if (made) resolve(pass(false));
        else unable(request.error);
      };
    } catch (error) {
      unable(error);
    }
  });
}
