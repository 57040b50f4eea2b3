import type { Rule } from './rule.ts';

/** No two seats have one place on the shaft line. */
export const seatsPlaced: Rule = {
  id: 'seats-placed',
  severity: 'error',
  check: ({ seats = [] }) =>
    seats.flatMap((seat, index) => {
      const first = seats.findIndex(({ place }) => place === seat.place);
      return first < index
        ? [{ at: ['seats', index, 'place'], values: { place: seat.place, other: seats[first]!.id } }]
        : [];
    }),
};
