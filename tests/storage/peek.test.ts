import 'fake-indexeddb/auto';
import { Dexie } from 'dexie';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Drill, startDrill } from '../../src/core/memory/drill.ts';
import type { Draft } from '../../src/core/questions/draft.ts';
import { isOpenDrill, peekDrill } from '../../src/storage/peek.ts';
import { drillRow } from '../../src/storage/rows.ts';
import { openStore } from '../../src/storage/store.ts';

const drill = startDrill({
  id: 'drill-1',
  deck: { id: 'kestrel', revision: 3 },
  day: 20_000,
  minutes: 10,
  items: [
    { fact: 'range:1/elements', family: 'range-elements', seed: 4 },
    { fact: 'range:2/elements', family: 'range-elements', seed: 5 },
  ],
  at: 1_700_000_000_000,
});

const reader = { build: 'build-1', language: 'en' };

const DRAFTS: readonly Draft[] = [
  { form: 'set', picks: ['C1'] },
  { form: 'one', pick: null },
  { form: 'one', pick: 'a' },
  { form: 'order', order: [] },
  { form: 'number', text: '2,8' },
  { form: 'pair', pairs: { a: 'b' } },
  { form: 'fill', cells: { 'a/b': 'on' } },
  { form: 'place', spot: null },
];

describe('a drill under way', () => {
  test.each(DRAFTS)('as stored, with $form begun', (draft) => {
    const row = { ...drill, draft };
    expect(drillRow.parse(row)).toEqual(row);
    expect(isOpenDrill(row)).toBe(true);
  });

  test('is none once its question is checked, or when it is over', () => {
    expect(isOpenDrill({ ...drill, verdict: { right: true, slipUps: [], missed: [] } })).toBe(false);
    expect(isOpenDrill({ ...drill, index: 2 })).toBe(false);
  });

  test('nothing passes that the store would not read', () => {
    const odd = fc.oneof(fc.anything(), fc.constantFrom(null, -1, 0.5, '', [], {}, Number.NaN, Infinity));
    const places = fc.constantFrom<readonly (string | number)[]>(
      ...Object.keys(drill).map((key) => [key]),
      ['items', 0],
      ['items', 0, 'seed'],
      ['items', 1, 'extra'],
      ['draft', 'form'],
      ['draft', 'picks'],
      ['draft', 'picks', 0],
      ['draft', 'extra'],
      ['extra'],
    );
    let refused = 0;
    fc.assert(
      fc.property(places, odd, fc.constantFrom(...DRAFTS), (place, value, draft) => {
        const row: Record<string | number, unknown> = structuredClone({ ...drill, draft } as object) as never;
        let at = row;
        for (const step of place.slice(0, -1)) at = (at[step] ?? {}) as typeof row;
        at[place.at(-1)!] = value;
        if (isOpenDrill(row)) expect(drillRow.safeParse(row).success).toBe(true);
        else refused++;
      }),
      { numRuns: 3000 },
    );
    expect(refused).toBeGreaterThan(1000);
  });
});

describe('the database is looked into', () => {
  const filled = async (name: string, change: Partial<Drill> = {}, chosen = 'kestrel') => {
    const store = openStore(name);
    await store.saveDeck({ id: 'kestrel', revision: 3, text: '{"id":"kestrel"}', loadedAt: 1 });
    await store.chooseDeck(chosen);
    await store.beginDrill({ ...drill, ...change });
    return store;
  };

  test('and gives drill and deck as the store does', async () => {
    const store = await filled('peek-1');
    const peeked = await peekDrill(reader, 'peek-1');
    expect(peeked).toEqual({ drill, atHand: undefined, deckText: '{"id":"kestrel"}' });
    expect(await store.currentDrill()).toEqual({ ok: true, value: peeked!.drill });
  });

  test('while the store goes on with it', async () => {
    const store = await filled('peek-2');
    await peekDrill(reader, 'peek-2');
    expect(await store.saveDraft({ ...drill, draft: DRAFTS[0]! })).toMatchObject({ ok: true });
    expect((await peekDrill(reader, 'peek-2'))?.drill.draft).toEqual(DRAFTS[0]);
  });

  test('another deck is chosen, or its deck is gone: left to the store', async () => {
    await filled('peek-3', {}, 'dunlin');
    expect(await peekDrill(reader, 'peek-3')).toBeUndefined();
    await filled('peek-4', { deck: 'dunlin' }, 'dunlin');
    expect(await peekDrill(reader, 'peek-4')).toBeUndefined();
  });

  test('a database that is not there is not made', async () => {
    expect(await peekDrill(reader, 'peek-none')).toBeUndefined();
    expect(await Dexie.getDatabaseNames()).not.toContain('peek-none');
  });

  test('something else of that name is left alone', async () => {
    const other = new Dexie('peek-other');
    other.version(1).stores({ things: 'id' });
    await other.open();
    expect(await peekDrill(reader, 'peek-other')).toBeUndefined();
    expect(other.tables.map(({ name }) => name)).toEqual(['things']);
    other.close();
  });
});
