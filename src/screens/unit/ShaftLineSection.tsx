/**
 * The shaft line, and one seat of it close up: which face looks where, from the end one stands at. A seat is found
 * by its number on the line or by its name in the list.
 */
import { useRef, useState } from 'react';
import { seatOf } from '../../core/questions/describe/seats.ts';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import { ENDS, type End } from '../../core/unit/record.ts';
import { type DeckSeat, faceTowards, inOrder } from '../../core/unit/seats.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { DrawingView } from '../../ui/drawings/DrawingView.tsx';
import type { Say } from '../../words/words.ts';
import { ProvenanceNote } from './ProvenanceNote.tsx';

interface Props {
  readonly unit: Unit;
  readonly say: Say;
}

/** "Closed race against pump body", for the end named. */
function sideText(seat: DeckSeat, end: End, { unit, say }: Props): string {
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

export function ShaftLineSection({ unit, say }: Props) {
  const seats = inOrder(unit.deck.seats ?? []);
  const [shown, setShown] = useState('');
  const card = useRef<HTMLDivElement>(null);
  /** The seat comes up over the line, out of view of a thumb far down it. */
  const tap = (id: string) => {
    setShown(id);
    card.current?.scrollIntoView();
  };
  const seat = shown === '' ? undefined : seatOf(unit.deck, shown);
  return (
    <>
      {seats.length > 0 && (
        <label className="field">
          <span>{say(phrase('unit.find-seat'))}</span>
          <select value={shown} onChange={(event) => setShown(event.target.value)}>
            <option value="">{say(phrase('unit.no-seat'))}</option>
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
          ...(seats.length > 0 ? { places: seats.map(({ id }) => id) } : {}),
          ...(seat ? { lit: [seat.id] } : {}),
        }}
        unit={unit}
        say={say}
        tapped={{ picked: seat?.id ?? null, right: null, onPick: tap }}
      />
    </>
  );
}
