/** A device whose storage is full for one table. */
import { vi } from 'vitest';

/** Every write to the table fails until `vi.restoreAllMocks`. */
export function fillUp(table: string): void {
  for (const verb of ['add', 'put'] as const) {
    const real = IDBObjectStore.prototype[verb];
    vi.spyOn(IDBObjectStore.prototype, verb).mockImplementation(function (this: IDBObjectStore, ...row) {
      if (this.name === table) throw new DOMException('no room', 'QuotaExceededError');
      return real.apply(this, row as [unknown]);
    });
  }
}
