/**
 * Seats as they are drawn: what lies to the front and to the rear of each, which face looks there, and the line of
 * bodies they lie in; and in words. A part turned round swaps its faces; what centres it stays where it is.
 */
import type { Deck } from '../../unit/deck.ts';
import { ENDS, type End } from '../../unit/record.ts';
import {
  type DeckFace,
  type DeckPart,
  type DeckSeat,
  faceTowards,
  inOrder,
  otherSide,
  type Side,
} from '../../unit/seats.ts';
import type { SeatDrawing, ShaftLineDrawing } from '../drawing.ts';
import { type Phrase, say, thing } from '../phrase.ts';

/** One side of a seat as it is drawn. */
export interface SeatSide {
  /** Id of the body or seat on this side. */
  readonly touches: string;
  /** By what that one centres the part, where it does. */
  readonly pilot: DeckFace['pilot'];
  /** The face of the part that looks here, and what tells it. */
  readonly face: Side;
  readonly mark: string | undefined;
  readonly isRace: boolean;
  readonly isLip: boolean;
  /** Whether pressure comes from here. */
  readonly isPressure: boolean;
}

export interface ShownSeat {
  readonly seat: DeckSeat;
  readonly sides: Readonly<Record<End, SeatSide>>;
  readonly isCovered: boolean;
  readonly isLit: boolean;
}

/** The seat with this id; an unknown id is a mistake of the caller and throws. */
export function seatOf(deck: Deck, id: string): DeckSeat {
  const seat = deck.seats?.find((candidate) => candidate.id === id);
  if (!seat) throw new Error(`no seat "${id}"`);
  return seat;
}

export function seatShown(
  deck: Deck,
  seat: DeckSeat,
  how: { readonly turned?: boolean; readonly covered?: boolean; readonly lit?: boolean },
): ShownSeat {
  const sideAt = (end: End): SeatSide => {
    const own = faceTowards(deck, seat, end);
    const face = how.turned ? otherSide(own) : own;
    return {
      touches: seat.faces[own].touches,
      pilot: seat.faces[own].pilot,
      face,
      mark: seat.faces[face].mark,
      isRace: seat.race === face,
      isLip: seat.lip === face,
      isPressure: seat.pressure === own,
    };
  };
  return {
    seat,
    sides: { front: sideAt('front'), rear: sideAt('rear') },
    isCovered: how.covered ?? false,
    isLit: how.lit ?? false,
  };
}

export type LineEntry =
  | { readonly is: 'body'; readonly body: DeckPart; readonly isLit: boolean }
  | ({ readonly is: 'seat' } & ShownSeat);

/** The body that a seat lies behind: through other seats, until one of the line is reached. */
function bodyBefore(deck: Deck, seat: DeckSeat): number {
  let at: DeckSeat | undefined = seat;
  for (let steps = 0; at && steps < 99; steps++) {
    const { touches }: DeckFace = at.faces[faceTowards(deck, at, 'front')];
    const index = (deck.shaftLine ?? []).findIndex(({ id }) => id === touches);
    if (index >= 0) return index;
    at = deck.seats?.find(({ id }) => id === touches);
  }
  return -1;
}

/** Bodies and seats from front to rear, as far as the drawing shows them. */
export function lineShown(deck: Deck, drawing: ShaftLineDrawing): LineEntry[] {
  const bodies = deck.shaftLine ?? [];
  const indexOf = (id: string | undefined, other: number) => {
    const index = bodies.findIndex((body) => body.id === id);
    return index < 0 ? other : index;
  };
  const first = indexOf(drawing.from, 0);
  const last = indexOf(drawing.to, bodies.length - 1);
  const behind = inOrder(deck.seats ?? []).map((seat) => ({ seat, after: bodyBefore(deck, seat) }));
  const among = (ids: readonly string[] | undefined, id: string) => ids?.includes(id) ?? false;
  return bodies.slice(first, last + 1).flatMap((body, offset): LineEntry[] => [
    { is: 'body', body, isLit: among(drawing.lit, body.id) },
    ...behind
      .filter(({ after }) => after === first + offset && after < last)
      .map(
        ({ seat }): LineEntry => ({
          is: 'seat',
          ...seatShown(deck, seat, {
            turned: among(drawing.turned, seat.id),
            covered: among(drawing.covered, seat.id),
            lit: among(drawing.lit, seat.id),
          }),
        }),
      ),
  ]);
}

