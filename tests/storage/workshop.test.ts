import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test } from 'vitest';
import type { Result } from '../../src/core/result.ts';
import { Database } from '../../src/storage/database.ts';
import { openStore, type Store } from '../../src/storage/store.ts';
import type { StoreTrouble } from '../../src/storage/trouble.ts';
import { noteRow, type StoredDraft, type StoredNote } from '../../src/storage/workshop.ts';

const opened: Store[] = [];
let count = 0;
const open = (name = `workshop-${++count}`): Store => {
  const store = openStore(name);
  opened.push(store);
  return store;
};
afterEach(() => {
  for (const store of opened.splice(0)) store.close();
});
const must = async <T>(told: Promise<Result<T, StoreTrouble>>): Promise<T> => {
  const result = await told;
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.detail}`);
  return result.value;
};
const draft = (changes: Partial<StoredDraft> = {}): StoredDraft => ({
  id: 'a',
  unit: 'Kestrel',
  text: '{"detentDeck":1}',
  savedAt: 5,
  ...changes,
});

describe('decks that are being written', () => {
  test('the newest state takes the place of the one before, and is there when opened anew', async () => {
    const { workshop } = open('workshop-anew');
    await must(workshop.keep(draft()));
    await must(workshop.keep(draft({ text: '{"detentDeck":1,"unit":"K"}', savedAt: 6 })));
    opened.at(-1)!.close();
    const again = open('workshop-anew').workshop;
    expect(await must(again.draft('a'))).toEqual(draft({ text: '{"detentDeck":1,"unit":"K"}', savedAt: 6 }));
    expect(await must(again.drafts())).toHaveLength(1);
  });

  test('latest saved first; other settings are no drafts', async () => {
    const store = open();
    await must(store.chooseDeck('workshop-draft'));
    await must(store.workshop.keep(draft({ id: 'b', savedAt: 2 })));
    await must(store.workshop.keep(draft({ id: 'a', savedAt: 9 })));
    expect((await must(store.workshop.drafts())).map(({ id }) => id)).toEqual(['a', 'b']);
    await must(store.workshop.remove('a'));
    expect((await must(store.workshop.drafts())).map(({ id }) => id)).toEqual(['b']);
    expect(await must(store.workshop.draft('a'))).toBeUndefined();
    expect(await must(store.chosenDeck())).toBe('workshop-draft');
  });

  test('who writes is remembered', async () => {
    const { workshop } = open();
    expect(await must(workshop.writer())).toBe('');
    await must(workshop.nameWriter('Ines Okafor'));
    expect(await must(workshop.writer())).toBe('Ines Okafor');
  });

  test('what cannot be read counts as none and is left as it is', async () => {
    const { workshop } = open('workshop-foreign');
    await must(workshop.keep(draft()));
    const db = new Database('workshop-foreign');
    await db.open();
    await db.settings.put({ key: 'workshop-draft:x', value: { id: 'x', size: 3 } });
    expect((await must(workshop.drafts())).map(({ id }) => id)).toEqual(['a']);
    expect(await must(workshop.draft('x'))).toBeUndefined();
    expect(await db.settings.get('workshop-draft:x')).toBeDefined();
    db.close();
  });
});

describe('bench notes', () => {
  const note = (changes: Partial<StoredNote> = {}): StoredNote => ({
    id: 'n1',
    unit: 'Kestrel',
    part: 'washer',
    seenFrom: 'rear',
    text: 'tabs up',
    thickness: { value: '1.78', unit: 'mm' },
    photo: 'data:image/jpeg;base64,/9j/2Q==',
    usedIn: null,
    madeAt: 5,
    ...changes,
  });

  test('each state takes the place of the one before; they come in the order they were taken', async () => {
    const { workshop } = open();
    await must(workshop.keepNote(note({ id: 'n2', madeAt: 9 })));
    await must(workshop.keepNote(note()));
    await must(workshop.keepNote(note({ text: 'tabs down' })));
    expect((await must(workshop.notes())).map(({ id, text }) => [id, text])).toEqual([
      ['n1', 'tabs down'],
      ['n2', 'tabs up'],
    ]);
    await must(workshop.removeNote('n1'));
    expect(await must(workshop.notes())).toEqual([note({ id: 'n2', madeAt: 9 })]);
    expect(await must(workshop.drafts())).toEqual([]);
  });

  test.each([
    'data:text/html;base64,PGI+',
    'https://example.org/a.jpg',
    'data:image/svg+xml;base64,PHN2Zz4=',
  ])('only a picture is kept as one: %s', (photo) => {
    expect(noteRow.safeParse(note({ photo })).success).toBe(false);
  });
});
