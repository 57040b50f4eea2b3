import type { DeckSeat } from '../../core/unit/seats.ts';
import type { Spot } from '../finding.ts';
import type { Rule } from './rule.ts';

function findings(seat: DeckSeat, index: number): Spot[] {
  const { faces, kind, race, lip, pressure, turned } = seat;
  const [a, b] = [faces.A.mark, faces.B.mark];
  const at = ['seats', index];
  if ((a === undefined) !== (b === undefined))
    return [{ at: [...at, 'faces', a === undefined ? 'A' : 'B'], case: 'one-mark' }];
  const spots: Spot[] = [];
  if (a !== undefined && a === b) spots.push({ at: [...at, 'faces', 'B', 'mark'], case: 'same-mark' });
  const said = Object.entries({ race, lip, pressure, turned }).filter(([, value]) => value !== undefined);
  if (a === undefined)
    for (const [field] of said) spots.push({ at: [...at, field], case: 'alike', values: { field } });
  const owner = { race: 'thrust-bearing', lip: 'lip-seal', pressure: 'lip-seal' };
  for (const [field, needed] of Object.entries(owner))
    if (seat[field as keyof typeof owner] !== undefined && kind !== needed)
      spots.push({ at: [...at, field], case: 'kind', values: { field, kind, needed } });
  return spots;
}

/** Faces are marked both or neither, and only a part whose faces differ has a way to lie. */
export const seatFaces: Rule = {
  id: 'seat-faces',
  severity: 'error',
  check: (deck) => (deck.seats ?? []).flatMap(findings),
};
