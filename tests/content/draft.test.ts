import { describe, expect, test } from 'vitest';
import { checkDraft } from '../../src/content/draft.ts';
import { loadDeck, parseDeck } from '../../src/content/load.ts';
import type { Deck } from '../../src/core/unit/deck.ts';
import type { DeckDraft } from '../../src/core/workshop/draft.ts';
import { finishDraft, PARTS, writeDeck } from '../../src/core/workshop/finish.ts';
import { shippedDecks } from '../units.ts';
import { baseDeck } from './base.ts';

const told = (draft: DeckDraft) => {
  const { missing, found, deck } = checkDraft(draft);
  return {
    missing: missing.map(({ place }) => place.pointer),
    found: found.map(({ rule, place }) => `${rule} ${place.pointer}`),
    ready: deck !== null,
  };
};

describe('a deck that is being written', () => {
  test('with nothing in it, everything a deck needs is missing and nothing is wrong', () => {
    const { missing, found, ready } = told({ detentDeck: 1, revision: 1 });
    expect(missing).toEqual(expect.arrayContaining(['/id', '/title', '/unit', '/train', '/chart']));
    expect(found).toEqual([]);
    expect(ready).toBe(false);
  });

  test('a whole deck is ready, and told the same as the file', () => {
    for (const deck of shippedDecks().slice(0, 1)) {
      const { $schema: _, ...draft } = deck as Deck & { $schema?: string };
      const parsed = parseDeck(writeDeck(deck));
      if (!parsed.ok) throw new Error('a shipped deck has no shape');
      const check = checkDraft(draft as DeckDraft);
      expect(check.missing).toEqual([]);
      expect(check.found.map(({ rule }) => rule).sort()).toEqual(
        parsed.value.findings.map(({ rule }) => rule).sort(),
      );
      expect(loadDeck(writeDeck(check.deck)).ok).toBe(true);
    }
  });

  test('what is ready is what loading takes, whichever part was taken away or emptied', () => {
    const deck = baseDeck() as DeckDraft;
    for (const part of PARTS) {
      const { [part]: _, ...without } = deck;
      for (const draft of [without, { ...deck, [part]: 'x' }] as DeckDraft[])
        expect(told(draft).ready).toBe(loadDeck(writeDeck(finishDraft(draft))).ok);
    }
  });

  test('a contradiction of train and chart shows though the deck has no name and other parts are half written', () => {
    const { train, chart } = baseDeck();
    chart.ranges[0].applied = [];
    const draft: DeckDraft = {
      train,
      chart,
      solenoids: [{ id: 'SA' }],
      seats: [{ id: 'T1', kind: 'thrust-bearing' }],
    };
    const { missing, found, ready } = told(draft);
    expect(missing).toEqual(expect.arrayContaining(['/id', '/solenoids/0/kind', '/seats/0/faces']));
    expect(found).toContain('range-drives /chart/ranges/0/applied');
    expect(ready).toBe(false);
  });

  test('a name that may be in a part left out is not told; one that is nowhere is, once all parts are there', () => {
    const deck = baseDeck() as DeckDraft;
    const cautions = [
      { id: 'c', hazard: 'air', text: 'Mind.', attachedTo: ['solenoid:S1', 'solenoid:nobody'] },
    ];
    const solenoids = [...(deck.solenoids ?? []), { id: 'SX' }];
    expect(
      told({ ...deck, solenoids, cautions }).found.filter((finding) => /cautions-attached/.test(finding)),
    ).toEqual([]);
    expect(told({ ...deck, cautions }).found).toContain('cautions-attached /cautions/0/attachedTo/1');
  });

  test('errors come before warnings', () => {
    const deck = baseDeck();
    deck.chart.ranges[0].applied = [];
    deck.aliases = [{ of: 'element:C1', names: ['C2'] }];
    const severities = checkDraft(deck).found.map(({ severity }) => severity);
    expect(severities).toContain('warning');
    expect(severities.toSorted()).toEqual(severities);
  });

  test('while train or chart lack their shape no rule is asked', () => {
    const deck = baseDeck();
    deck.train.gearsets[0].sun.teeth = '4e';
    deck.chart.ranges[0].applied = [];
    const { missing, found } = told(deck);
    expect(missing).toEqual(['/train/gearsets/0/sun/teeth']);
    expect(found).toEqual([]);
  });
});
