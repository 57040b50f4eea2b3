/**
 * The database in the browser: its tables and versions. A version is never changed once shipped; a new one is
 * added below it. Transactions are on the disk before an answer counts as stored ("strict").
 */
import { Dexie, type Table } from 'dexie';

export interface SettingRow {
  readonly key: string;
  readonly value: unknown;
}

/**
 * Dexie answers "the stored version is newer" by opening whatever is there, and may then add to it. A newer
 * program's data must stay as it is, so opening without a version is refused.
 */
export function refuseNewer(browser: IDBFactory) {
  return {
    open(name: string, version?: number) {
      if (version === undefined) throw new DOMException('written by a newer Detent', 'VersionError');
      return browser.open(name, version);
    },
    deleteDatabase: (name: string) => browser.deleteDatabase(name),
    databases: () => browser.databases(),
  };
}

/** Rows are `unknown` until src/storage/rows.ts has checked them. */
export class Database extends Dexie {
  declare decks: Table<unknown, string>;
  declare attempts: Table<unknown, string>;
  /** The drill under way: at most one row. */
  declare drills: Table<unknown, string>;
  declare settings: Table<SettingRow, string>;
  declare assignments: Table<unknown, string>;
  declare corrections: Table<unknown, string>;
  declare flags: Table<unknown, string>;
  declare reports: Table<unknown, number>;
  /** Folds of reports, made anew whenever they are out of date. */
  declare digests: Table<unknown, [string, string]>;
  /** Every revision of a deck that was handed out. */
  declare revisions: Table<unknown, [string, number]>;
  declare keys: Table<unknown, string>;
  /** Folds of the log (ledgers.ts), made anew whenever they are out of date. */
  declare ledgers: Table<unknown, string>;

  constructor(name: string) {
    const browser = globalThis.indexedDB as IDBFactory | undefined;
    super(name, {
      chromeTransactionDurability: 'strict',
      ...(browser && { indexedDB: refuseNewer(browser) }),
    });
    this.version(1).stores({
      decks: 'id',
      attempts: 'id, deck, [device+sequence]',
      drills: 'id',
      settings: 'key',
    });
    this.version(2).stores({
      assignments: 'id',
      corrections: 'id, deck',
      flags: 'id, deck',
      reports: '++place, id, assignment, [assignment+learner], learner',
      digests: '[assignment+learner], assignment, learner',
      revisions: '[deck+revision], deck',
      keys: 'id',
    });
    this.version(3).stores({
      attempts: 'id, deck, drill, [device+sequence], [deck+device+sequence]',
      ledgers: 'key',
    });
  }
}
