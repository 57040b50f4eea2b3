import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test } from 'vitest';
import { ledgerOf } from '../../src/core/ledger/ledger.ts';
import { Database } from '../../src/storage/database.ts';
import { openStore } from '../../src/storage/store.ts';
import type { Told } from '../../src/storage/trouble.ts';
import { anAttempt, putAttempt } from '../attempts.ts';
import { given } from '../results.ts';
import { frozen, frozenNames, install } from './frozen.ts';

const must = async <T>(told: Told<T>): Promise<T> => given(await told);
const opened: { close(): void }[] = [];
afterEach(() => {
  for (const each of opened.splice(0)) each.close();
});

let installed = 0;

async function open(name: string) {
  const sample = frozen(name);
  const database = `${name}, ${++installed}`;
  await install(database, sample);
  const store = openStore(database);
  opened.push(store);
  return { store, sample, database };
}

describe.each(frozenNames())('S7 %s', (name) => {
  test('opens with every answer, deck and setting in it', async () => {
    const { store, sample } = await open(name);
    const { attempts, unreadable } = await must(store.attemptsOf('kestrel-7'));
    expect({ attempts, unreadable }).toEqual({ attempts: sample.rows.attempts, unreadable: 0 });
    expect(await must(store.currentDrill())).toEqual(sample.rows.drills![0]);
    expect(await must(store.decks())).toEqual(sample.rows.decks);
    const setting = (key: string) => sample.rows.settings!.find((row) => row.key === key)?.value;
    expect(await must(store.deviceId())).toBe(setting('device'));
    expect(await must(store.chosenDeck())).toBe('kestrel-7');
    expect(await must(store.practiceOf('kestrel-7'))).toEqual({
      daysAWeek: 7,
      ...(setting('practice:kestrel-7') as object),
    });
    expect(await must(store.planOf('kestrel-7'))).toEqual(setting('plan:kestrel-7'));
    expect(await must(store.storedCase())).toEqual(setting('case'));
    expect((await must(store.checkBook())).past).toEqual(
      (setting('self-checks') as { past: unknown[] } | undefined)?.past ?? [],
    );
  });

  test('keeps what an instructor and an author had', async () => {
    const { store, sample } = await open(name);
    const { classroom, workshop } = store;
    const rows = (table: string) => sample.rows[table] ?? [];
    expect(await must(classroom.assignments())).toEqual(rows('assignments'));
    expect(await must(classroom.correctionsOf('kestrel-7'))).toEqual(rows('corrections'));
    expect(await must(classroom.flagsOf('kestrel-7'))).toEqual(rows('flags'));
    expect(await must(classroom.revisionsOf('kestrel-7'))).toEqual(rows('revisions'));
    expect((await must(classroom.reportsOf('a1'))).reports).toEqual(
      rows('reports').map(({ place: _, ...row }) => row),
    );
    const settings = (prefix: string) =>
      rows('settings')
        .filter(({ key }) => String(key).startsWith(prefix))
        .map(({ value }) => value);
    expect([await must(classroom.learner())].filter(Boolean)).toEqual(settings('learner'));
    expect(await must(classroom.sheetsOf('a1'))).toEqual(settings('sheet:'));
    expect(await must(workshop.drafts())).toEqual(settings('workshop-draft:'));
  });

  test('goes on: the ledger is the fold of its log, the drill takes the next answer, a backup holds it', async () => {
    const { store, sample } = await open(name);
    const { attempts } = await must(store.attemptsOf('kestrel-7'));
    const corrections = await must(store.classroom.correctionsOf('kestrel-7'));
    expect(await must(store.ledgerOf('kestrel-7'))).toEqual(ledgerOf(attempts, { corrections }));
    const drill = (await must(store.currentDrill()))!;
    const {
      device: _,
      sequence: __,
      ...next
    } = anAttempt({ id: 'next', deck: 'kestrel-7', drill: drill.id });
    const verdict = { right: true, slipUps: [], missed: [] };
    expect((await must(store.recordAttempt(next, { ...drill, verdict }))).sequence).toBe(4);
    expect((await must(store.backup())).attempts).toHaveLength(sample.rows.attempts!.length + 1);
  });
});

test('S7 there is a sample of every version up to this one', async () => {
  const db = new Database('versions');
  opened.push(db);
  await db.open();
  const versions = new Set(frozenNames().map((name) => frozen(name).version / 10));
  expect([...versions].sort()).toEqual(Array.from({ length: db.verno }, (_, i) => i + 1));
});

test('S7 an older store in use by nobody is brought up to date once and stays readable', async () => {
  const { store, database } = await open('store-1-first');
  await must(store.deviceId());
  store.close();
  const again = openStore(database);
  opened.push(again);
  const { device: _, sequence: __, ...next } = anAttempt({ id: 'later', deck: 'kestrel-7' });
  expect((await putAttempt(again, next)).sequence).toBe(4);
  expect(
    (await must(again.attemptsIn('c5f0d3de-2a50-4f3a-9d8e-0d6d9b6c1e01'))).map(({ sequence }) => sequence),
  ).toEqual([1, 2, 3]);
});
