/** What things are called: the deck's name, or its other name in the language of the page. */
import { describe, expect, it } from 'vitest';
import { nameAlone, thing } from '../../src/core/questions/phrase.ts';
import type { Deck } from '../../src/core/unit/deck.ts';
import { makeSay } from '../../src/words/words.ts';

const deckIn = (language: string | undefined): Deck => ({
  detentDeck: 1,
  id: 'two-brakes',
  title: 'Two brakes',
  unit: 'Two brakes',
  revision: 1,
  language,
  train: {
    input: 'in',
    output: 'out',
    gearsets: [],
    elements: [
      { id: 'B1', kind: 'brake', between: ['in', 'case'] },
      { id: 'B3', kind: 'brake', between: ['out', 'case'], name: 'low-reverse brake' },
    ],
  },
  chart: { ranges: [], neutral: [{ id: 'P', name: 'park', applied: [] }] },
  aliases: [
    { of: 'element:B3', names: ['reverse brake'] },
    { of: 'element:B3', language: 'de-AT', names: ['Rückwärtsbremse', 'Bremse hinten'] },
    { of: 'neutral:P', language: 'de', names: ['Parken'] },
    { of: 'element:B1', language: 'es', names: ['freno de entrada'] },
  ],
});

describe('names by language', () => {
  it.each([
    { page: 'en', deck: undefined, said: 'low-reverse brake' },
    { page: 'de', deck: undefined, said: 'Rückwärtsbremse' },
    { page: 'es', deck: undefined, said: 'low-reverse brake' },
    { page: 'de', deck: 'en-GB', said: 'Rückwärtsbremse' },
    // The deck's own name comes before its slang, where its language is the page's.
    { page: 'de', deck: 'de', said: 'low-reverse brake' },
  ] as const)('$page page, deck in $deck', ({ page, deck, said }) => {
    expect(makeSay(deckIn(deck), page)(thing('element', 'B3'))).toBe(`${said} B3`);
  });

  it('its name alone, where the id stands beside it', () => {
    expect(makeSay(deckIn(undefined), 'de')(nameAlone('element', 'B3'))).toBe('Rückwärtsbremse');
    expect(makeSay(deckIn(undefined), 'en')(nameAlone('element', 'B3'))).toBe('low-reverse brake');
  });

  it('a neutral row, which is spoken of as a range', () => {
    expect(makeSay(deckIn('en'), 'de')(thing('range', 'P'))).toBe('Parken');
  });

  it('another name serves where the deck has none', () => {
    const say = (page: 'es' | 'de') => makeSay(deckIn(undefined), page)(thing('element', 'B1'));
    expect(say('es')).toBe('freno de entrada B1');
    expect(say('de')).toBe('B1');
  });
});