/** A body, or a seat that lies against another. */
export const nameTouched = (deck: Deck, id: string): Phrase =>
  thing(deck.shaftLine?.some((body) => body.id === id) ? 'part' : 'seat', id);

export interface PlaceAt {
  /** Counted from 1 in the order of the drawing's places. */
  readonly number: number;
  /** The side of the seat that is meant; null for the whole thing. */
  readonly end: End | null;
}

/** The places at a body or a seat. */
export function placesAt(drawing: ShaftLineDrawing, id: string): PlaceAt[] {
  return (drawing.places ?? []).flatMap((place, index): PlaceAt[] => {
    const end = ENDS.find((candidate) => place === `${id}/${candidate}`) ?? null;
    return place === id || end ? [{ number: index + 1, end }] : [];
  });
}

const sideWords = ({ mark, isRace, isLip, isPressure, pilot }: SeatSide, isCovered: boolean) => ({
  mark: isCovered || mark === undefined ? 'none' : 'yes',
  text: mark ?? '',
  race: !isCovered && isRace ? 'yes' : 'no',
  lip: !isCovered && isLip ? 'yes' : 'no',
  pressure: isPressure ? 'yes' : 'no',
  rim: pilot?.at ?? 'none',
  diameter: pilot ? `${pilot.diameter.value} ${pilot.diameter.unit}` : '',
});

export function describeSeat(deck: Deck, drawing: SeatDrawing): Phrase[] {
  const shown = seatShown(deck, seatOf(deck, drawing.seat), drawing);
  const { seat, sides, isCovered } = shown;
  const hides = drawing.hideNames ?? false;
  const { size } = seat;
  return [
    say('drawing.seat.lies', { front: drawing.front ?? 'left' }),
    say(isCovered ? 'drawing.seat.covered' : `drawing.seat.kind-${seat.kind}`),
    ...(size && !isCovered
      ? [
          say('drawing.seat.size', {
            inner: size.inner.value,
            outer: size.outer.value,
            thickness: size.thickness.value,
            unit: size.outer.unit,
          }),
        ]
      : []),
    ...ENDS.map((end) => {
      const place = drawing.places?.indexOf(end) ?? -1;
      return say('drawing.seat.side', {
        end,
        place: place + 1,
        touches: hides ? say('drawing.seat.neighbour') : nameTouched(deck, sides[end].touches),
        ...sideWords(sides[end], isCovered),
      });
    }),
    ...(drawing.seenFrom && !isCovered
      ? [
          say('drawing.seat.face', {
            end: drawing.seenFrom,
            mark: sides[drawing.seenFrom].mark ?? '',
            marked: sides[drawing.seenFrom].mark === undefined ? 'no' : 'yes',
          }),
        ]
      : []),
  ];
}

export function describeShaftLine(deck: Deck, drawing: ShaftLineDrawing): Phrase[] {
  const lines = lineShown(deck, drawing).map((entry): Phrase => {
    const id = entry.is === 'body' ? entry.body.id : entry.seat.id;
    const places = placesAt(drawing, id).map(({ number, end }) =>
      say('drawing.line.place', { number, end: end ?? 'none' }),
    );
    const numbered = places.length > 0 ? 'yes' : 'no';
    const lit = entry.isLit ? 'yes' : 'no';
    if (entry.is === 'body')
      return say('drawing.line.body', { body: thing('part', id), numbered, places, lit });
    const { seat, sides, isCovered } = entry;
    const side = (end: End) => {
      const { mark, text, race, lip, rim } = sideWords(sides[end], isCovered);
      return say('drawing.line.side', { mark, text, race, lip, rim });
    };
    const says = !isCovered && ENDS.some((end) => sides[end].mark !== undefined || sides[end].isRace);
    return say('drawing.line.seat', {
      name: drawing.hideSeatNames
        ? say(`drawing.line.a-${isCovered ? 'seat' : seat.kind}`)
        : thing('seat', id),
      covered: isCovered ? 'yes' : 'no',
      sides: says ? 'yes' : 'no',
      front: side('front'),
      rear: side('rear'),
      numbered,
      places,
      lit,
    });
  });
  return [say('drawing.line.lies', { front: drawing.front ?? 'up' }), ...lines];
}
