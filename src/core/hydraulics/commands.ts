/**
 * The solenoid currents a charted row needs in a lever position. Only what follows from the row is said: a
 * solenoid is null when it reaches no element here, shares each of them with another solenoid, or feeds
 * elements that ask for both currents, or only elements that an interlock keeps off anyway.
 */
import type { Deck, DeckRow, DeckSolenoid } from '../unit/deck.ts';
import { elementsFedBy, feedsAt, isOpen } from './feeds.ts';
import { blockedBy } from './interlocks.ts';
import type { Currents } from './pressurised.ts';
import { currentFor } from './solenoid.ts';

/**
 * Current of every solenoid for this row, null where the row does not settle it. `position` is one that can
 * command the row; null where the deck has no manual valve.
 */
export function currentsFor(deck: Deck, row: DeckRow, position: string | null): Currents {
  const feeds = feedsAt(deck, position);
  const blocked = blockedBy(deck, row.applied);
  const decides = (solenoid: DeckSolenoid, element: string) =>
    feeds !== null &&
    isOpen(feeds, element) &&
    !blocked.includes(element) &&
    !feeds.byHand.includes(element) &&
    deck.solenoids!.every((other) => other === solenoid || !other.feeds.includes(element));
  return Object.fromEntries(
    (deck.solenoids ?? []).map((solenoid) => {
      const wanted = elementsFedBy(deck, solenoid)
        .filter((element) => decides(solenoid, element))
        .map((element) => currentFor(solenoid, row.applied.includes(element) ? 'full' : 'none'));
      const [first] = wanted;
      return [solenoid.id, first && wanted.every((current) => current === first) ? first : null];
    }),
  );
}
