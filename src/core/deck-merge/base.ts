/**
 * What two decks that were edited apart have in common: the revision that both started from, as far as revision
 * numbers tell, and decks of variants made comparable with the deck that they were taken from.
 */
import type { Deck } from '../unit/deck.ts';
import { differencesBetween } from './differences.ts';

/** When nobody knows what both started from, they have only the id in common: whatever differs is to be chosen. */
export const nothingInCommon = ({ id }: Deck): Deck => ({ id }) as Deck;

/**
 * The revision that both sides most likely started from, among those that are known; null when there is none. A side
 * that was handed out since counts one number higher than what it started from. Where both have the same number and
 * one is that very revision, it may have become so in two places at once: then the one before it is taken, which
 * loses nothing, since what both have alike is no conflict.
 */
export function likelyBase(mine: Deck, theirs: Deck, known: readonly Deck[]): Deck | null {
  const atMost = (revision: number) =>
    known
      .filter((deck) => deck.revision <= revision)
      .reduce<Deck | null>((best, deck) => (best && best.revision >= deck.revision ? best : deck), null);
  const lower = Math.min(mine.revision, theirs.revision);
  const found = atMost(lower);
  if (!found || mine.revision !== theirs.revision) return found;
  const isOneOf = [mine, theirs].some((side) => differencesBetween(found, side).length === 0);
  return isOneOf ? (atMost(found.revision - 1) ?? found) : found;
}

/** The deck as if it were the variant: what a variant is called, and what it was taken from, stays its own. */
export function asVariant(deck: Deck, variant: Deck): Deck {
  const { language: _, ...rest } = deck;
  const { id, title, unit, revision, language, variantOf } = variant;
  return {
    ...rest,
    id,
    title,
    unit,
    revision,
    ...(language && { language }),
    ...(variantOf && { variantOf }),
  };
}
