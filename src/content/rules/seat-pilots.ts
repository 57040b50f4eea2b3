import { exactIn } from '../../core/unit/record.ts';
import { type DeckSeat, SIDES } from '../../core/unit/seats.ts';
import type { Spot } from '../finding.ts';
import { written } from './amounts.ts';
import type { Rule } from './rule.ts';

/** Whether a shoulder or pocket of this width takes a part of this size. */
function misfits({ faces, size }: DeckSeat, index: number): Spot[] {
  if (!size) return [];
  return SIDES.flatMap((side) => {
    const { pilot } = faces[side];
    if (!pilot) return [];
    const own = pilot.at === 'inner' ? size.inner : size.outer;
    const [pilotMm, ownMm] = [exactIn(pilot.diameter, 'mm'), exactIn(own, 'mm')];
    const fits = pilot.at === 'inner' ? pilotMm.lte(ownMm) : pilotMm.gte(ownMm);
    return fits
      ? []
      : [
          {
            at: ['seats', index, 'faces', side, 'pilot', 'diameter'],
            case: pilot.at,
            values: { diameter: written(pilot.diameter), own: written(own) },
          },
        ];
  });
}

/** Alike on both sides it goes in both ways; with two widths at one rim only one way. */
function turnable({ faces, turned }: DeckSeat, index: number): Spot[] {
  const [a, b] = [faces.A.pilot, faces.B.pilot];
  if (!turned || !a || !b || a.at !== b.at) return [];
  const alike = exactIn(a.diameter, 'mm').equals(exactIn(b.diameter, 'mm'));
  return alike === turned.goesIn
    ? []
    : [
        {
          at: ['seats', index, 'turned', 'goesIn'],
          case: alike ? 'alike' : 'differ',
          values: { a: written(a.diameter), b: written(b.diameter) },
        },
      ];
}

/** What centres a part goes with its size, and with what is said of it turned round. */
export const seatPilots: Rule = {
  id: 'seat-pilots',
  severity: 'error',
  check: (deck) =>
    (deck.seats ?? []).flatMap((seat, index) => [...misfits(seat, index), ...turnable(seat, index)]),
};
