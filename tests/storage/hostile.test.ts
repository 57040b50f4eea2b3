/** Backups from anyone: put in whole or not at all, whatever was done to them. */
import 'fake-indexeddb/auto';
import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { backupFile, writeBackup } from '../../src/exchange/backup.ts';
import { readIncomingFile } from '../../src/exchange/read.ts';
import { EXCHANGE_TROUBLES } from '../../src/exchange/trouble.ts';
import { offerOf } from '../../src/screens/device/restoring.ts';
import { readContents } from '../../src/storage/backup.ts';
import { openStore } from '../../src/storage/store.ts';
import {
  byteEdits,
  changed,
  changes,
  edited,
  editedBytes,
  edits,
  expectCleanPrototypes,
  runs,
} from '../hostile.ts';
import { given } from '../results.ts';
import { fill } from './full-store.ts';

const full = openStore('hostile-full');
await fill(full, 'there');
const contents = given(await full.backup());
const text = writeBackup(contents, 1_795_000_000_000);
const file = await backupFile(text);

const store = openStore('hostile-here');
await fill(store, 'here');
const stored = async () => JSON.stringify(given(await store.backup()));

/** Takes a file in the way the screens do; true when it was put in. */
async function putIn(bytes: Uint8Array<ArrayBuffer>): Promise<boolean> {
  const before = await stored();
  const read = await readIncomingFile(bytes);
  expectCleanPrototypes();
  const offer = read.ok && read.value.kind === 'backup' ? await offerOf(read.value) : null;
  if (!read.ok) expect(EXCHANGE_TROUBLES).toContain(read.error.code);
  expect(await stored()).toBe(before);
  if (!offer?.ok) return false;
  const put = await store.restore(offer.value.contents);
  expectCleanPrototypes();
  if (!put.ok) expect(await stored()).toBe(before);
  else
    for (const { id } of offer.value.contents.attempts) expect(await stored()).toContain(JSON.stringify(id));
  return put.ok;
}

test('bytes, letters and values of a backup changed at random', async () => {
  const bytesOf = (changedText: string) => new Uint8Array(gzipSync(changedText));
  await fc.assert(
    fc.asyncProperty(byteEdits, edits, fc.array(changes, { minLength: 1, maxLength: 3 }), async (bytes, letters, list) => {
      await putIn(editedBytes(file, bytes));
      await putIn(bytesOf(edited(text, letters)));
      await putIn(bytesOf(JSON.stringify(changed(JSON.parse(text), list))));
    }),
    runs(15),
  );
  expect(await putIn(file)).toBe(true);
}, 600_000); // biome-ignore format: one property

test('values of the contents changed at random are refused by name, or taken', () => {
  let refused = 0;
  fc.assert(
    fc.property(fc.array(changes, { minLength: 1, maxLength: 4 }), (list) => {
      const read = readContents(changed(contents, list));
      expectCleanPrototypes();
      if (!read.ok) refused++;
      if (!read.ok) expect(read.error.where.length).toBeLessThanOrEqual(100);
    }),
    runs(120),
  );
  expect(refused).toBeGreaterThan(30);
});

test('what would fill the memory is refused: too many values, too many faults', () => {
  const many = (count: number) => Array(count).fill(0);
  for (const wrong of [
    { ...contents, decks: many(300_000) },
    { ...contents, assignments: [{ ...contents.assignments[0], roster: many(140_000) }] },
    { ...contents, checks: { current: null, past: many(80_000).map(() => ({})) } },
  ])
    expect(readContents(wrong).ok).toBe(false);
});
