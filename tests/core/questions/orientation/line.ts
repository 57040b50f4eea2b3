/**
 * A shaft line small enough to work by hand. Front to rear:
 *   pump  S1 T1  drum  T2  hub  T3 W3  sun  T4  cover
 * S1 lip to the rear. T1 closed race to the front (against the pump), T2 to the rear (hub), T3 to the front (hub)
 * with washer W3 behind it, grooves to the rear (sun), T4 closed race to the rear (cover).
 */
import type { Deck } from '../../../../src/core/unit/deck.ts';
import type { DeckSeat, Side } from '../../../../src/core/unit/seats.ts';
import { makeUnit, type Unit } from '../../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../../units.ts';

const mm = (value: string) => ({ value, unit: 'mm' as const });

const CLOSED = 'closed race';
const OPEN = 'needles in view';

/** Face A always touches the first named body, whichever end that is. */
function bearing(
  id: string,
  place: number,
  [a, b]: readonly [string, string],
  race: Side,
  more: Partial<DeckSeat> = {},
): DeckSeat {
  const mark = (side: Side) => (race === side ? CLOSED : OPEN);
  return {
    id,
    kind: 'thrust-bearing',
    place,
    faces: { A: { touches: a, mark: mark('A') }, B: { touches: b, mark: mark('B') } },
    race,
    viewedFrom: 'rear',
    ...more,
  };
}

const SEATS: readonly DeckSeat[] = [
  {
    id: 'S1',
    kind: 'lip-seal',
    place: 1,
    faces: { A: { touches: 'drum', mark: 'lip' }, B: { touches: 'pump', mark: 'flat back' } },
    lip: 'A',
    pressure: 'A',
    viewedFrom: 'rear',
    turned: { goesIn: true, effect: 'The clutch gets no pressure.' },
  },
  bearing('T1', 2, ['pump', 'drum'], 'A', {
    turned: { goesIn: true, effect: 'The needles run on the pump.' },
    size: { inner: mm('40'), outer: mm('60'), thickness: mm('4.0') },
  }),
  bearing('T2', 3, ['hub', 'drum'], 'A', {
    turned: { goesIn: false, effect: 'The shoulder of the hub keeps it out.' },
    size: { inner: mm('44'), outer: mm('66'), thickness: mm('4.0') },
  }),
  bearing('T3', 4, ['hub', 'W3'], 'A', {
    size: { inner: mm('48'), outer: mm('70'), thickness: mm('3.5') },
  }),
  {
    id: 'W3',
    kind: 'thrust-washer',
    place: 5,
    faces: { A: { touches: 'T3', mark: 'smooth' }, B: { touches: 'sun', mark: 'grooves' } },
    viewedFrom: 'front',
    turned: { goesIn: true, effect: 'The sun gets no oil.' },
    size: { inner: mm('48'), outer: mm('70'), thickness: mm('1.5') },
  },
  bearing('T4', 6, ['cover', 'sun'], 'A', {
    size: { inner: mm('30'), outer: mm('52'), thickness: mm('4.0') },
  }),
];

/** The line above with some seats changed; each change is by id. */
export function lineDeck(changes: Readonly<Record<string, Partial<DeckSeat>>> = {}): Deck {
  const train = PUBLISHED.find(({ id }) => id === 'ravigneaux-4-a')!;
  return {
    ...deckOf(train),
    shaftLine: ['pump', 'drum', 'hub', 'sun', 'cover'].map((id) => ({ id })),
    seats: SEATS.map((seat) => ({ ...seat, ...changes[seat.id] })),
  };
}

export const lineUnit = (changes: Readonly<Record<string, Partial<DeckSeat>>> = {}): Unit =>
  makeUnit(lineDeck(changes));
