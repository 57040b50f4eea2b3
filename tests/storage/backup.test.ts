import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { foldAttempts } from '../../src/core/memory/fold.ts';
import { type Contents, readContents } from '../../src/storage/backup.ts';
import { Database } from '../../src/storage/database.ts';
import { openStore, type Store } from '../../src/storage/store.ts';
import type { Told } from '../../src/storage/trouble.ts';
import { aDrill, anAttempt, putAttempt } from '../attempts.ts';
import { given } from '../results.ts';
import { anAssignmentRow, aReportRow, fill } from './full-store.ts';
import { fillUp } from './no-room.ts';

const must = async <T>(told: Told<T>): Promise<T> => given(await told);

const opened: { close(): void }[] = [];
let count = 0;
const freshName = () => `backup-${++count}`;
const open = (name = freshName()): Store => {
  const store = openStore(name);
  opened.push(store);
  return store;
};
afterEach(() => {
  vi.restoreAllMocks();
  for (const each of opened.splice(0)) each.close();
});

async function filled(from = 'here'): Promise<Store> {
  const store = open();
  await fill(store, from);
  return store;
}

/** Contents, whatever the order of their rows. */
const sorted = (contents: Contents) =>
  Object.fromEntries(
    Object.entries(contents).map(([key, value]) => [
      key,
      Array.isArray(value) ? value.map((row) => JSON.stringify(row)).sort() : value,
    ]),
  );

/** What a backup is handed on as: JSON and back. */
const carried = (contents: Contents): Contents =>
  given(asRead(readContents(JSON.parse(JSON.stringify(contents)))));
const asRead = <T>(read: { ok: true; value: T } | { ok: false; error: { where: string } }) =>
  read.ok ? read : { ok: false as const, error: { code: read.error.where } };

describe('B1 a backup holds everything', () => {
  test('put into an empty store it gives a store with the same contents', async () => {
    const contents = carried(await must((await filled()).backup()));
    const empty = open();
    expect(await must(empty.restore(contents))).toEqual({ answers: 3, known: 0, decks: 1 });
    expect(sorted(await must(empty.backup()))).toEqual(sorted(contents));
    for (const [kind, value] of Object.entries(contents))
      expect(Array.isArray(value) ? value.length : value, kind).toBeTruthy();
  });

  test('every table and setting of a full store is in it, but for what belongs to the device or is made anew', async () => {
    const name = freshName();
    const store = open(name);
    await fill(store);
    await must(store.ledgerOf('demo'));
    const text = JSON.stringify(await must(store.backup()));
    const db = new Database(name);
    opened.push(db);
    await db.open();
    const inIt = new Map([
      ['device', false], ['log-changes', false], ['chosen-deck', true], ['practice:demo', true], ['plan:demo', true],
      ['learner', true], ['self-checks', true], ['case', true], ['sheet:a1/s1', true],
      ['workshop-draft:draft-here', true], ['bench-note:note-here', true], ['workshop-writer', true],
    ]); // biome-ignore format: a list
    for (const { key, value } of await db.settings.toArray()) {
      expect(inIt.has(key), key).toBe(true);
      if (inIt.get(key) && typeof value === 'object') expect(text, key).toContain(JSON.stringify(value));
    }
    const remade = ['settings', 'digests', 'keys', 'ledgers'];
    for (const table of db.tables.filter((each) => !remade.includes(each.name)))
      for (const { place: _, ...row } of (await table.toArray()) as { place?: number }[])
        expect(text, table.name).toContain(JSON.stringify(row));
  });

  test('the new phone is another device: its own id, its own numbers from 1, the same memories', async () => {
    const old = await filled();
    const contents = carried(await must(old.backup()));
    const phone = open();
    await must(phone.restore(contents));
    expect(await must(phone.deviceId())).not.toBe(await must(old.deviceId()));
    const { device: _, sequence: __, ...next } = anAttempt({ id: 'next', day: 20_001 });
    expect((await putAttempt(phone, next)).sequence).toBe(1);
    const { attempts } = await must(phone.attemptsOf('demo'));
    const counted = attempts.filter(({ id }) => id !== 'next');
    expect(foldAttempts(counted)).toEqual(foldAttempts(contents.attempts));
    expect((await must(phone.ledgerOf('demo'))).answers).toBe(4);
  });
});

