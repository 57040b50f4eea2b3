/**
 * Seats of the shaft line: which can be asked, what lies on either side, what is known about each. "front" and
 * "rear" are ends of the unit, so that an answer holds whichever end somebody looks from.
 */
import type { Deck } from '../../../unit/deck.ts';
import { ENDS, type End } from '../../../unit/record.ts';
import {
  type DeckSeat,
  faceTowards,
  inOrder,
  isOneSided,
  otherSide,
  type Side,
} from '../../../unit/seats.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { FactId, Option } from '../../question.ts';
import { perUnit } from '../per-unit.ts';

export const faceFact = (seat: DeckSeat): FactId => `seat:${seat.id}/face`;
export const placeFact = (seat: DeckSeat): FactId => `seat:${seat.id}/place`;

const isBody = ({ shaftLine = [] }: Deck, id: string) => shaftLine.some((part) => part.id === id);

/** The seat and what it lies against. */
export function seatRefs({ deck }: Unit, { id, faces }: DeckSeat): Ref[] {
  const touched = [faces.A.touches, faces.B.touches];
  return [
    `seat:${id}`,
    ...touched.map((other): Ref => (isBody(deck, other) ? `part:${other}` : `seat:${other}`)),
  ];
}

/** Verified seats with verified neighbours, from front to rear. */
export const sureSeats = perUnit((unit) =>
  inOrder(unit.deck.seats ?? []).filter((seat) => seatRefs(unit, seat).every((ref) => unit.sure(ref))),
);

/** Those whose two faces can be told apart. */
export const oneSidedSeats = perUnit((unit) => sureSeats(unit).filter(isOneSided));

export const otherEnd = (end: End): End => (end === 'front' ? 'rear' : 'front');

/** The end of the unit that this face looks to. */
export const endOf = (deck: Deck, seat: DeckSeat, side: Side): End =>
  faceTowards(deck, seat, 'front') === side ? 'front' : 'rear';

/** Id of what the seat lies against towards this end. */
export const touchedAt = (deck: Deck, seat: DeckSeat, end: End): string =>
  seat.faces[faceTowards(deck, seat, end)].touches;

/** The body beyond a face: through other seats, until one of the shaft line is reached. */
function bodyBeyond(deck: Deck, seat: DeckSeat, side: Side): string {
  let [at, from, id] = [seat, seat.id, seat.faces[side].touches];
  for (let steps = 0; !isBody(deck, id) && steps < 99; steps++) {
    at = deck.seats!.find((other) => other.id === id)!;
    const on = at.faces.A.touches === from ? 'B' : 'A';
    [from, id] = [at.id, at.faces[on].touches];
  }
  return id;
}

/** Where a face looks, by the bodies on both sides: another way than `endOf`, which goes by neighbours. */
export function endByBodies(deck: Deck, seat: DeckSeat, side: Side): End {
  const line = (deck.shaftLine ?? []).map(({ id }) => id);
  const [own, across] = [side, otherSide(side)].map((each) => line.indexOf(bodyBeyond(deck, seat, each)));
  return own! < across! ? 'front' : 'rear';
}

/** Which face this end of the unit sees, by the bodies. */
const sideByBodies = (deck: Deck, seat: DeckSeat, end: End): Side =>
  endByBodies(deck, seat, 'A') === end ? 'A' : 'B';

/** The bodies to the front and to the rear of a seat. Several seats can lie between the same two. */
export const gapOf = (deck: Deck, seat: DeckSeat): readonly [string, string] => [
  bodyBeyond(deck, seat, sideByBodies(deck, seat, 'front')),
  bodyBeyond(deck, seat, sideByBodies(deck, seat, 'rear')),
];

/** The seats left when each gap keeps one: the asked seat in its own, the first in the others. */
export function onePerGap(deck: Deck, seats: readonly DeckSeat[], asked: DeckSeat): DeckSeat[] {
  const gap = (seat: DeckSeat) => gapOf(deck, seat).join(' ');
  const kept = new Map([[gap(asked), asked]]);
  for (const seat of seats) if (!kept.has(gap(seat))) kept.set(gap(seat), seat);
  return seats.filter((seat) => kept.get(gap(seat)) === seat);
}

/** "between front hub and front sun" */
export function gapName(deck: Deck, seat: DeckSeat): Phrase {
  const [front, rear] = gapOf(deck, seat);
  return say('seat.gap', { front: thing('part', front), rear: thing('part', rear) });
}

export const seatName = ({ id }: { readonly id: string }): Phrase => thing('seat', id);

/** A body, or a seat that lies against another. */
export const touchedName = (deck: Deck, id: string): Phrase => thing(isBody(deck, id) ? 'part' : 'seat', id);

/** What tells the face from the other. */
export const markOf = (seat: DeckSeat, side: Side): Phrase => say('text', { text: seat.faces[side].mark! });

/** "thrust bearing T5: closed race" */
export const faceName = (seat: DeckSeat, side: Side): Phrase =>
  say('seat.face', { seat: seatName(seat), mark: markOf(seat, side) });

export const endName = (end: End): Phrase => say(`seat.${end}`);

export const endOptions = (): Option[] => ENDS.map((id) => ({ id, label: endName(id) }));

/** "T5: closed race against the front hub, towards the front; needles against …. Noted as seen from the rear." */
export function seatLine({ deck }: Unit, seat: DeckSeat): Phrase {
  const [front, rear] = ENDS.map((end) => {
    const side = faceTowards(deck, seat, end);
    return say(isOneSided(seat) ? 'seat.side' : 'seat.plain-side', {
      ...(isOneSided(seat) ? { mark: markOf(seat, side) } : {}),
      touches: touchedName(deck, seat.faces[side].touches),
    });
  });
  return say('seat.line', {
    seat: seatName(seat),
    front: front!,
    rear: rear!,
    from: endName(seat.viewedFrom),
  });
}

/** The seat's neighbours among the seats asked with it: the next ones along the line. */
export function besideOf(seats: readonly DeckSeat[], seat: DeckSeat): DeckSeat[] {
  const place = seats.indexOf(seat);
  return [seats[place - 1], seats[place + 1]].filter((other) => other !== undefined);
}

/** The asked seat and up to `count` − 1 others, from front to rear. */
export function seatsWith(
  seats: readonly DeckSeat[],
  seat: DeckSeat,
  count: number,
  sample: (others: DeckSeat[], count: number) => DeckSeat[],
): DeckSeat[] {
  const drawn = sample(
    seats.filter((other) => other !== seat),
    count - 1,
  );
  return seats.filter((other) => other === seat || drawn.includes(other));
}
