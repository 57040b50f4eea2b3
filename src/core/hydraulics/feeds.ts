/**
 * The manual valve: which feeds a lever position leaves open, and which elements it feeds by hand. With no
 * manual valve the lever only tells the controller, so every feed stays open and none is fed by hand.
 */
import type { Deck, DeckLeverPosition, DeckSolenoid } from '../unit/deck.ts';

export interface Feeds {
  /** Elements a solenoid can reach; null means every one. */
  readonly open: readonly string[] | null;
  readonly byHand: readonly string[];
}

const ALL_OPEN: Feeds = { open: null, byHand: [] };

/** Lever positions of the deck that can command this row; empty with no lever. */
export function positionsFor(deck: Deck, row: string): DeckLeverPosition[] {
  return (deck.lever?.positions ?? []).filter((position) => position.rows.includes(row));
}

/**
 * The feeds in a lever position; null when the deck does not settle them: a manual valve whose position is
 * not named, not known, or does not say what it opens.
 */
export function feedsAt(deck: Deck, position: string | null): Feeds | null {
  if (deck.lever?.valve !== 'manual') return ALL_OPEN;
  const found = deck.lever.positions.find((candidate) => candidate.id === position);
  return found?.opens ? { open: found.opens, byHand: found.feeds ?? [] } : null;
}

/** Whether a solenoid can put pressure on the element here. */
export function isOpen(feeds: Feeds, element: string): boolean {
  return feeds.open === null || feeds.open.includes(element);
}

/** Friction elements of the train, the only ones that pressure applies. */
export function frictionOf(deck: Deck): string[] {
  return deck.train.elements.filter((element) => element.kind !== 'one-way').map((element) => element.id);
}

/** Elements among what the solenoid feeds, other feeds (converter clutch, line pressure) left out. */
export function elementsFedBy(deck: Deck, solenoid: DeckSolenoid): string[] {
  return frictionOf(deck).filter((id) => solenoid.feeds.includes(id));
}
