/**
 * Databases as older versions left them, each dumped once from the program of its time (tables, indexes, rows) and
 * never changed since. A new version of the store adds one: tests/storage/frozen/store-<version>.json.
 */
import { readdirSync, readFileSync } from 'node:fs';

const FOLDER = new URL('./frozen/', import.meta.url);

export interface Frozen {
  /** As the browser counts: ten times ours. */
  readonly version: number;
  readonly stores: readonly {
    readonly name: string;
    readonly keyPath: string | string[] | null;
    readonly autoIncrement: boolean;
    readonly indexes: readonly {
      readonly name: string;
      readonly keyPath: string | string[];
      readonly unique: boolean;
      readonly multiEntry: boolean;
    }[];
  }[];
  readonly rows: Readonly<Record<string, readonly Record<string, unknown>[]>>;
}

export const frozenNames = (): string[] =>
  readdirSync(FOLDER)
    .filter((name) => name.startsWith('store-'))
    .map((name) => name.replace(/\.json$/, ''));

export const frozen = (name: string): Frozen =>
  JSON.parse(readFileSync(new URL(`${name}.json`, FOLDER), 'utf8')) as Frozen;

/** Makes the database anew, without any of our code. */
export function install(database: string, { version, stores, rows }: Frozen): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(database, version);
    opening.onerror = () => reject(opening.error);
    opening.onupgradeneeded = () => {
      for (const { name, keyPath, autoIncrement, indexes } of stores) {
        const store = opening.result.createObjectStore(name, { keyPath, autoIncrement });
        for (const index of indexes) store.createIndex(index.name, index.keyPath, index);
        for (const row of rows[name] ?? []) store.add(row);
      }
    };
    opening.onsuccess = () => {
      opening.result.close();
      resolve();
    };
  });
}
