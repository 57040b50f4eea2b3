/**
 * The solenoid currents a charted row needs. Only what follows from the row is said: a solenoid is null when
 * the row leaves it open (in a position that commands the row it reaches no element, or shares each of them
 * with another solenoid) and when its elements, or two lever positions, ask for both currents.
 */
import type { Deck, DeckRow, DeckSolenoid } from '../unit/deck.ts';
import { elementsFedBy, feedsAt, isOpen, positionsFor } from './feeds.ts';
import type { Currents } from './pressurised.ts';
import { type Current, currentFor } from './solenoid.ts';

function wantedAt(deck: Deck, solenoid: DeckSolenoid, row: DeckRow, position: string | null): Set<Current> {
  const feeds = feedsAt(deck, position);
  const alone = elementsFedBy(deck, solenoid).filter(
    (element) =>
      feeds &&
      isOpen(feeds, element) &&
      !feeds.byHand.includes(element) &&
      deck.solenoids!.every((other) => other === solenoid || !other.feeds.includes(element)),
  );
  return new Set(
    alone.map((element) => currentFor(solenoid, row.applied.includes(element) ? 'full' : 'none')),
  );
}

/** Current of every solenoid in this row of the chart, null where the row does not settle it. */
export function currentsFor(deck: Deck, row: DeckRow): Currents {
  const positions =
    deck.lever?.valve === 'manual' ? positionsFor(deck, row.id).map((position) => position.id) : [null];
  return Object.fromEntries(
    (deck.solenoids ?? []).map((solenoid) => {
      const wanted = positions.map((position) => wantedAt(deck, solenoid, row, position));
      const asked = new Set(wanted.flatMap((currents) => [...currents]));
      const settled = asked.size === 1 && wanted.every((currents) => currents.size === 1);
      return [solenoid.id, settled ? [...asked][0]! : null];
    }),
  );
}
