/** Cautions: what to do or keep from, and what a learner has in hand when it counts. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { HAZARDS } from '../../core/unit/cautions.ts';
import type { Place } from '../../core/workshop/draft.ts';
import type { Desk, SectionProps } from './desk.ts';
import { ActField, AreaField, listAt, PickField, TextField } from './fields.tsx';
import { wordedOptions } from './options.ts';
import { AddRecord, Records } from './Records.tsx';
import { thingOptions } from './things.ts';

const CAUTIONS: Place = ['cautions'];

function Attached({ desk, at }: { desk: Desk; at: Place }) {
  const { say, edit } = desk;
  const place = [...at, 'attachedTo'];
  const attached = listAt(desk, place);
  const things = thingOptions(desk);
  const labelOf = (ref: string) => things.find(({ value }) => value === ref)?.label ?? ref;
  return (
    <>
      <ul className="attached">
        {attached.map((ref, index) => (
          <li key={ref}>
            {labelOf(ref)}{' '}
            <button
              type="button"
              className="button plain small"
              onClick={() => edit({ kind: 'remove', at: [...place, index] })}
            >
              {say(phrase('workshop.remove'))}
              <span className="unseen"> {labelOf(ref)}</span>
            </button>
          </li>
        ))}
      </ul>
      <ActField
        label={say(phrase('workshop.attach'))}
        none={say(phrase('workshop.pick'))}
        options={things.filter(({ value }) => !attached.includes(value))}
        onPick={(value) => value !== '' && edit({ kind: 'insert', at: place, value })}
      />
    </>
  );
}

export function CautionSection({ desk }: SectionProps) {
  const { draft, say, edit, writer, today } = desk;
  return (
    <>
      <p className="aside">{say(phrase('workshop.cautions-hint'))}</p>
      <Records
        folds
        desk={desk}
        at={CAUTIONS}
        head={(index) =>
          phrase('workshop.caution-no', { number: index + 1, text: draft.cautions?.[index]?.text ?? '' })
        }
      >
        {(at) => (
          <>
            <PickField
              desk={desk}
              at={[...at, 'hazard']}
              label={phrase('workshop.hazard')}
              options={wordedOptions(say, HAZARDS, 'workshop.hazard')}
            />
            <AreaField desk={desk} at={[...at, 'text']} label={phrase('workshop.caution-text')} rows={2} />
            <Attached desk={desk} at={at} />
            <div className="fields">
              <TextField
                desk={desk}
                at={[...at, 'reviewed', 'by']}
                label={phrase('workshop.looked-over-by')}
              />
              <TextField
                desk={desk}
                at={[...at, 'reviewed', 'on']}
                label={phrase('workshop.looked-over-on')}
                type="date"
              />
              {writer !== '' && (
                <button
                  type="button"
                  className="button plain"
                  onClick={() =>
                    edit({ kind: 'set', at: [...at, 'reviewed'], value: { by: writer, on: today } })
                  }
                >
                  {say(phrase('workshop.look-over', { writer }))}
                </button>
              )}
            </div>
          </>
        )}
      </Records>
      <AddRecord
        desk={desk}
        at={CAUTIONS}
        stem="caution-"
        value={{ attachedTo: [] }}
        label={phrase('workshop.add-caution')}
      />
    </>
  );
}
