import type { Deck } from '../../core/unit/deck.ts';
import { type DeckSeat, inOrder, SIDES } from '../../core/unit/seats.ts';
import type { Rule } from './rule.ts';

/** Where on the line the foremost part that it touches stands; null when it touches none. */
function startOf({ shaftLine = [] }: Deck, { faces }: DeckSeat): number | null {
  const touched = SIDES.map((side) => shaftLine.findIndex(({ id }) => id === faces[side].touches));
  const known = touched.filter((index) => index >= 0);
  return known.length < 2 ? null : Math.min(...known);
}

/** Places count from front to rear, as the parts of the line do. */
export const seatsInLine: Rule = {
  id: 'seats-in-line',
  severity: 'warning',
  check(deck) {
    const placed = inOrder(deck.seats ?? []).flatMap((seat) => {
      const start = startOf(deck, seat);
      return start === null ? [] : [{ seat, start }];
    });
    return placed.slice(1).flatMap(({ seat, start }, index) => {
      const before = placed[index]!;
      return start < before.start
        ? [
            {
              at: ['seats', deck.seats!.indexOf(seat), 'place'],
              values: { place: seat.place, other: before.seat.id },
            },
          ]
        : [];
    });
  },
};
