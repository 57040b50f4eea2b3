import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { AttemptDraft } from '../../../src/core/memory/attempt.ts';
import { progress } from '../../../src/core/memory/drill.ts';
import type { Result } from '../../../src/core/result.ts';
import { hasNames } from '../../../src/storage/learners/databases.ts';
import { openRegistry, type Registry } from '../../../src/storage/learners/registry.ts';
import { RegistryDatabase } from '../../../src/storage/learners/registry-database.ts';
import { openStore, type Store } from '../../../src/storage/store.ts';
import type { StoreTrouble } from '../../../src/storage/trouble.ts';
import { aDrill, anAttempt } from '../../attempts.ts';

// Each hash takes a while on purpose; here it is not the time that is tested.
vi.mock('../../../src/storage/learners/pin.ts', async (original) => ({
  ...(await original<typeof import('../../../src/storage/learners/pin.ts')>()),
  measureIterations: async () => 1000,
}));

const open: { close(): void }[] = [];

/** What one tab has of the names. */
const tab = (): Registry => {
  const registry = openRegistry();
  open.push(registry);
  return registry;
};

const alone = (): Store => {
  const store = openStore();
  open.push(store);
  return store;
};

const must = async <T>(told: Promise<Result<T, StoreTrouble>>): Promise<T> => {
  const result = await told;
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.detail}`);
  return result.value;
};

const draft = (id: string): AttemptDraft => {
  const { device: _device, sequence: _sequence, ...rest } = anAttempt({ id });
  return rest;
};

/** One answered question, in a drill of its own. */
async function answer(store: Store, id: string, drill = `drill-${id}`) {
  const begun = aDrill({ id: drill });
  await must(store.beginDrill(begun));
  const verdict = { right: true, slipUps: [], missed: [] };
  return must(store.recordAttempt(draft(id), progress(begun, { kind: 'checked', verdict, at: 2_000_000 })));
}

const databases = async () => (await indexedDB.databases()).map(({ name }) => name!).sort();

const storeOf = async (registry: Registry, id: string): Promise<Store> => {
  const store = await must(registry.storeOf(id));
  if (!store) throw new Error(`${id} is not on the device`);
  return store;
};

const idsIn = async (store: Store) =>
  (await must(store.attemptsOf('demo'))).attempts.map(({ id }) => id).sort();

const foundTwo = async (registry: Registry) => (await must(registry.found('Anna', 'Ben', 1)))!;

beforeEach(() => {
  vi.spyOn(console, 'warn').mockImplementation(() => {});
});

afterEach(async () => {
  vi.restoreAllMocks();
  for (const each of open.splice(0)) each.close();
  for (const name of await databases())
    await new Promise((resolve) => {
      indexedDB.deleteDatabase(name).onsuccess = resolve;
    });
});

describe('one learner alone', () => {
  test('N1 looking for names makes no database and finds none', async () => {
    expect(await must(hasNames())).toBe(false);
    await answer(alone(), 'a');
    expect(await must(hasNames())).toBe(false);
    expect(await databases()).toEqual(['detent']);
  });

  test('N1 no name is left, or founding failed: again there are none', async () => {
    const registry = tab();
    expect(await must(registry.found('Anna', 'anna', 1))).toBeNull();
    expect(await must(hasNames())).toBe(false);
    await foundTwo(registry);
    expect(await must(hasNames())).toBe(true);
    await must(registry.wipe());
    expect(await must(hasNames())).toBe(false);
  });

  test('N2 with a second name what was there becomes the first one’s, row for row as it was', async () => {
    const before = alone();
    const attempt = await answer(before, 'a');
    const device = await must(before.deviceId());
    const drill = await must(before.currentDrill());
    const registry = tab();
    const { first, second } = await foundTwo(registry);
    expect(await must(hasNames())).toBe(true);
    const annas = await storeOf(registry, first);
    expect(await must(annas.attemptsOf('demo'))).toEqual({ attempts: [attempt], unreadable: 0 });
    expect(await must(annas.deviceId())).toBe(device);
    expect(await must(annas.currentDrill())).toEqual(drill);
    const bens = await storeOf(registry, second);
    expect(await idsIn(bens)).toEqual([]);
    expect(await must(bens.currentDrill())).toBeUndefined();
    expect(await must(bens.deviceId())).not.toBe(device);
    // The page that was open before goes on as Anna's.
    await answer(before, 'b');
    expect(await idsIn(annas)).toEqual(['a', 'b']);
  });
});

describe('names', () => {
  test('N3 no two are the same, whatever their capitals; a name can change, its answers stay', async () => {
    const registry = tab();
    expect(await must(registry.found('Anna', 'ANNA', 1))).toBeNull();
    const { first, second } = await foundTwo(registry);
    expect(await must(registry.add('anna', 2))).toBeNull();
    expect(await must(registry.rename(second, 'aNNa'))).toBe(false);
    await answer(await storeOf(registry, first), 'a');
    expect(await must(registry.rename(first, 'ANNA'))).toBe(true);
    expect(await must(registry.add('Cem', 3))).toBeTruthy();
    const { learners } = await must(registry.listing());
    expect(learners.map(({ name }) => name)).toEqual(['ANNA', 'Ben', 'Cem']);
    expect(await idsIn(await storeOf(registry, first))).toEqual(['a']);
  });

  test('N3 added from two tabs at once, a name is there once', async () => {
    const [one, other] = [tab(), tab()];
    await foundTwo(one);
    const ids = await Promise.all([one, other].map((registry) => must(registry.add('Cem', 3))));
    expect(ids.filter((id) => id === null)).toHaveLength(1);
    expect((await must(other.listing())).learners).toHaveLength(3);
  });

  test('N15 a name that cannot be read is left out, counted and left alone', async () => {
    const registry = tab();
    await foundTwo(registry);
    const db = new RegistryDatabase();
    await db.learners.put({ id: 'odd', name: 7 });
    // A row that points at a database which is no learner's.
    await db.learners.put({ ...((await db.learners.toArray())[0] as object), id: 'sly', database: 'other' });
    db.close();
    const { learners, unreadable } = await must(registry.listing());
    expect([learners.length, unreadable]).toEqual([2, 2]);
    expect(await must(registry.storeOf('sly'))).toBeNull();
  });
});

test('N3 names as the first version wrote them open', async () => {
  const rows = [
    {
      id: 'a',
      name: 'Anna',
      database: 'detent',
      addedAt: 1_764_000_000_000,
      // The PIN is 4711: PBKDF2-HMAC-SHA-256, 1000 iterations, made by OpenSSL.
      lock: {
        pin: {
          iterations: 1000,
          salt: '000102030405060708090a0b0c0d0e0f',
          hash: 'b5bd6e88917e8c18c075e52eb8427bbc00f98d7308cd509c480e449242bbaac0',
        },
        wrong: 0,
        triedAt: 0,
      },
      pinOffAt: null,
      leaving: false,
    },
    {
      id: 'b',
      name: 'Ben',
      database: 'detent-learner-b',
      addedAt: 1_764_000_000_001,
      lock: null,
      pinOffAt: 1_764_000_000_002,
      leaving: false,
    },
  ];
  await new Promise((resolve) => {
    // Ten times the version is how Dexie counts.
    const request = indexedDB.open('detent-names', 10);
    request.onupgradeneeded = () => {
      const learners = request.result.createObjectStore('learners', { keyPath: 'id' });
      const settings = request.result.createObjectStore('settings', { keyPath: 'key' });
      for (const row of rows) learners.put(row);
      settings.put({ key: 'idle-minutes', value: 20 });
    };
    request.onsuccess = () => {
      request.result.close();
      resolve(undefined);
    };
  });
  const registry = tab();
  expect(await must(registry.listing())).toEqual({
    learners: [
      { id: 'a', name: 'Anna', hasPin: true, pinOffAt: null },
      { id: 'b', name: 'Ben', hasPin: false, pinOffAt: 1_764_000_000_002 },
    ],
    unreadable: 0,
    leaving: 0,
    idleMinutes: 20,
    hasShopPin: false,
  });
  expect(await must(registry.tryPin('a', '4711', 1))).toEqual({ kind: 'right' });
  expect(await must(registry.tryPin('a', '4712', 1))).toMatchObject({ kind: 'wrong' });
});

describe('apart', () => {
  const STEPS = ['answer', 'draft', 'practice', 'end', 'name', 'leave'] as const;
  const step = fc.record({
    who: fc.nat(2),
    tab: fc.nat(1),
    kind: fc.constantFrom(...STEPS),
    /** Not waited for before the next step. */
    atOnce: fc.boolean(),
  });

  test('N4 any interleaving of three learners in two tabs keeps log, drill, settings and names apart', async () => {
    const tabs = [tab(), tab()];
    const { first, second } = await foundTwo(tabs[0]!);
    const ids = [first, second, (await must(tabs[0]!.add('Cem', 3)))!];
    const names = ['Anna', 'Ben', 'Cem'];
    const expected = ids.map((_, who) => ({
      answers: [] as string[],
      minutes: 10,
      name: names[who]!,
    }));
    let count = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 40 }), async (steps) => {
        // What one person does comes one after the other; different people, and tabs, at once.
        const lines = ids.map((): Promise<unknown> => Promise.resolve());
        for (const { who, tab: at, kind, atOnce } of steps) {
          const own = expected[who]!;
          const id = `${who}-${++count}`;
          const act = async () => {
            const store = await storeOf(tabs[at]!, ids[who]!);
            if (kind === 'answer') await answer(store, id, `drill-${who}`);
            if (kind === 'draft') await must(store.beginDrill(aDrill({ id: `drill-${who}` })));
            if (kind === 'end') await must(store.endDrill(`drill-${who}`));
            if (kind === 'practice')
              await must(store.setPractice('demo', { minutes: own.minutes, classDate: null, daysAWeek: 7 }));
            if (kind === 'name') await must(store.classroom.nameLearner(`learner ${who}`));
          };
          if (kind === 'answer') own.answers.push(id);
          if (kind === 'practice') own.minutes = 20 + who;
          if (kind === 'name') own.name = `learner ${who}`;
          // Back to the names: the store stays as it was.
          if (kind === 'leave') await must(tabs[at]!.listing());
          lines[who] = lines[who]!.then(act);
          if (!atOnce) await lines[who];
        }
        await Promise.all(lines);
        for (const [who, id] of ids.entries()) {
          const own = expected[who]!;
          for (const registry of tabs) {
            const store = await storeOf(registry, id);
            const { attempts, unreadable } = await must(store.attemptsOf('demo'));
            expect(unreadable).toBe(0);
            expect(attempts.map((attempt) => attempt.id).sort()).toEqual([...own.answers].sort());
            expect(attempts.map(({ sequence }) => sequence).sort((a, b) => a - b)).toEqual(
              own.answers.map((_, place) => place + 1),
            );
            expect(new Set(attempts.map(({ device }) => device)).size).toBeLessThanOrEqual(1);
            expect([undefined, `drill-${who}`]).toContain((await must(store.currentDrill()))?.id);
            expect((await must(store.practiceOf('demo'))).minutes).toBe(own.minutes);
            expect((await must(store.classroom.learner()))?.name).toBe(own.name);
          }
        }
      }),
      { numRuns: 40 },
    );
    const devices = await Promise.all(ids.map(async (id) => must((await storeOf(tabs[0]!, id)).deviceId())));
    expect(new Set(devices).size).toBe(3);
  });
});

describe('PINs', () => {
  test('N11 right opens, wrong tells so, after three wrong ones one waits, and a right one starts anew', async () => {
    const registry = tab();
    const { first, second } = await foundTwo(registry);
    await must(registry.setPin(first, '4711'));
    expect((await must(registry.listing())).learners.map(({ hasPin }) => hasPin)).toEqual([true, false]);
    expect(await must(registry.tryPin(first, '4711', 1000))).toEqual({ kind: 'right' });
    expect(await must(registry.tryPin(second, 'whatever', 1000))).toEqual({ kind: 'right' });
    for (const waitMs of [0, 0, 15_000])
      expect(await must(registry.tryPin(first, '0000', 2000))).toEqual({ kind: 'wrong', waitMs });
    expect(await must(registry.tryPin(first, '4711', 2000))).toEqual({ kind: 'waiting', waitMs: 15_000 });
    expect(await must(registry.tryPin(first, '4711', 17_000))).toEqual({ kind: 'right' });
    expect(await must(registry.tryPin(first, '0000', 17_001))).toEqual({ kind: 'wrong', waitMs: 0 });
  });

  test('N11 tries at once from two tabs, and after a reload, count all the same', async () => {
    const [one, other] = [tab(), tab()];
    const { first } = await foundTwo(one);
    await must(one.setPin(first, '4711'));
    const tries = await Promise.all(
      Array.from({ length: 12 }, (_, i) => must([one, other][i % 2]!.tryPin(first, `000${i % 10}`, 5000))),
    );
    expect(tries.filter(({ kind }) => kind === 'wrong')).toHaveLength(3);
    one.close();
    expect(await must(tab().tryPin(first, '4711', 5001))).toEqual({ kind: 'waiting', waitMs: 14_999 });
  });

  test('N13 a PIN taken off by somebody else is told to its owner once', async () => {
    const registry = tab();
    const { first } = await foundTwo(registry);
    await must(registry.setPin(first, '4711'));
    await must(registry.takePinOff(first, 77));
    expect((await must(registry.listing())).learners[0]).toMatchObject({ hasPin: false, pinOffAt: 77 });
    await must(registry.noteToldOfPin(first));
    expect((await must(registry.listing())).learners[0]!.pinOffAt).toBeNull();
    await must(registry.takePinOff(first, 78));
    expect((await must(registry.listing())).learners[0]!.pinOffAt).toBeNull();
  });

  test('N14 the shop’s PIN counts its own tries', async () => {
    const registry = tab();
    const { first } = await foundTwo(registry);
    await must(registry.setPin(first, '4711'));
    await must(registry.setShopPin('987654'));
    for (let i = 0; i < 3; i++) await must(registry.tryShopPin('4711', 1000));
    expect(await must(registry.tryShopPin('987654', 1000))).toMatchObject({ kind: 'waiting' });
    expect(await must(registry.tryPin(first, '4711', 1000))).toEqual({ kind: 'right' });
    expect((await must(registry.listing())).hasShopPin).toBe(true);
    await must(registry.setShopPin(null));
    expect((await must(registry.listing())).hasShopPin).toBe(false);
  });
});

describe('taking off', () => {
  test('N16 one learner goes with his database; the others keep theirs, and open tabs stay shut', async () => {
    const [one, other] = [tab(), tab()];
    const { first, second } = await foundTwo(one);
    await answer(await storeOf(one, first), 'a');
    const bensElsewhere = await storeOf(other, second);
    await answer(bensElsewhere, 'b');
    expect(await must(one.remove(second))).toBe(true);
    expect(await databases()).toEqual(['detent', 'detent-names']);
    expect(await bensElsewhere.recordAttempt(draft('c'), aDrill())).toMatchObject({
      ok: false,
      error: { code: 'deleted' },
    });
    expect(await must(other.storeOf(second))).toBeNull();
    expect(await databases()).toEqual(['detent', 'detent-names']);
    expect(await idsIn(await storeOf(other, first))).toEqual(['a']);
  });

  test('N16 a tab that picks a name while it is being taken off gets none, and no database is left', async () => {
    const [one, other] = [tab(), tab()];
    const { second } = await foundTwo(one);
    for (let round = 0; round < 8; round++) {
      const id = (await must(one.add(`guest ${round}`, 10)))!;
      const [, picked] = await Promise.all([must(one.remove(id)), must(other.storeOf(id))]);
      if (picked) expect(await picked.deviceId()).toMatchObject({ ok: false, error: { code: 'deleted' } });
    }
    expect((await must(one.listing())).learners.map(({ id }) => id)).toContain(second);
    expect(await databases()).toEqual(['detent-names']);
  });

  test('N17 held up by a tab that does not let go: told, not listed, and finished later', async () => {
    const registry = tab();
    const { second } = await foundTwo(registry);
    await storeOf(registry, second);
    const name = (await databases()).find((each) => each.startsWith('detent-learner-'))!;
    // An older program, deaf to being asked.
    const holder = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open(name);
      request.onsuccess = () => resolve(request.result);
    });
    expect(await must(registry.remove(second))).toBe(false);
    expect(await must(registry.listing())).toMatchObject({ leaving: 1, learners: [{ name: 'Anna' }] });
    expect(await must(registry.storeOf(second))).toBeNull();
    holder.close();
    await vi.waitFor(async () => expect(await databases()).not.toContain(name));
    expect(await must(registry.finishRemovals())).toBe(true);
    expect((await must(registry.listing())).leaving).toBe(0);
  });

  test('N18 wiping leaves no learner and no answer, lost databases and unreadable names included', async () => {
    const registry = tab();
    const { first, second } = await foundTwo(registry);
    for (const id of [first, second]) await answer(await storeOf(registry, id), 'a');
    await must(registry.setIdleMinutes(2));
    const db = new RegistryDatabase();
    await db.learners.put({ id: 'odd', name: 7, database: 'detent-learner-odd' });
    db.close();
    for (const name of ['detent-learner-odd', 'detent-learner-nobodys', 'of-another-page']) {
      const store = openStore(name);
      await must(store.deviceId());
      store.close();
    }
    expect(await must(registry.wipe())).toBe(true);
    expect(await databases()).toEqual(['detent-names', 'of-another-page']);
    expect(await must(registry.listing())).toMatchObject({ learners: [], unreadable: 0, idleMinutes: 2 });
    expect(await idsIn(alone())).toEqual([]);
  });
});

test('N2 N18 after wiping, from whichever tab, the device is founded anew with nothing on it', async () => {
  const [one, other] = [tab(), tab()];
  for (const wiping of [one, other]) {
    const { first } = await foundTwo(one);
    for (const registry of [one, other]) {
      const store = await storeOf(registry, first);
      expect(await idsIn(store)).toEqual(registry === one ? [] : ['a']);
      if (registry === one) await answer(store, 'a');
    }
    expect(await must(wiping.wipe())).toBe(true);
  }
});

describe('troubles', () => {
  test('N15 names written by a newer Detent are refused and left as they are', async () => {
    const raw = (version: number) =>
      new Promise<IDBDatabase>((resolve) => {
        const request = indexedDB.open('detent-names', version);
        request.onsuccess = () => resolve(request.result);
      });
    (await raw(9990)).close();
    expect(await tab().listing()).toMatchObject({ ok: false, error: { code: 'newer' } });
    expect(await must(hasNames())).toBe(true);
    const after = await raw(9990);
    expect([after.version, after.objectStoreNames.length]).toEqual([9990, 0]);
    after.close();
  });

  test('N15 where the browser gives no database, looking for names tells so', async () => {
    for (const verb of ['open', 'databases'] as const)
      vi.spyOn(indexedDB, verb).mockImplementation(() => {
        throw new DOMException('not here', 'SecurityError');
      });
    expect(await hasNames()).toMatchObject({ ok: false, error: { code: 'unavailable' } });
  });
});
