/** The database of names: who uses this device, and what the shop chose. A version is never changed once shipped. */
import { Dexie, type Table } from 'dexie';
import { refuseNewer, type SettingRow } from '../database.ts';
import { REGISTRY_DATABASE } from './databases.ts';

export class RegistryDatabase extends Dexie {
  declare learners: Table<unknown, string>;
  declare settings: Table<SettingRow, string>;

  constructor(name = REGISTRY_DATABASE) {
    const browser = globalThis.indexedDB as IDBFactory | undefined;
    super(name, {
      chromeTransactionDurability: 'strict',
      ...(browser && { indexedDB: refuseNewer(browser) }),
    });
    this.version(1).stores({ learners: 'id', settings: 'key' });
  }
}
