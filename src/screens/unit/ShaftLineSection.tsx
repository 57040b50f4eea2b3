/**
 * The shaft line, and one seat of it close up: which face looks where, from the end one stands at. A seat is found
 * by its number on the line or by its name in the list.
 */
import { useRef, useState } from 'react';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import { ENDS, type End } from '../../core/unit/record.ts';
import { type DeckSeat, faceTowards, inOrder, SIDES } from '../../core/unit/seats.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import type { Say } from '../../words/words.ts';
import { useNarrowed } from './found.ts';
import { ProvenanceNote } from './ProvenanceNote.tsx';

interface Props {
  readonly unit: Unit;
  readonly say: Say;
}

/** "Closed race against pump body", for the end named. */
export function sideText(seat: DeckSeat, end: End, { unit, say }: Props): string {
  const { mark, touches } = seat.faces[faceTowards(unit.deck, seat, end)];
  const isBody = unit.deck.shaftLine?.some(({ id }) => id === touches);
  const against = thing(isBody ? 'part' : 'seat', touches);
  return mark === undefined
    ? say(phrase('unit.seat-plain', { end, against }))
    : say(phrase('unit.seat-side', { end, mark, against }));
}

function SeatCard({ seat, unit, say }: Props & { seat: DeckSeat }) {
  const [turned, setTurned] = useState(false);
  // A unit turned round has its rear at the left, and its other end before the eye.
  const from: End = turned === (seat.viewedFrom === 'front') ? 'rear' : 'front';
  return (
    <>
      <DrawingView
        drawing={{
          kind: 'seat',
          seat: seat.id,
          seenFrom: from,
          front: from === 'front' ? 'left' : 'right',
        }}
        unit={unit}
        say={say}
      />
      <button type="button" className="button" aria-pressed={turned} onClick={() => setTurned(!turned)}>
        {say(phrase('unit.turn-round'))}
      </button>
      <ul className="steps">
        {ENDS.map((end) => (
          <li key={end}>{sideText(seat, end, { unit, say })}</li>
        ))}
        <li>{say(phrase('unit.noted-from', { end: seat.viewedFrom }))}</li>
        {seat.turned && (
          <li>
            {say(
              phrase('unit.wrong-way', {
                goes: seat.turned.goesIn ? 'yes' : 'no',
                effect: seat.turned.effect,
              }),
            )}
          </li>
        )}
      </ul>
      <ProvenanceNote of={seat} unit={unit} say={say} />
    </>
  );
}

interface SectionProps extends Props {
  /** Id of the seat close up; where it is none, the first of those looked for. */
  readonly shown: string;
  readonly onShow: (id: string) => void;
}

/** The seats looked for; where only bodies are, the seats that lie against them. */
function useSeats({ deck }: Unit): readonly DeckSeat[] {
  const { isSearching, shows } = useNarrowed();
  const seats = inOrder(deck.seats ?? []);
  const named = seats.filter(({ id }) => shows(`seat:${id}`));
  if (!isSearching || named.length > 0) return named;
  return seats.filter(({ faces }) => SIDES.some((side) => shows(`part:${faces[side].touches}`)));
}

export function ShaftLineSection({ unit, say, shown, onShow }: SectionProps) {
  const { isSearching, shows } = useNarrowed();
  const all = inOrder(unit.deck.seats ?? []);
  const found = useSeats(unit);
  const seat = all.find(({ id }) => id === shown) ?? (isSearching ? found[0] : undefined);
  const seats = all.filter((each) => each === seat || found.includes(each));
  const bodies = isSearching ? (unit.deck.shaftLine ?? []).filter(({ id }) => shows(`part:${id}`)) : [];
  const lit = [...(seat ? [seat] : []), ...bodies].map(({ id }) => id);
  const card = useRef<HTMLDivElement>(null);
  /** The seat comes up over the line, out of view of a thumb far down it. */
  const tap = (id: string) => {
    onShow(id);
    card.current?.scrollIntoView();
  };
  return (
    <>
      {seats.length > 0 && (
        <label className="field">
          <span>{say(phrase('unit.find-seat'))}</span>
          <select value={seat?.id ?? ''} onChange={(event) => onShow(event.target.value)}>
            {!isSearching && <option value="">{say(phrase('unit.no-seat'))}</option>}
            {seats.map(({ id }) => (
              <option key={id} value={id}>
                {say(thing('seat', id))}
              </option>
            ))}
          </select>
        </label>
      )}
      <div ref={card} className="unit-part">
        {seat && <SeatCard key={seat.id} seat={seat} unit={unit} say={say} />}
      </div>
      <DrawingView
        drawing={{
          kind: 'shaft-line',
          ...(all.length > 0 ? { places: all.map(({ id }) => id) } : {}),
          ...(lit.length > 0 ? { lit } : {}),
        }}
        unit={unit}
        say={say}
        tapped={{ picked: seat?.id ?? null, right: null, onPick: tap }}
      />
    </>
  );
}
