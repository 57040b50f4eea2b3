import { describe, expect, test } from 'vitest';
import { asVariant, likelyBase, nothingInCommon } from '../../../src/core/deck-merge/base.ts';
import { differencesBetween } from '../../../src/core/deck-merge/differences.ts';
import { mergeDecks } from '../../../src/core/deck-merge/merge.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { baseDeck } from '../../content/base.ts';

const start = baseDeck();
const revised = (revision: number, title: string): Deck => ({ ...start, revision, title });

describe('the revision both started from', () => {
  /** Revisions on this device, the two sides, and the base worked out by hand. */
  const rows: readonly (readonly [string, Deck[], Deck, Deck, number | null])[] = [
    ['neither was handed out since', [revised(3, 'start')], revised(3, 'mine'), revised(3, 'theirs'), 3],
    ['both were', [revised(3, 'start'), revised(4, 'mine')], revised(4, 'mine'), revised(4, 'theirs'), 3],
    ['only mine was', [revised(3, 'start'), revised(4, 'mine')], revised(4, 'mine'), revised(3, 'theirs'), 3],
    ['only theirs was', [revised(3, 'start')], revised(3, 'mine'), revised(4, 'theirs'), 3],
    ['mine was, twice', [revised(3, 'start'), revised(4, 'a'), revised(5, 'mine')], revised(5, 'mine'), revised(3, 'theirs'), 3],
    ['nothing is kept here', [], revised(3, 'mine'), revised(3, 'theirs'), null],
    ['only what was handed out later is kept', [revised(5, 'mine')], revised(5, 'mine'), revised(3, 'theirs'), null],
    ['nothing before it is kept', [revised(4, 'mine')], revised(4, 'mine'), revised(4, 'theirs'), 4],
  ]; // biome-ignore format: a table reads across
  test.each(rows)('%s', (_, known, mine, theirs, revision) => {
    expect(likelyBase(mine, theirs, known)?.revision ?? null).toBe(revision);
  });
});

test('with nothing in common whatever differs is to be chosen, and what is alike is not', () => {
  const theirs: Deck = { ...start, title: 'Another title' };
  const { conflicts } = mergeDecks(nothingInCommon(start), start, theirs);
  expect(conflicts.map(({ id }) => id)).toEqual(['title']);
});

test('a deck as its variant differs only in facts', () => {
  const variant: Deck = {
    ...start,
    id: 'other',
    title: 'Other',
    unit: 'Other',
    variantOf: { deck: start.id, revision: start.revision },
    train: {
      ...start.train,
      gearsets: start.train.gearsets.with(0, { ...start.train.gearsets[0]!, planets: 3 }),
    },
  };
  const differences = differencesBetween(asVariant(start, variant), variant);
  expect(differences.map(({ path }) => path.at(-1)?.field)).toEqual(['planets']);
});
