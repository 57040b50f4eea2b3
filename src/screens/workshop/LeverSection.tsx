/** The lever: what each position commands, and what its valve opens or feeds by hand. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Place } from '../../core/workshop/draft.ts';
import type { SectionProps } from './desk.ts';
import { ChoiceField, SeveralField, TextField, textAt } from './fields.tsx';
import { frictionOf, idOptions, wordedOptions } from './options.ts';
import { Provenance, Vouch } from './Provenance.tsx';
import { AddRecord, headOf, Records } from './Records.tsx';

const POSITIONS: Place = ['lever', 'positions'];

export function LeverSection({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const manual = textAt(desk, ['lever', 'valve']) === 'manual';
  const positions = draft.lever?.positions ?? [];
  const rows = [...(draft.chart?.ranges ?? []), ...(draft.chart?.neutral ?? [])].flatMap(({ id, name }) =>
    id ? [{ value: id, label: name ? `${id} (${name})` : id }] : [],
  );
  const friction = idOptions(frictionOf(draft));
  /** P, R, N and D with the rows that are called so, and all other rows that drive in D. */
  const usual = () => {
    const called = (letter: string) =>
      rows.map(({ value }) => value).filter((id) => id.toUpperCase().startsWith(letter));
    const driving = (draft.chart?.ranges ?? []).flatMap(({ id }) => id ?? []);
    const [park, reverse, neutral] = ['P', 'R', 'N'].map(called) as [string[], string[], string[]];
    const gate = [
      { id: 'P', rows: park },
      { id: 'R', rows: reverse },
      { id: 'N', rows: neutral },
      { id: 'D', rows: driving.filter((id) => !reverse.includes(id)) },
    ];
    edit({
      kind: 'all',
      edits: gate.map((value) => ({ kind: 'insert', at: POSITIONS, value })),
    });
  };
  return (
    <>
      <ChoiceField
        desk={desk}
        at={['lever', 'valve']}
        label={phrase('workshop.lever-valve')}
        options={wordedOptions(say, ['manual', 'none'], 'workshop.lever-valve')}
      />
      <Records
        desk={desk}
        at={POSITIONS}
        ordered
        head={(index) => headOf(desk, POSITIONS, index, 'workshop.position')}
      >
        {(at) => (
          <>
            <div className="fields tight">
              <TextField
                desk={desk}
                at={[...at, 'id']}
                label={phrase('workshop.position-id')}
                className="narrow"
              />
              <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
            </div>
            <SeveralField
              desk={desk}
              at={[...at, 'rows']}
              label={phrase('workshop.commands')}
              options={rows}
            />
            {manual && (
              <>
                <SeveralField
                  desk={desk}
                  at={[...at, 'opens']}
                  label={phrase('workshop.opens')}
                  options={friction}
                />
                <SeveralField
                  desk={desk}
                  at={[...at, 'feeds']}
                  label={phrase('workshop.feeds-by-hand')}
                  options={friction}
                />
              </>
            )}
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <div className="row-of-buttons">
        {positions.length === 0 && rows.length > 0 && (
          <button type="button" className="button plain" onClick={usual}>
            {say(phrase('workshop.usual-gate'))}
          </button>
        )}
        <AddRecord
          desk={desk}
          at={POSITIONS}
          value={{ id: '', rows: [] }}
          label={phrase('workshop.add-position')}
        />
      </div>
      <Vouch desk={desk} lists={[POSITIONS]} />
    </>
  );
}
