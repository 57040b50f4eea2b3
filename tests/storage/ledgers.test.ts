import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { ledgerOf } from '../../src/core/ledger/ledger.ts';
import type { Attempt } from '../../src/core/memory/attempt.ts';
import { WEIGHTS } from '../../src/core/memory/recall.ts';
import { weightsAt } from '../../src/core/plan/personal.ts';
import { randomFrom } from '../../src/core/random.ts';
import { Database } from '../../src/storage/database.ts';
import { noteLogChange } from '../../src/storage/ledgers.ts';
import { openStore, type Store } from '../../src/storage/store.ts';
import type { Told } from '../../src/storage/trouble.ts';
import { anAttempt, putAttempt } from '../attempts.ts';
import { aCorrection } from '../reports.ts';
import { given } from '../results.ts';

const must = async <T>(told: Told<T>): Promise<T> => given(await told);

const DAY = 20_000;
const opened: { close(): void }[] = [];
let count = 0;

afterEach(() => {
  vi.restoreAllMocks();
  for (const each of opened.splice(0)) each.close();
});

/** A store with so many answers of this device, given one an hour, put in past the store. */
async function withLog(answers: number) {
  const name = `ledgers-${++count}`;
  const store = openStore(name);
  const device = await must(store.deviceId());
  const db = new Database(name);
  opened.push(store, db);
  const random = randomFrom(count);
  const attempts = Array.from({ length: answers }, (_, i) =>
    anAttempt({
      id: `old-${i}`,
      device,
      sequence: i + 1,
      fact: `fact-${random.int(0, 30)}`,
      right: random.int(0, 3) > 0,
      at: (DAY * 24 + i) * 3_600_000,
      day: DAY + Math.floor(i / 24),
    }),
  );
  await db.attempts.bulkAdd(attempts);
  return { name, store, db, device, attempts };
}

/** Answers after the log. */
const later = (i: number, changes: Partial<Attempt> = {}) => {
  const {
    device: _device,
    sequence: _sequence,
    ...rest
  } = anAttempt({
    id: `new-${i}`,
    fact: `fact-${i % 7}`,
    at: (DAY * 24 + 10_000 + i) * 3_600_000,
    day: DAY + 500,
    ...changes,
  });
  return rest;
};

const readsOf = (spied: ReturnType<typeof vi.spyOn>) => spied.mock.results.length;

const whole = async (store: Store) => (await must(store.attemptsOf('demo'))).attempts;

describe('L3 with a kept ledger or without', () => {
  test('opening gives the fold of the whole log, however many answers came since it was kept', async () => {
    const { store, db } = await withLog(200);
    for (let i = 0; i < 150; i++) {
      await putAttempt(store, later(i));
      if (i % 30 === 0) expect(await must(store.ledgerOf('demo'))).toEqual(ledgerOf(await whole(store)));
    }
    expect(await db.ledgers.count()).toBe(1);
    expect(await must(store.ledgerOf('demo'))).toEqual(ledgerOf(await whole(store)));
  });

  test('it is used: a memory planted in the kept one is found again, and the log behind it is not read', async () => {
    const { store, db } = await withLog(200);
    await must(store.ledgerOf('demo'));
    const [row] = (await db.ledgers.toArray()) as { ledger: { facts: string[] } }[];
    row!.ledger.facts[0] = 'planted';
    await db.ledgers.put(row);
    await putAttempt(store, later(1));
    const all = vi.spyOn(IDBIndex.prototype, 'getAll');
    const { memory, answers } = await must(store.ledgerOf('demo'));
    expect([memory.has('planted'), answers]).toEqual([true, 201]);
    // The corrections of the deck, and the one answer since.
    expect(readsOf(all)).toBe(2);
  });

  test('a short log keeps none; each deck and each set of weights has its own', async () => {
    const short = await withLog(20);
    await must(short.store.ledgerOf('demo'));
    expect(await short.db.ledgers.count()).toBe(0);

    const { store, db, attempts } = await withLog(100);
    const own = weightsAt({ first: 0.4, growth: 0 });
    await db.attempts.bulkAdd(
      attempts.map((each) => ({ ...each, id: `${each.id}-b`, deck: 'other', sequence: each.sequence + 100 })),
    );
    expect(await must(store.ledgerOf('demo', own))).toEqual(ledgerOf(attempts, { weights: own }));
    expect(await must(store.ledgerOf('demo'))).toEqual(ledgerOf(attempts));
    expect((await must(store.ledgerOf('other'))).answers).toBe(100);
    expect(await db.ledgers.count()).toBe(3);
    for (const weights of [WEIGHTS, own])
      expect(await must(store.ledgerOf('demo', weights))).toEqual(ledgerOf(attempts, { weights }));
  });

  test('no room to keep it: opening goes on without', async () => {
    const { store, attempts } = await withLog(100);
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await must(store.ledgerOf('demo'))).toEqual(ledgerOf(attempts));
  });
});

describe('L4 a kept ledger is void', () => {
  test('after older answers of another device came in', async () => {
    const { store, db, attempts } = await withLog(100);
    await must(store.ledgerOf('demo'));
    const late = anAttempt({ id: 'late', device: 'tablet', day: DAY + 1, fact: 'fact-3' });
    await db.transaction('rw', db.attempts, db.settings, async () => {
      await db.attempts.add(late);
      await noteLogChange(db);
    });
    expect(await must(store.ledgerOf('demo'))).toEqual(ledgerOf([...attempts, late]));
  });

  test('after a correction, which voids answers already folded', async () => {
    const { store, attempts } = await withLog(100);
    await must(store.ledgerOf('demo'));
    const correction = aCorrection({ facts: ['fact-1', 'fact-2'] });
    await must(store.classroom.keepCorrections([correction]));
    const ledger = await must(store.ledgerOf('demo'));
    expect(ledger).toEqual(ledgerOf(attempts, { corrections: [correction] }));
    expect(ledger.answers).toBeLessThan(100);
  });

  test('as long as the clock is set back: the log is folded whole, and nothing is counted twice', async () => {
    const { store } = await withLog(100);
    await must(store.ledgerOf('demo'));
    for (let i = 0; i < 3; i++) {
      await putAttempt(store, later(i, { day: DAY - 30, at: (DAY - 30) * 86_400_000 + i }));
      const ledger = await must(store.ledgerOf('demo'));
      expect(ledger).toEqual(ledgerOf(await whole(store)));
      expect(ledger.answers).toBe(101 + i);
    }
    await putAttempt(store, later(9));
    expect(await must(store.ledgerOf('demo'))).toEqual(ledgerOf(await whole(store)));
  });

  test.each<[string, (ledger: Record<string, unknown>) => unknown]>([
    ['it is no ledger', () => 'nonsense'],
    ['its memories are no columns', (ledger) => ({ ...ledger, memory: {} })],
    ['it names more facts than it has memories of', (ledger) => ({ ...ledger, facts: ['a'] })],
    ['its end is missing', ({ end: _, ...ledger }) => ledger],
  ])('when %s', async (_, change) => {
    const { store, db, attempts } = await withLog(100);
    await must(store.ledgerOf('demo'));
    const [row] = (await db.ledgers.toArray()) as { ledger: Record<string, unknown> }[];
    await db.ledgers.put({ ...row!, ledger: change(row!.ledger) });
    expect(await must(store.ledgerOf('demo'))).toEqual(ledgerOf(attempts));
  });
});
