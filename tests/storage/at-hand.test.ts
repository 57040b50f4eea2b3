/** The question at hand, kept for the next start. docs/spec/storage.md H1 to H3. */
import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test } from 'vitest';
import { type Drill, startDrill } from '../../src/core/memory/drill.ts';
import { ask } from '../../src/core/questions/ask.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import { namesOf } from '../../src/core/questions/names.ts';
import type { Question } from '../../src/core/questions/question.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import type { AtHand } from '../../src/storage/at-hand.ts';
import { peekDrill, type Reader } from '../../src/storage/peek.ts';
import { openStore, type Store } from '../../src/storage/store.ts';
import { shippedDecks } from '../units.ts';

const deck = shippedDecks()[0]!;
const unit = makeUnit(deck);
const text = JSON.stringify(deck);
const asked = FAMILIES.flatMap((family) => ask(unit, family, 3) ?? []);
const bare = asked.find((question) => !question.drawing)!;
const drawn = asked.find((question) => question.drawing)!;

const drillOf = (question: Question, change: Partial<Drill> = {}): Drill => ({
  ...startDrill({
    id: 'drill-1',
    deck,
    day: 20_000,
    minutes: 10,
    items: [question, drawn].map(({ fact, family, seed }) => ({ fact, family, seed })),
    at: 1_700_000_000_000,
  }),
  ...change,
});

const OWN: Reader = { build: 'build-1', language: 'en' };

const kept = (question: Question, change: Partial<AtHand> = {}): AtHand => ({
  build: 'build-1',
  language: 'en',
  said: { '{"key":"drill.check"}': 'Check' },
  drill: 'drill-1',
  index: 0,
  question,
  names: namesOf(deck),
  ...change,
});

const opened: Store[] = [];
let count = 0;

/** A device on which the drill is under way, and its question kept. */
async function device(question: Question) {
  const name = `at-hand-${++count}`;
  const store = openStore(name);
  opened.push(store);
  await store.saveDeck({ id: deck.id, revision: deck.revision, text, loadedAt: 1 });
  await store.chooseDeck(deck.id);
  await store.beginDrill(drillOf(question));
  expect(await store.keepAtHand(kept(question))).toMatchObject({ ok: true });
  return { store, peek: (reader = OWN) => peekDrill(reader, name) };
}

afterEach(() => {
  for (const store of opened.splice(0)) store.close();
});

describe('H1 a short cut to the question, and nothing more', () => {
  test('without a drawing the deck is not read', async () => {
    const { peek } = await device(bare);
    expect(await peek()).toEqual({ drill: drillOf(bare), atHand: kept(bare), deckText: undefined });
  });

  test('a drawing is made from the deck, which comes along', async () => {
    const { peek } = await device(drawn);
    expect(await peek()).toEqual({ drill: drillOf(drawn), atHand: kept(drawn), deckText: text });
  });

  test('it lasts while the answer is being entered', async () => {
    const { store, peek } = await device(bare);
    const drill = drillOf(bare, { draft: { form: 'one', pick: null }, spentMs: 900 });
    await store.saveDraft(drill);
    expect(await peek()).toMatchObject({ drill, atHand: { index: 0 } });
  });

  test('it goes into no backup', async () => {
    const { store } = await device(bare);
    const contents = await store.backup();
    expect(contents.ok && JSON.stringify(contents.value)).not.toContain('build-1');
  });
});

describe('H2 void as soon as it may be another question', () => {
  test.each<[why: string, reader: Reader, change: (store: Store) => Promise<unknown>]>([
    ['another build of the program asks', { ...OWN, build: 'build-2' }, async () => {}],
    ['the page is in another language', { ...OWN, language: 'de' }, async () => {}],
    ['the drill has gone on', OWN, (store) => store.saveDraft(drillOf(bare, { index: 1 }))],
    ['another drill is under way', OWN, (store) => store.beginDrill(drillOf(bare, { id: 'drill-2' }))],
    ['the deck was stored anew, its number as before', OWN, (store) =>
      store.saveDeck({ id: deck.id, revision: deck.revision, text, loadedAt: 2 })],
  ])('%s', async (_, reader, change) => {
    const { store, peek } = await device(bare);
    await change(store);
    expect(await peek(reader)).toMatchObject({ atHand: undefined, deckText: text });
  }); // biome-ignore format: a table reads across

  test('a backup brought a later revision of the deck', async () => {
    const { store, peek } = await device(bare);
    const later = { ...deck, revision: deck.revision + 1 };
    const contents = await store.backup();
    if (!contents.ok) throw new Error(contents.error.code);
    const decks = [{ id: deck.id, revision: later.revision, text: JSON.stringify(later), loadedAt: 2 }];
    expect(await store.restore({ ...contents.value, decks })).toMatchObject({
      ok: true,
      value: { decks: 1 },
    });
    expect(await peek()).toMatchObject({ atHand: undefined, deckText: JSON.stringify(later) });
  });

  test.each<[what: string, AtHand]>([
    ['of another drill', kept(bare, { drill: 'drill-2' })],
    ['of another place', kept(bare, { index: 1 })],
    ['of another fact', kept({ ...bare, fact: 'range:1/elements' })],
    ['of another family', kept({ ...bare, family: 'range-elements' })],
    ['by another seed', kept({ ...bare, seed: bare.seed + 1 })],
    ['of another deck', kept({ ...bare, deck: { ...bare.deck, id: 'dunlin' } })],
    ['of another revision', kept({ ...bare, deck: { ...bare.deck, revision: 99 } })],
  ])('one %s is not kept', async (_, other) => {
    const { store, peek } = await device(bare);
    await store.keepAtHand(other);
    expect((await peek())?.atHand).toEqual(kept(bare));
  });
});

test.each([null, 7, {}, { build: 'build-1' }, { build: 'build-1', question: null }])(
  'H3 %j in its place is none, and the deck is read',
  async (value) => {
    const { peek } = await device(bare);
    const db = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open(`at-hand-${count}`);
      request.onsuccess = () => resolve(request.result);
    });
    const writing = db.transaction('settings', 'readwrite');
    writing.objectStore('settings').put({ key: 'question-at-hand', value });
    await new Promise((resolve) => {
      writing.oncomplete = resolve;
    });
    db.close();
    expect(await peek()).toMatchObject({ drill: drillOf(bare), atHand: undefined, deckText: text });
  },
);
