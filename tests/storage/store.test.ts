import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { AttemptDraft } from '../../src/core/memory/attempt.ts';
import { foldAttempts } from '../../src/core/memory/fold.ts';
import type { Result } from '../../src/core/result.ts';
import { Database } from '../../src/storage/database.ts';
import { openStore, type Store } from '../../src/storage/store.ts';
import type { StoreTrouble } from '../../src/storage/trouble.ts';
import { EN } from '../../src/words/en/index.ts';
import { aDrill, anAttempt, putAttempt } from '../attempts.ts';

const opened: { close(): void }[] = [];
let count = 0;
const freshName = () => `store-${++count}`;

const open = (name: string): Store => {
  const store = openStore(name);
  opened.push(store);
  return store;
};

const must = async <T>(told: Promise<Result<T, StoreTrouble>>): Promise<T> => {
  const result = await told;
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.detail}`);
  return result.value;
};

const draft = (id: string, changes: Parameters<typeof anAttempt>[0] = {}): AttemptDraft => {
  const { device: _device, sequence: _sequence, ...rest } = anAttempt({ ...changes, id });
  return rest;
};

/** A store on which the usual drill was begun. */
async function practising(name = freshName()): Promise<Store> {
  const store = open(name);
  await must(store.beginDrill(aDrill()));
  return store;
}

/** The rows as they lie in the database, read past the store. */
async function rowsOf(name: string) {
  const db = new Database(name);
  const rows = {
    attempts: (await db.attempts.toArray()) as { id: string; sequence: number }[],
    drills: (await db.drills.toArray()) as { id: string; index: number }[],
  };
  db.close();
  return rows;
}

afterEach(() => {
  vi.restoreAllMocks();
  for (const store of opened.splice(0)) store.close();
});

describe('an answer is one transaction', () => {
  test('M33 the attempt and the drill after it are stored together, numbered 1, 2, 3 on this device', async () => {
    const name = freshName();
    const store = await practising(name);
    const first = await must(store.recordAttempt(draft('a'), aDrill({ index: 1 })));
    const second = await must(store.recordAttempt(draft('b'), aDrill({ index: 2 })));
    expect([first.sequence, second.sequence]).toEqual([1, 2]);
    expect(first.device).toBe(await must(store.deviceId()));
    expect(await must(store.currentDrill())).toEqual(aDrill({ index: 2 }));
    expect(await must(store.attemptsOf('demo'))).toEqual({ attempts: [first, second], unreadable: 0 });
  });

  test('M33 a failure between the two leaves nothing of either', async () => {
    const name = freshName();
    const store = await practising(name);
    await must(store.recordAttempt(draft('a'), aDrill({ index: 1 })));
    // The attempt is written before the drill; a drill that is none makes the second write fail.
    const broken = { ...aDrill({ index: 2 }), spentMs: -1 };
    await expect(store.recordAttempt(draft('b'), broken)).rejects.toThrow();
    const rows = await rowsOf(name);
    expect(rows.attempts.map((row) => row.id)).toEqual(['a']);
    expect(rows.drills.map((row) => row.index)).toEqual([1]);
    expect((await must(store.recordAttempt(draft('c'), aDrill({ index: 2 })))).sequence).toBe(2);
  });

  test('M33 a full device gives the trouble "full" and leaves nothing', async () => {
    const name = freshName();
    const store = await practising(name);
    await must(store.recordAttempt(draft('a'), aDrill({ index: 1 })));
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
      if (this.name === 'drills') throw new DOMException('no room', 'QuotaExceededError');
      return put.call(this, value, key);
    });
    const told = await store.recordAttempt(draft('b'), aDrill({ index: 2 }));
    expect(told).toMatchObject({ ok: false, error: { code: 'full' } });
    vi.restoreAllMocks();
    const rows = await rowsOf(name);
    expect(rows.attempts.map((row) => row.id)).toEqual(['a']);
    expect(rows.drills.map((row) => row.index)).toEqual([1]);
  });

  test.each([
    ['QuotaExceededError', 'full'],
    ['UnknownError', 'unwritten'],
  ])(
    'S3 a transaction that breaks off with %s when it is written out is "%s", and nothing is stored',
    async (name, code) => {
      const store = await practising();
      const put = IDBObjectStore.prototype.put;
      vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
        this: IDBObjectStore,
        value,
        key,
      ) {
        const request = put.call(this, value, key);
        if (this.name !== 'drills') return request;
        request.addEventListener('success', () => {
          Object.defineProperty(this.transaction, 'error', { value: new DOMException('no', name) });
          this.transaction.abort();
        });
        return request;
      });
      const told = await store.recordAttempt(draft('a'), aDrill({ index: 1 }));
      expect(told).toMatchObject({ ok: false, error: { code } });
      vi.restoreAllMocks();
      expect((await must(store.attemptsOf('demo'))).attempts).toEqual([]);
      expect((await must(store.recordAttempt(draft('a'), aDrill({ index: 1 })))).sequence).toBe(1);
    },
  );

  test('M34 the same attempt again (a double tap, a retry) changes nothing', async () => {
    const store = await practising();
    const first = await must(store.recordAttempt(draft('a'), aDrill({ index: 1 })));
    const again = await must(store.recordAttempt(draft('a', { right: false }), aDrill({ index: 1 })));
    expect(again).toEqual(first);
    expect((await must(store.attemptsOf('demo'))).attempts).toEqual([first]);
  });

  test('M33 M42 two tabs that check each question at the same moment: one answer each, numbered without a gap', async () => {
    const name = freshName();
    const tabs = [await practising(name), open(name)];
    const kept: (string | undefined)[] = [];
    for (let index = 1; index <= 10; index++) {
      const told = await Promise.all(
        tabs.map((tab, place) => tab.recordAttempt(draft(`${place}-${index}`), aDrill({ index }))),
      );
      kept.push(...told.flatMap((each) => (each.ok ? [each.value.id] : [])));
      expect(kept).toHaveLength(index);
    }
    const { attempts } = await must(tabs[0]!.attemptsOf('demo'));
    const counted = attempts.toSorted((a, b) => a.sequence - b.sequence);
    expect(counted.map(({ id }) => id)).toEqual(kept);
    expect(counted.map(({ sequence }) => sequence)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(new Set(attempts.map((attempt) => attempt.device)).size).toBe(1);
  });

  test('M42 the same question checked in two tabs: the first answer counts, the second is told and not stored', async () => {
    const name = freshName();
    const [here, there] = [await practising(name), open(name)];
    const first = await must(here.recordAttempt(draft('a'), aDrill({ index: 1 })));
    const told = await there.recordAttempt(draft('b'), aDrill({ index: 1 }));
    expect(told).toMatchObject({ ok: false, error: { code: 'elsewhere' } });
    expect((await must(there.attemptsOf('demo'))).attempts).toEqual([first]);
  });

  test('M42 a tab that stayed behind does not turn the drill back, whatever it saves', async () => {
    const name = freshName();
    const [ahead, behind] = [await practising(name), open(name)];
    await must(ahead.recordAttempt(draft('a'), aDrill({ index: 1 })));
    const stale = aDrill({ draft: { form: 'number', text: '7' } });
    expect(await behind.saveDraft(stale)).toMatchObject({ ok: false, error: { code: 'elsewhere' } });
    expect((await must(ahead.currentDrill()))?.index).toBe(1);
    await must(behind.saveDraft(aDrill({ index: 2 })));
    expect(await ahead.recordAttempt(draft('b'), aDrill({ index: 2 }))).toMatchObject({ ok: false });
    expect((await must(ahead.recordAttempt(draft('c'), aDrill({ index: 3 })))).sequence).toBe(2);
  });

  test('M42 a drill ended or begun anew in one tab takes no answer from another that had it open', async () => {
    const name = freshName();
    const [here, there] = [await practising(name), open(name)];
    await must(here.endDrill('drill-1'));
    const late = () => there.recordAttempt(draft('a'), aDrill({ index: 1 }));
    expect(await late()).toMatchObject({ ok: false, error: { code: 'elsewhere' } });
    await must(here.beginDrill(aDrill({ id: 'drill-2' })));
    expect(await late()).toMatchObject({ ok: false, error: { code: 'elsewhere' } });
    expect(await there.saveDraft(aDrill())).toMatchObject({ ok: false, error: { code: 'elsewhere' } });
    expect((await must(here.currentDrill()))?.id).toBe('drill-2');
    expect((await must(here.attemptsOf('demo'))).attempts).toEqual([]);
  });

  test('the answers of one drill come by themselves, in the order of their times', async () => {
    const store = open(freshName());
    for (const [id, drill, at] of [
      ['a', 'drill-1', 30],
      ['b', 'drill-2', 20],
      ['c', 'drill-1', 10],
    ] as const)
      await putAttempt(store, draft(id, { drill, at }));
    expect((await must(store.attemptsIn('drill-1'))).map(({ id }) => id)).toEqual(['c', 'a']);
  });

  test('the log comes in the order of its times, whatever the ids; each deck has its own', async () => {
    const store = await practising();
    for (const [id, at] of [
      ['c', 10],
      ['a', 20],
      ['b', 30],
    ] as const)
      await putAttempt(store, draft(id, { at }));
    await putAttempt(store, draft('d', { deck: 'other' }));
    const { attempts } = await must(store.attemptsOf('demo'));
    expect(attempts.map((attempt) => attempt.id)).toEqual(['c', 'a', 'b']);
  });

  test('M1 what is no attempt is refused before it reaches the log', async () => {
    const store = await practising();
    await expect(
      store.recordAttempt(draft('a', { seconds: Number.NaN }), aDrill({ index: 1 })),
    ).rejects.toThrow();
    await expect(store.recordAttempt(draft('a', { day: 20_000.5 }), aDrill({ index: 1 }))).rejects.toThrow();
    expect((await must(store.attemptsOf('demo'))).attempts).toEqual([]);
  });
});

describe('opened again', () => {
  test('M35 everything is found as it was: log, memories, drill with its draft, device, settings', async () => {
    const name = freshName();
    const store = open(name);
    const drill = aDrill({ index: 2, draft: { form: 'number', text: '3,4' }, spentMs: 1234, shownAt: null });
    await must(store.saveDeck({ id: 'demo', revision: 1, text: '{}', loadedAt: 5 }));
    await must(store.beginDrill(aDrill()));
    await must(store.recordAttempt(draft('a', { right: false }), aDrill({ index: 1 })));
    await must(store.saveDraft(drill));
    await must(store.setPractice('demo', { classDate: '2026-03-01', minutes: 5, daysAWeek: 4 }));
    await must(store.chooseDeck('demo'));
    const before = {
      log: await must(store.attemptsOf('demo')),
      device: await must(store.deviceId()),
      decks: await must(store.decks()),
    };
    store.close();

    const reopened = open(name);
    expect(await must(reopened.attemptsOf('demo'))).toEqual(before.log);
    expect(foldAttempts((await must(reopened.attemptsOf('demo'))).attempts)).toEqual(
      foldAttempts(before.log.attempts),
    );
    expect(await must(reopened.currentDrill())).toEqual(drill);
    expect(await must(reopened.deviceId())).toBe(before.device);
    expect(await must(reopened.decks())).toEqual(before.decks);
    expect(await must(reopened.practiceOf('demo'))).toEqual({
      classDate: '2026-03-01',
      minutes: 5,
      daysAWeek: 4,
    });
    expect(await must(reopened.chosenDeck())).toBe('demo');
    expect((await must(reopened.recordAttempt(draft('b'), { ...drill, index: 3 }))).sequence).toBe(2);
  });

  test('M36 at most one drill is under way; ended, there is none', async () => {
    const store = open(freshName());
    await must(store.beginDrill(aDrill({ id: 'old' })));
    await must(store.beginDrill(aDrill({ id: 'new' })));
    expect((await must(store.currentDrill()))?.id).toBe('new');
    await must(store.endDrill('old'));
    expect((await must(store.currentDrill()))?.id).toBe('new');
    await must(store.endDrill('new'));
    expect(await must(store.currentDrill())).toBeUndefined();
  });

  test('M37 a deck taken away leaves its attempts; they are there when it comes back', async () => {
    const store = open(freshName());
    await must(store.saveDeck({ id: 'demo', revision: 1, text: '{}', loadedAt: 5 }));
    await must(store.saveDeck({ id: 'other', revision: 1, text: '{}', loadedAt: 6 }));
    await must(store.chooseDeck('demo'));
    await must(store.beginDrill(aDrill()));
    const attempt = await must(store.recordAttempt(draft('a'), aDrill({ index: 1 })));
    await must(store.removeDeck('other'));
    expect((await must(store.currentDrill()))?.id).toBe('drill-1');
    await must(store.removeDeck('demo'));
    expect(await must(store.decks())).toEqual([]);
    expect(await must(store.currentDrill())).toBeUndefined();
    expect(await must(store.chosenDeck())).toBeUndefined();
    expect((await must(store.attemptsOf('demo'))).attempts).toEqual([attempt]);
  });

  test('decks come latest loaded first, a new revision in place of the old', async () => {
    const store = open(freshName());
    for (const [id, revision, loadedAt] of [
      ['a', 1, 1],
      ['b', 1, 2],
      ['a', 2, 3],
    ] as const)
      await must(store.saveDeck({ id, revision, text: `${revision}`, loadedAt }));
    expect((await must(store.decks())).map((deck) => [deck.id, deck.revision])).toEqual([
      ['a', 2],
      ['b', 1],
    ]);
  });

  test('a deck nobody has set up is practised ten minutes with no class date', async () => {
    const store = open(freshName());
    expect(await must(store.practiceOf('demo'))).toEqual({ classDate: null, minutes: 10, daysAWeek: 7 });
    expect(await must(store.chosenDeck())).toBeUndefined();
    await expect(
      store.setPractice('demo', { classDate: '2026-02-30', minutes: 10, daysAWeek: 7 }),
    ).rejects.toThrow();
  });
});

describe('plans and expected days', () => {
  test('what was set up before days a week could be said counts for every day', async () => {
    const name = freshName();
    const store = open(name);
    await must(store.deviceId());
    const db = new Database(name);
    await db.settings.put({ key: 'practice:demo', value: { classDate: '2026-03-01', minutes: 5 } });
    db.close();
    expect(await must(store.practiceOf('demo'))).toEqual({
      classDate: '2026-03-01',
      minutes: 5,
      daysAWeek: 7,
    });
  });

  test('a plan is found again by its deck; what is no plan counts as none', async () => {
    const name = freshName();
    const store = open(name);
    const plan = {
      classDay: 20_030,
      prices: [
        [20_010, 0.25],
        [20_012, 1e-9],
      ],
      ceilings: { madeFor: 'x', each: [{ minutes: 10, atMost: 0.8 }] },
      scale: { day: 20_010, adopted: { first: -0.1, growth: 0.05 } },
    } as const;
    expect(await must(store.planOf('demo'))).toBeUndefined();
    await must(store.keepPlan('demo', plan));
    expect(await must(store.planOf('demo'))).toEqual(plan);
    expect(await must(store.planOf('other'))).toBeUndefined();
    const db = new Database(name);
    await db.settings.put({ key: 'plan:demo', value: { ...plan, prices: [[20_010, -1]] } });
    db.close();
    expect(await must(store.planOf('demo'))).toBeUndefined();
  });
});

describe('troubles are values', () => {
  test('rows that cannot be read are left out, counted, and left alone', async () => {
    const name = freshName();
    const store = open(name);
    const attempt = await putAttempt(store, draft('a'));
    const db = new Database(name);
    await db.attempts.put({ ...attempt, id: 'odd', right: 'yes' });
    await db.drills.put({ id: 'drill-1', from: 'elsewhere' });
    db.close();
    expect(await must(store.attemptsOf('demo'))).toEqual({ attempts: [attempt], unreadable: 1 });
    expect(await must(store.currentDrill())).toBeUndefined();
    expect((await rowsOf(name)).attempts).toHaveLength(2);
  });

  const openRaw = (name: string, version: number): Promise<IDBDatabase> =>
    new Promise((resolve, reject) => {
      const request = indexedDB.open(name, version);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });

  test('a database of a newer Detent is refused and left as it is', async () => {
    const name = freshName();
    (await openRaw(name, 9990)).close();
    expect(await open(name).attemptsOf('demo')).toMatchObject({ ok: false, error: { code: 'newer' } });
    const after = await openRaw(name, 9990);
    expect([after.version, after.objectStoreNames.length]).toEqual([9990, 0]);
    after.close();
    expect((await indexedDB.databases()).map((each) => each.name)).not.toContain('__dbnames');
  });

  test('upgraded elsewhere while open: the next verb says "newer"', async () => {
    vi.spyOn(console, 'warn').mockImplementation(() => {});
    const name = freshName();
    const store = open(name);
    await must(store.deviceId());
    (await openRaw(name, 9990)).close();
    expect(await store.deviceId()).toMatchObject({ ok: false, error: { code: 'newer' } });
  });

  test('deleted from another tab while open: every later verb says so, and no empty one takes its place', async () => {
    vi.spyOn(console, 'warn').mockImplementation(() => {});
    const name = freshName();
    const store = open(name);
    await must(store.deviceId());
    await new Promise((resolve) => {
      indexedDB.deleteDatabase(name).onsuccess = resolve;
    });
    for (let tries = 0; tries < 2; tries++)
      expect(await store.recordAttempt(draft('b'), aDrill())).toMatchObject({
        ok: false,
        error: { code: 'deleted' },
      });
    expect((await indexedDB.databases()).map((each) => each.name)).not.toContain(name);
  });

  test('held by an older tab: "blocked" until that tab lets go', async () => {
    const name = freshName();
    vi.spyOn(console, 'warn').mockImplementation(() => {});
    const older = await openRaw(name, 1);
    const store = open(name);
    expect(await store.deviceId()).toMatchObject({ ok: false, error: { code: 'blocked' } });
    expect(await store.deviceId()).toMatchObject({ ok: false, error: { code: 'blocked' } });
    older.close();
    await vi.waitFor(async () => expect((await store.deviceId()).ok).toBe(true));
  });

  test('every trouble has words', async () => {
    const { STORE_TROUBLES } = await import('../../src/storage/trouble.ts');
    for (const code of STORE_TROUBLES) expect(EN[`storage.${code}`]).toBeTruthy();
  });
});
