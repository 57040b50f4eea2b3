/** Opening a deck file: checked in full, and solved, beside only parsing its text. */
import { readFileSync } from 'node:fs';
import { loadDeck } from '../../src/content/load.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import type { Suite } from './suite.ts';

const text = readFileSync(new URL('../../decks/kestrel-7.json', import.meta.url), 'utf8');

const opened = () => {
  const loaded = loadDeck(text);
  if (!loaded.ok) throw new Error('the deck is refused');
  return makeUnit(loaded.value.deck);
};

export const deck: readonly Suite[] = [
  {
    title: `A deck of ${Math.round(text.length / 1000)} kB`,
    count: 1,
    unit: 'deck',
    subject: { name: 'every check, and solved', run: opened },
    baselines: [{ name: 'its text parsed as JSON', run: () => JSON.parse(text) }],
    agree: () => {
      if (opened().deck.id !== JSON.parse(text).id) throw new Error('another deck');
    },
  },
];
