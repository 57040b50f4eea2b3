/**
 * Where parts sit along the shaft line and which way they face. The line lists the bodies from front to rear;
 * a seat is a bearing, washer or seal between two of them. A face is told by its mark, and which way it looks by
 * what it touches, so that no note depends on which end somebody looked from; the end is stated all the same.
 */
import type { Deck } from './deck.ts';
import type { End, Length, Named, Provenance } from './record.ts';

/** A body on the shaft line: pump, drum, hub, carrier, sun… Listed from front to rear. */
export interface DeckPart extends Named, Provenance {
  /** References of what it belongs to: "gearset:P1", "element:C1". */
  readonly belongsTo?: readonly string[] | undefined;
}

export const SEAT_KINDS = ['thrust-bearing', 'thrust-washer', 'lip-seal', 'sealing-ring'] as const;
export type SeatKind = (typeof SEAT_KINDS)[number];

export const SIDES = ['A', 'B'] as const;
/** The two faces of a part, whichever way it lies. */
export type Side = (typeof SIDES)[number];

export const PILOTS = ['inner', 'outer'] as const;

export interface DeckFace {
  /** Id of the part, or of another seat, that this face lies against. */
  readonly touches: string;
  /** What tells this face from the other: "closed race, needles hidden". Neither has one where both are alike. */
  readonly mark?: string | undefined;
  /** The diameter by which the part on this side centres it, and whether at its inner or outer rim. */
  readonly pilot?: { readonly at: (typeof PILOTS)[number]; readonly diameter: Length } | undefined;
}

export interface DeckSeat extends Named, Provenance {
  readonly kind: SeatKind;
  /** Number along the shaft line, counted from the front. */
  readonly place: number;
  readonly faces: { readonly A: DeckFace; readonly B: DeckFace };
  /** Thrust bearings: the face with the closed race. */
  readonly race?: Side | undefined;
  /** Lip seals: the face that the lip looks out of, and the face that pressure comes from. */
  readonly lip?: Side | undefined;
  readonly pressure?: Side | undefined;
  /** From which end of the unit the note was taken. */
  readonly viewedFrom: End;
  /** Turned round: whether it can be put in at all, and what happens then. */
  readonly turned?: { readonly goesIn: boolean; readonly effect: string } | undefined;
  readonly size?: { readonly inner: Length; readonly outer: Length; readonly thickness: Length } | undefined;
}

export const otherSide = (side: Side): Side => (side === 'A' ? 'B' : 'A');

/** Whether what this face touches lies to the front of what the other touches; null when the deck does not say. */
function looksToFront(deck: Deck, seat: DeckSeat, side: Side): boolean | null {
  const { touches } = seat.faces[side];
  const neighbour = deck.seats?.find(({ id }) => id === touches);
  if (neighbour) return neighbour.place < seat.place;
  const line = deck.shaftLine ?? [];
  const own = line.findIndex(({ id }) => id === touches);
  const across = seat.faces[otherSide(side)].touches;
  const beyond = line.findIndex(({ id }) => id === across);
  return own < 0 || beyond < 0 ? null : own < beyond;
}

/** The face that looks to this end of the unit, which is the one seen from there. */
export function faceTowards(deck: Deck, seat: DeckSeat, end: End): Side {
  const front = looksToFront(deck, seat, 'A') ?? !(looksToFront(deck, seat, 'B') ?? false);
  return front === (end === 'front') ? 'A' : 'B';
}

/** Whether its two faces can be told apart at all. */
export const isOneSided = ({ faces }: DeckSeat): boolean => faces.A.mark !== undefined;

/** Seats in the order of their places. */
export const inOrder = (seats: readonly DeckSeat[]): DeckSeat[] =>
  seats.toSorted((a, b) => a.place - b.place);
