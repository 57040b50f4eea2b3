import { describe, expect, test } from 'vitest';
import { loadDeck } from '../../../src/content/load.ts';
import type { DeckDraft } from '../../../src/core/workshop/draft.ts';
import { deckIdFrom, finishDraft, PARTS, writeDeck } from '../../../src/core/workshop/finish.ts';
import { deckOf, PUBLISHED, shippedDecks } from '../../units.ts';

describe('what a deck file would say of a draft', () => {
  test.each<[string, DeckDraft, unknown]>([
    ['blanks are left out', { unit: 'K', title: ' ', sources: [{ id: '' }], cautions: [] }, { id: 'k', title: 'K', unit: 'K' }],
    ['words lose the blanks around them', { unit: ' Kestrel 7 ' }, { id: 'kestrel-7', title: 'Kestrel 7', unit: 'Kestrel 7' }],
    ['counts become numbers', { id: 'a', title: 't', train: { gearsets: [{ sun: { teeth: '43' }, planets: '4' }] } }, { id: 'a', title: 't', train: { gearsets: [{ sun: { teeth: 43 }, planets: 4 }] } }],
    ['a count that is none stays as it was typed', { id: 'a', title: 't', train: { gearsets: [{ sun: { teeth: '4e' } }] } }, { id: 'a', title: 't', train: { gearsets: [{ sun: { teeth: '4e' } }] } }],
    ['commas and true minus signs in figures', { id: 'a', title: 't', chart: { ranges: [{ id: 'R', ratio: '−1,800' }] } }, { id: 'a', title: 't', chart: { ranges: [{ id: 'R', ratio: '-1.800' }] } }],
    ['commas in words stay', { id: 'a', title: 'One, two' }, { id: 'a', title: 'One, two' }],
    ['a row with nothing on is a row', { id: 'a', title: 't', chart: { neutral: [{ id: 'N', applied: [] }] } }, { id: 'a', title: 't', chart: { neutral: [{ id: 'N', applied: [] }] } }],
    ['a manual valve that opens nothing says so', { id: 'a', title: 't', lever: { valve: 'manual', positions: [{ id: 'N', rows: ['N'] }] } }, { id: 'a', title: 't', lever: { valve: 'manual', positions: [{ id: 'N', rows: ['N'], opens: [] }] } }],
    ['without a valve there is nothing to open', { id: 'a', title: 't', lever: { valve: 'none', positions: [{ id: 'N', rows: ['N'], opens: ['B1'], feeds: [] }] } }, { id: 'a', title: 't', lever: { valve: 'none', positions: [{ id: 'N', rows: ['N'] }] } }],
  ])('%s', (_, draft, expected) => {
    expect(finishDraft(draft)).toEqual(expected);
  }); // biome-ignore format: a table reads across

  test('a whole deck comes out as it went in', () => {
    for (const deck of [...shippedDecks(), ...PUBLISHED.map(deckOf)]) {
      // Through text, as a draft is stored: what is undefined is not there.
      const plain = JSON.parse(JSON.stringify(deck)) as Record<string, unknown>;
      delete plain.$schema;
      expect(finishDraft(plain as DeckDraft)).toEqual(plain);
    }
  });

  test('the parts of a deck stand in their order, whatever order they were written in', () => {
    const [deck] = shippedDecks();
    const backward = Object.fromEntries(Object.entries(deck!).reverse()) as DeckDraft;
    const { $schema: _, ...made } = finishDraft(backward);
    const keys = Object.keys(made);
    expect(loadDeck(writeDeck(made)).ok).toBe(true);
    expect(keys).toEqual(PARTS.filter((part) => keys.includes(part)));
  });

  test.each([
    ['Kestrel 7', 'kestrel-7'],
    ['  Übergang (Vierte Ausgabe)! ', 'ubergang-vierte-ausgabe'],
    ['7', '7'],
    ['???', ''],
    ['変速機', ''],
  ])('an id from %j: %j', (words, id) => {
    expect(deckIdFrom(words)).toBe(id);
  });
});
