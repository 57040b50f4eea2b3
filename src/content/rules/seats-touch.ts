import type { Deck } from '../../core/unit/deck.ts';
import { type DeckSeat, SIDES, type Side } from '../../core/unit/seats.ts';
import type { Spot } from '../finding.ts';
import type { Rule } from './rule.ts';

function findings(deck: Deck, seat: DeckSeat, index: number): Spot[] {
  const parts = (deck.shaftLine ?? []).map(({ id }) => id);
  const spot = (side: Side, kind: string, values: Spot['values'] = {}): Spot => ({
    at: ['seats', index, 'faces', side, 'touches'],
    case: kind,
    values: { id: seat.faces[side].touches, ...values },
  });
  if (seat.faces.A.touches === seat.faces.B.touches) return [spot('B', 'both')];
  return SIDES.flatMap((side) => {
    const { touches } = seat.faces[side];
    if (touches === seat.id) return [spot(side, 'itself')];
    const other = deck.seats?.find(({ id }) => id === touches);
    if (!other)
      return parts.includes(touches) ? [] : [spot(side, 'unknown', { known: parts, count: parts.length })];
    const touchesBack = SIDES.some((back) => other.faces[back].touches === seat.id);
    return touchesBack ? [] : [spot(side, 'one-sided', { seat: seat.id })];
  });
}

/** The two faces lie against two different things of the line; seats that lie against each other both say so. */
export const seatsTouch: Rule = {
  id: 'seats-touch',
  severity: 'error',
  check: (deck) => (deck.seats ?? []).flatMap((seat, index) => findings(deck, seat, index)),
};
