/**
 * Making a never-seen unit, held against solving it: how many times its chart could be solved in the time it takes
 * to find it. The floor is a fifth of a second by the clock for each, so five units a second.
 */
import { loadDeck } from '../../src/content/load.ts';
import { makeUnseenDeck } from '../../src/core/transfer/index.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import type { Suite } from './suite.ts';

/** One of every shape at least. */
const SEEDS = Array.from({ length: 20 }, (_, seed) => seed);
const A_FIFTH_OF_A_SECOND = 200;

const decks = SEEDS.map(makeUnseenDeck);

function waitFor(milliseconds: number) {
  const end = performance.now() + milliseconds;
  while (performance.now() < end);
}

export const transfer: readonly Suite[] = [
  {
    title: `never-seen units, ${SEEDS.length} seeds`,
    count: SEEDS.length,
    unit: 'unit',
    subject: { name: 'made from a seed', run: () => SEEDS.map(makeUnseenDeck) },
    baselines: [
      {
        name: 'a fifth of a second, by the clock',
        run: () => waitFor(A_FIFTH_OF_A_SECOND),
        count: 1,
        atLeast: 1,
      },
      { name: 'its chart solved, with torques', run: () => decks.map(makeUnit) },
    ],
    agree() {
      for (const [index, deck] of decks.entries()) {
        if (JSON.stringify(makeUnseenDeck(SEEDS[index]!)) !== JSON.stringify(deck))
          throw new Error(`seed ${SEEDS[index]} gave two decks`);
        if (!loadDeck(JSON.stringify(deck)).ok)
          throw new Error(`the deck of seed ${SEEDS[index]} is refused`);
      }
    },
  },
];
