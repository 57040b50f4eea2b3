import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { storeLater } from '../../src/app/store-later.ts';
import { openStore } from '../../src/storage/store.ts';

const deck = { id: 'a', revision: 1, text: '{}', loadedAt: 1 };

function later(name: string) {
  let opened = 0;
  const store = storeLater(async () => {
    opened++;
    return openStore(name);
  });
  return { store, opened: () => opened };
}

test('nothing is opened before the first verb, and then once', async () => {
  const { store, opened } = later('later-once');
  expect(opened()).toBe(0);
  const [saved, decks] = [store.saveDeck(deck), store.decks()];
  expect(await saved).toEqual({ ok: true, value: undefined });
  expect((await decks).ok).toBe(true);
  expect(opened()).toBe(1);
});

test('it does what the store does, its folders included', async () => {
  const { store } = later('later-same');
  await store.saveDeck(deck);
  expect(await store.decks()).toEqual(await openStore('later-same').decks());
  expect(await store.workshop.keep({ id: 'd', unit: 'u', text: '{}', savedAt: 2 })).toMatchObject({
    ok: true,
  });
  expect(await store.workshop.drafts()).toEqual(await openStore('later-same').workshop.drafts());
});

test('a verb is the same one each time, and awaiting the store waits for nothing', async () => {
  const { store, opened } = later('later-still');
  expect(store.decks).toBe(store.decks);
  expect(await store).toBe(store);
  expect(opened()).toBe(0);
});
