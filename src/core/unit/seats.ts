/**
 * Where parts sit along the shaft line and which way they face. The line lists the bodies from front to rear;
 * a seat is a bearing, washer or seal between two of them. A face is told by its mark, and which way it looks by
 * what it touches, so that no note depends on which end somebody looked from; the end is stated all the same.
 */
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
