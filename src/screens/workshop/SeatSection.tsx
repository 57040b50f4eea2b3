/** The shaft line, and bearings, washers and seals on it. Faces are told as seen or turned away, never by letter. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { ENDS } from '../../core/unit/record.ts';
import { PILOTS, SEAT_KINDS, type Side } from '../../core/unit/seats.ts';
import { type Place, valueAt } from '../../core/workshop/draft.ts';
import { hiddenFace, seenFace } from '../../core/workshop/line.ts';
import { Seat } from '../../ui/drawings/Seat.tsx';
import '../../ui/drawings/drawings.css';
import '../../ui/drawings/parts.css';
import '../../ui/drawings/stage.css';
import { AmountField } from './AmountField.tsx';
import { Bodies, LINE } from './Bodies.tsx';
import type { Desk, SectionProps } from './desk.ts';
import { Fold } from './Fold.tsx';
import { AreaField, ChoiceField, IdField, PickField, TextField, textAt } from './fields.tsx';
import { NewSeat, useLine } from './NewSeat.tsx';
import { nameOptions, wordedOptions } from './options.ts';
import { Provenance, Vouch } from './Provenance.tsx';
import { headOf, Records } from './Records.tsx';

const SEATS: Place = ['seats'];

function Close({ desk, id }: { desk: Desk; id: string }) {
  const { unit, say } = useLine(desk);
  const seat = unit.deck.seats?.find((one) => one.id === id);
  if (!seat) return null;
  const front = seat.viewedFrom === 'front' ? 'left' : 'right';
  return (
    <figure className="dr-figure">
      <Seat
        drawing={{ kind: 'seat', seat: id, seenFrom: seat.viewedFrom, front }}
        unit={unit}
        say={say}
        tapped={undefined}
      />
    </figure>
  );
}

function Face({ desk, at, side, where }: { desk: Desk; at: Place; side: Side; where: 'seen' | 'hidden' }) {
  const { draft, say } = desk;
  const place = [...at, 'faces', side];
  const neighbours = nameOptions([...(draft.shaftLine ?? []), ...(draft.seats ?? [])]).filter(
    ({ value }) => value !== textAt(desk, [...at, 'id']),
  );
  return (
    <fieldset className="answer face">
      <legend>{say(phrase(`workshop.face.${where}`))}</legend>
      <div className="fields tight">
        <TextField desk={desk} at={[...place, 'mark']} label={phrase(`workshop.mark.${where}`)} />
        <PickField
          desk={desk}
          at={[...place, 'touches']}
          label={phrase('workshop.touches')}
          options={neighbours}
        />
        <PickField
          desk={desk}
          at={[...place, 'pilot', 'at']}
          label={phrase('workshop.pilot')}
          options={wordedOptions(say, PILOTS, 'workshop.pilot')}
          none={phrase('workshop.no-pilot')}
          onPick={(value) =>
            desk.edit({
              kind: 'set',
              at: value === '' ? [...place, 'pilot'] : [...place, 'pilot', 'at'],
              value: value || undefined,
            })
          }
        />
        {textAt(desk, [...place, 'pilot', 'at']) !== '' && (
          <AmountField
            desk={desk}
            at={[...place, 'pilot', 'diameter']}
            label={phrase('workshop.pilot-diameter')}
          />
        )}
      </div>
    </fieldset>
  );
}

function SeatFields({ desk, at, index }: { desk: Desk; at: Place; index: number }) {
  const { draft, say, edit } = desk;
  const kind = textAt(desk, [...at, 'kind']);
  const [seen, hidden] = [seenFace(draft, index), hiddenFace(draft, index)];
  const goesIn = valueAt(draft, [...at, 'turned', 'goesIn']);
  const sides = [
    { value: seen, label: say(phrase('workshop.side.seen')) },
    { value: hidden, label: say(phrase('workshop.side.hidden')) },
  ];
  return (
    <>
      <ChoiceField
        desk={desk}
        at={[...at, 'viewedFrom']}
        label={phrase('workshop.looking-from')}
        options={wordedOptions(say, ENDS, 'workshop.looking-from')}
      />
      <div className="fields tight">
        <IdField
          kind="seat"
          desk={desk}
          at={[...at, 'id']}
          label={phrase('workshop.id')}
          className="narrow"
        />
        <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
        <PickField
          desk={desk}
          at={[...at, 'kind']}
          label={phrase('workshop.seat-kind')}
          options={wordedOptions(say, SEAT_KINDS, 'workshop.seat-kind')}
        />
        <TextField
          desk={desk}
          at={[...at, 'place']}
          label={phrase('workshop.place')}
          inputMode="numeric"
          className="narrow"
        />
      </div>
      <Face desk={desk} at={at} side={seen} where="seen" />
      <Face desk={desk} at={at} side={hidden} where="hidden" />
      {kind === 'thrust-bearing' && (
        <PickField
          desk={desk}
          at={[...at, 'race']}
          label={phrase('workshop.race')}
          options={sides}
          none={phrase('workshop.no-race')}
        />
      )}
      {kind === 'lip-seal' && (
        <div className="fields">
          <PickField
            desk={desk}
            at={[...at, 'lip']}
            label={phrase('workshop.lip')}
            options={sides}
            none={phrase('workshop.not-said')}
          />
          <PickField
            desk={desk}
            at={[...at, 'pressure']}
            label={phrase('workshop.pressure-side')}
            options={sides}
            none={phrase('workshop.not-said')}
          />
        </div>
      )}
      <Close desk={desk} id={textAt(desk, [...at, 'id'])} />
      <Fold summary={say(phrase('workshop.more-of-seat'))}>
        <div className="fields tight">
          {(['inner', 'outer', 'thickness'] as const).map((size) => (
            <AmountField
              key={size}
              desk={desk}
              at={[...at, 'size', size]}
              label={phrase(`workshop.size.${size}`)}
            />
          ))}
        </div>
        <fieldset className="answer">
          <legend>{say(phrase('workshop.wrong-way'))}</legend>
          <div className="choices">
            {[true, false].map((value) => (
              <label key={String(value)} className="choice">
                <input
                  type="radio"
                  checked={goesIn === value}
                  onChange={() => edit({ kind: 'set', at: [...at, 'turned', 'goesIn'], value })}
                />
                <span>{say(phrase(`workshop.wrong-way.${value ? 'goes-in' : 'stays-out'}`))}</span>
              </label>
            ))}
          </div>
        </fieldset>
        <AreaField
          desk={desk}
          at={[...at, 'turned', 'effect']}
          label={phrase('workshop.wrong-way-effect')}
          rows={2}
        />
      </Fold>
      <Provenance desk={desk} at={at} />
    </>
  );
}

export function SeatSection({ desk }: SectionProps) {
  const { say } = desk;
  return (
    <>
      <h3>{say(phrase('workshop.line'))}</h3>
      <Bodies desk={desk} />
      <h3>{say(phrase('workshop.new-seat'))}</h3>
      <NewSeat desk={desk} />
      <Records
        folds
        desk={desk}
        at={SEATS}
        kind="seat"
        head={(index) => headOf(desk, SEATS, index, 'workshop.seat')}
      >
        {(at, index) => <SeatFields desk={desk} at={at} index={index} />}
      </Records>
      <Vouch desk={desk} lists={[LINE, SEATS]} />
    </>
  );
}
