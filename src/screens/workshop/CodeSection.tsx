/** Trouble codes: what each watches in this unit, and what it means in the shop's own words. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { CODE_KINDS } from '../../core/unit/service.ts';
import type { Place } from '../../core/workshop/draft.ts';
import { codesFromLines } from '../../core/workshop/service-lines.ts';
import type { Desk, SectionProps } from './desk.ts';
import { IdField, type Option, PickField, SeveralField, TextField, textAt } from './fields.tsx';
import { LinesBox } from './LinesBox.tsx';
import { refOptions, wordedOptions } from './options.ts';
import { Provenance, Vouch } from './Provenance.tsx';
import { Records } from './Records.tsx';

const CODES: Place = ['codes'];

/** A code about a ratio watches ranges; any other watches parts. */
function watchable({ draft, say }: Desk, kind: string): Option[] {
  if (kind === 'ratio') return refOptions(say, 'range', draft.chart?.ranges);
  return [
    ...refOptions(say, 'solenoid', draft.solenoids),
    ...refOptions(say, 'sensor', draft.sensors),
    ...refOptions(say, 'thermistor', draft.electrical?.thermistors),
    ...refOptions(say, 'element', draft.train?.elements),
  ];
}

export function CodeSection({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  return (
    <>
      <p className="aside">{say(phrase('workshop.codes-hint'))}</p>
      <LinesBox
        say={say}
        label={phrase('workshop.code-lines')}
        how={phrase('workshop.code-lines-how')}
        onTake={(text) =>
          edit({
            kind: 'all',
            edits: codesFromLines(
              text,
              (draft.codes ?? []).map(({ id }) => id),
            ).map((value) => ({ kind: 'insert', at: CODES, value })),
          })
        }
      />
      <Records
        folds
        desk={desk}
        at={CODES}
        kind="code"
        head={(index) =>
          phrase('workshop.code', {
            id: draft.codes?.[index]?.id ?? '',
            meaning: draft.codes?.[index]?.meaning ?? '',
          })
        }
      >
        {(at) => (
          <>
            <div className="fields tight">
              <IdField
                kind="code"
                desk={desk}
                at={[...at, 'id']}
                label={phrase('workshop.code-id')}
                className="narrow"
              />
              <PickField
                desk={desk}
                at={[...at, 'kind']}
                label={phrase('workshop.code-kind')}
                options={wordedOptions(say, CODE_KINDS, 'workshop.code-kind')}
                onPick={(value) =>
                  edit({
                    kind: 'all',
                    edits: [
                      { kind: 'set', at: [...at, 'kind'], value: value || undefined },
                      // Ranges and parts are never watched by the same kind.
                      ...((value === 'ratio') === (textAt(desk, [...at, 'kind']) === 'ratio')
                        ? []
                        : [{ kind: 'set' as const, at: [...at, 'watches'], value: [] }]),
                    ],
                  })
                }
              />
              <TextField
                desk={desk}
                at={[...at, 'letter']}
                label={phrase('workshop.code-letter')}
                className="narrow"
              />
            </div>
            <TextField desk={desk} at={[...at, 'meaning']} label={phrase('workshop.code-meaning')} />
            <SeveralField
              desk={desk}
              at={[...at, 'watches']}
              label={phrase('workshop.code-watches')}
              options={watchable(desk, textAt(desk, [...at, 'kind']))}
            />
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <Vouch desk={desk} lists={[CODES]} />
    </>
  );
}