describe('B2 put into a store that holds something', () => {
  test('answers are the union by id: what is here stays as it is', async () => {
    const store = await filled('here');
    const before = await must(store.backup());
    const other = await must((await filled('there')).backup());
    const twice = {
      ...other,
      attempts: [...other.attempts, { ...before.attempts[0]!, right: false, seconds: 99 }],
    };
    expect(await must(store.restore(carried(twice)))).toMatchObject({ answers: 3, known: 1 });
    const after = await must(store.backup());
    const ids = (contents: Contents) => contents.attempts.map(({ id }) => id).sort();
    expect(ids(after)).toEqual([...ids(before), ...ids(other)].sort());
    expect(after.attempts).toEqual(expect.arrayContaining([...before.attempts, ...other.attempts]));
    for (const kind of ['reports', 'corrections', 'flags', 'drafts'] as const)
      expect(after[kind]).toHaveLength(2);
    expect(after.checks?.past.map(({ id }) => id)).toEqual(['check-here', 'check-there']);
  });

  test('a second time it changes nothing', async () => {
    const store = await filled('here');
    const other = carried(await must((await filled('there')).backup()));
    await must(store.restore(other));
    const once = await must(store.backup());
    expect(await must(store.restore(other))).toEqual({ answers: 0, known: 3, decks: 0 });
    expect(sorted(await must(store.backup()))).toEqual(sorted(once));
  });

  test('a memory is the same whichever of two phones takes in the other', async () => {
    const [a, b] = [await filled('a'), await filled('b')];
    const [ofA, ofB] = [carried(await must(a.backup())), carried(await must(b.backup()))];
    await must(a.restore(ofB));
    await must(b.restore(ofA));
    const [here, there] = [await must(a.ledgerOf('demo')), await must(b.ledgerOf('demo'))];
    expect(here.memory).toEqual(there.memory);
    expect(here.answers).toBe(6);
  });

  test('a ledger kept before is void: older answers that came in are counted', async () => {
    const store = open();
    for (let i = 1; i <= 70; i++) {
      const { device: _, sequence: __, ...rest } = anAttempt({ id: `n${i}`, sequence: i, day: 20_100 });
      await putAttempt(store, rest);
    }
    expect((await must(store.ledgerOf('demo'))).answers).toBe(70);
    await must(store.restore(carried(await must((await filled('old')).backup()))));
    expect((await must(store.ledgerOf('demo'))).answers).toBe(73);
  });

  test('settings, name and drill stay; the later revision and the later issue win, whichever side has them', async () => {
    const store = await filled('here');
    const before = await must(store.backup());
    const other = await must((await filled('there')).backup());
    const newer = carried({
      ...other,
      decks: [{ id: 'demo', revision: 3, text: '{"r":3}', loadedAt: 1 }],
      assignments: [
        anAssignmentRow({ issue: 2, roster: ['Cy'] }),
        anAssignmentRow({ id: 'a2', role: 'taken' }),
      ],
      practices: [{ deck: 'demo', value: { classDate: null, minutes: 30, daysAWeek: 1 } }],
      writer: 'Bo',
    });
    expect(await must(store.restore(newer))).toMatchObject({ decks: 1 });
    const after = await must(store.backup());
    expect(after.decks).toEqual(newer.decks);
    expect(after.assignments.map(({ id, issue, roster }) => [id, issue, roster])).toEqual([
      ['a1', 2, ['Cy']],
      ['a2', 1, ['Ada', 'Bo']],
    ]);
    for (const key of ['learner', 'drill', 'practices', 'chosenDeck', 'writer', 'case'] as const)
      expect(after[key]).toEqual(before[key]);
    const older = carried({ ...newer, decks: [{ id: 'demo', revision: 2, text: '{"r":2}', loadedAt: 9 }] });
    expect(await must(store.restore(older))).toMatchObject({ decks: 0 });
    expect((await must(store.backup())).decks).toEqual(newer.decks);
  });

  test('an assignment made here stays one’s own when it comes back as one that was taken in', async () => {
    const store = await filled();
    const contents = await must(store.backup());
    await must(
      store.restore(
        carried({ ...contents, assignments: [anAssignmentRow({ role: 'taken', issue: 9, roster: [] })] }),
      ),
    );
    expect((await must(store.backup())).assignments).toEqual([anAssignmentRow()]);
  });

  test('on a device where nothing was answered yet the backup’s name and settings count', async () => {
    const contents = carried(await must((await filled('old phone')).backup()));
    const phone = open();
    await must(phone.saveDeck({ id: 'other', revision: 1, text: '{}', loadedAt: 1 }));
    await must(phone.chooseDeck('other'));
    await must(phone.classroom.nameLearner('Somebody'));
    await must(phone.restore(contents));
    const after = await must(phone.backup());
    for (const key of ['learner', 'chosenDeck', 'practices', 'drill'] as const)
      expect(after[key]).toEqual(contents[key]);
    expect(after.decks.map(({ id }) => id).sort()).toEqual(['demo', 'other']);
  });
});

describe('B3 all or nothing', () => {
  test.each(['decks', 'reports', 'revisions', 'settings', 'drills'])(
    'a write to %s that fails leaves the store as it was',
    async (table) => {
      const store = open();
      await putAttempt(store, anAttempt({ id: 'mine' }));
      const before = await must(store.backup());
      const contents = carried(await must((await filled('there')).backup()));
      fillUp(table);
      expect(await store.restore(contents)).toMatchObject({ ok: false, error: { code: 'full' } });
      vi.restoreAllMocks();
      expect(await must(store.backup())).toEqual(before);
    },
  );
});

describe('B4 what is not a backup is refused as a whole', () => {
  test.each<[string, (contents: Record<string, unknown>) => unknown, string]>([
    ['an answer with half a day', (c) => ({ ...c, attempts: [anAttempt({ day: 1.5 })] }), 'attempts.0.day'],
    [
      'an answer with a field too many',
      (c) => ({ ...c, attempts: [{ ...anAttempt(), more: 1 }] }),
      'attempts.0',
    ],
    ['a drill that is none', (c) => ({ ...c, drill: { ...aDrill(), index: -1 } }), 'drill.index'],
    ['a list left out', ({ flags: _, ...c }) => c, 'flags'],
    ['a list too many', (c) => ({ ...c, keys: [] }), ''],
    ['a report that is a number', (c) => ({ ...c, reports: [aReportRow(), 7] }), 'reports.1'],
    ['settings of no deck', (c) => ({ ...c, practices: [{ deck: '', value: {} }] }), 'practices.0.deck'],
    ['nothing', () => null, ''],
    ['a list', () => [], ''],
  ])('%s, at its place', async (_, change, where) => {
    const contents = await must((await filled()).backup());
    const read = readContents(change({ ...contents }));
    expect(read).toEqual({ ok: false, error: { where } });
  });
});
