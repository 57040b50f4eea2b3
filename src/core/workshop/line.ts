/**
 * The shaft line of a draft as far as it can be drawn, and a new seat put between two bodies of it. A face looks to
 * where the body lies that it touches, so a new seat needs no letters from anybody: its face A looks to the front.
 */
import {
  type DeckFace,
  type DeckPart,
  type DeckSeat,
  faceTowards,
  otherSide,
  PILOTS,
  SEAT_KINDS,
  SIDES,
  type Side,
} from '../unit/seats.ts';
import { sizeFrom } from './amounts.ts';
import { type DeckDraft, type Edit, freshId } from './draft.ts';
import { unitToDraw } from './train.ts';

type DraftSeat = NonNullable<DeckDraft['seats']>[number];
type DraftFace = NonNullable<DraftSeat['faces']>['A'];

const said = (text: string | undefined): text is string => text !== undefined && text.trim() !== '';

function faceOf(typed: DraftFace): DeckFace {
  const at = PILOTS.find((known) => known === typed?.pilot?.at);
  const diameter = sizeFrom(typed?.pilot?.diameter);
  return {
    touches: typed?.touches ?? '',
    ...(said(typed?.mark) && { mark: typed.mark }),
    ...(at && diameter && { pilot: { at, diameter } }),
  };
}

function seatOf(typed: DraftSeat, index: number): DeckSeat | null {
  const kind = SEAT_KINDS.find((known) => known === typed.kind);
  if (!kind || !said(typed.id)) return null;
  const place = Number(typed.place);
  const side = (text: string | undefined): Side | undefined => SIDES.find((known) => known === text);
  const [race, lip, pressure] = [side(typed.race), side(typed.lip), side(typed.pressure)];
  const [inner, outer, thickness] = [
    sizeFrom(typed.size?.inner),
    sizeFrom(typed.size?.outer),
    sizeFrom(typed.size?.thickness),
  ];
  return {
    id: typed.id,
    kind,
    ...(said(typed.name) && { name: typed.name }),
    place: Number.isInteger(place) && place > 0 ? place : index + 1,
    faces: { A: faceOf(typed.faces?.A), B: faceOf(typed.faces?.B) },
    viewedFrom: typed.viewedFrom === 'rear' ? 'rear' : 'front',
    ...(race && { race }),
    ...(lip && { lip }),
    ...(pressure && { pressure }),
    ...(inner && outer && thickness && { size: { inner, outer, thickness } }),
  };
}

export interface DrawnLine {
  readonly shaftLine: readonly DeckPart[];
  readonly seats: readonly DeckSeat[];
}

/** Bodies with an id, and the seats that lie between two of them or against another seat, however sparsely told. */
export function drawnLine(draft: DeckDraft): DrawnLine {
  const shaftLine = (draft.shaftLine ?? []).flatMap(({ id, name }): DeckPart[] =>
    said(id) ? [{ id, ...(said(name) && { name }) }] : [],
  );
  let seats = (draft.seats ?? []).map(seatOf).filter((seat) => seat !== null);
  // A seat that lies against nothing known cannot be drawn, nor can one that lies against such a seat.
  for (let count = -1; count !== seats.length; ) {
    count = seats.length;
    const known = new Set([...shaftLine, ...seats].map(({ id }) => id));
    seats = seats.filter(
      ({ id, faces }) =>
        faces.A.touches !== faces.B.touches &&
        SIDES.every((side) => faces[side].touches !== id && known.has(faces[side].touches)),
    );
  }
  return { shaftLine, seats };
}

/** Which face of the seat is before the eye that looks from the end where the note was taken: A or B. */
export function seenFace(draft: DeckDraft, index: number): Side {
  const typed = draft.seats?.[index];
  const from = typed?.viewedFrom === 'rear' ? 'rear' : 'front';
  const line = drawnLine(draft);
  const seat = line.seats.find(({ id }) => id === typed?.id);
  if (!seat) return from === 'front' ? 'A' : 'B';
  return faceTowards(unitToDraw(draft, line).deck, seat, from);
}

export const hiddenFace = (draft: DeckDraft, index: number): Side => otherSide(seenFace(draft, index));

/**
 * A new seat between two bodies, noted from that end. It gets the number after the seat before it; when that number
 * is taken, those from there on move up by one.
 */
export function addSeat(draft: DeckDraft, viewedFrom: 'front' | 'rear', front: string, rear: string): Edit {
  const typed = draft.seats ?? [];
  const { shaftLine, seats } = drawnLine(draft);
  const indexOf = (id: string) => shaftLine.findIndex((part) => part.id === id);
  const before = seats.filter(({ faces }) => {
    const bodies = SIDES.map((side) => indexOf(faces[side].touches)).filter((index) => index >= 0);
    return Math.min(...bodies) <= indexOf(front);
  });
  const place = Math.max(0, ...before.map((seat) => seat.place)) + 1;
  const numbers = typed.map((seat) => Number(seat.place));
  const shifted: Edit[] = numbers.includes(place)
    ? numbers.flatMap((number, index): Edit[] =>
        number >= place ? [{ kind: 'set', at: ['seats', index, 'place'], value: number + 1 }] : [],
      )
    : [];
  return {
    kind: 'all',
    edits: [
      ...shifted,
      {
        kind: 'insert',
        at: ['seats'],
        value: {
          id: freshId(
            'T',
            typed.map(({ id }) => id),
          ),
          place,
          viewedFrom,
          faces: { A: { touches: front }, B: { touches: rear } },
        },
      },
    ],
  };
}
