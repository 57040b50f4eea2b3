/** Connectors: the face as large as it is, its pins numbered at once, and what each of them serves. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { type Edit, freshId, type Place, valueAt } from '../../core/workshop/draft.ts';
import { countOf } from '../../core/workshop/train.ts';
import type { Desk, SectionProps } from './desk.ts';
import { ChoiceField, IdField, type Option, TextField, textAt } from './fields.tsx';
import { refOptions, wordedOptions } from './options.ts';
import { Provenance } from './Provenance.tsx';
import { AddRecord, headOf, Records } from './Records.tsx';

const CONNECTORS: Place = ['electrical', 'connectors'];

type Pins = readonly { readonly id?: string; readonly row?: unknown; readonly column?: unknown }[];

/** Everything a pin can serve, in the words of the shop. */
function servedOptions({ draft, say }: Desk): Option[] {
  return [
    ...refOptions(say, 'solenoid', draft.solenoids),
    ...refOptions(say, 'sensor', draft.sensors),
    ...refOptions(say, 'thermistor', draft.electrical?.thermistors),
    ...refOptions(say, 'supply', draft.electrical?.supplies),
    ...wordedOptions(say, ['ground', 'spare'], 'workshop.serves'),
  ];
}

function PinTable({ desk, at }: { desk: Desk; at: Place }) {
  const { draft, say, edit } = desk;
  const place = [...at, 'pins'];
  const pins = (valueAt(draft, place) ?? []) as Pins;
  const [rows, columns] = [countOf(textAt(desk, [...at, 'rows'])), countOf(textAt(desk, [...at, 'columns']))];
  const served = servedOptions(desk);
  const numbered = () => {
    const edits = Array.from({ length: (rows ?? 0) * (columns ?? 0) }, (_, index): Edit[] => {
      const [row, column] = [Math.floor(index / columns!) + 1, (index % columns!) + 1];
      const has = pins.some((pin) => Number(pin.row) === row && Number(pin.column) === column);
      return has ? [] : [{ kind: 'insert', at: place, value: { id: String(index + 1), row, column } }];
    });
    edit({ kind: 'all', edits: edits.flat() });
  };
  return (
    <>
      {rows !== null && columns !== null && rows * columns <= 200 && pins.length < rows * columns && (
        <button type="button" className="button plain" onClick={numbered}>
          {say(phrase('workshop.number-pins', { count: rows * columns }))}
        </button>
      )}
      {pins.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
        <section className="wide-table" tabIndex={0} aria-label={say(phrase('workshop.pins'))}>
          <table className="chart-grid pins">
            <thead>
              <tr>
                {(['pin-id', 'pin-row', 'pin-column', 'serves'] as const).map((head) => (
                  <th key={head} scope="col">
                    {say(phrase(`workshop.${head}`))}
                  </th>
                ))}
                <th scope="col">
                  <span className="unseen">{say(phrase('workshop.remove'))}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {pins.map((pin, index) => {
                const name = pin.id || String(index + 1);
                return (
                  // biome-ignore lint/suspicious/noArrayIndexKey: ids change while they are typed
                  <tr key={index}>
                    {(['id', 'row', 'column'] as const).map((field) => (
                      <td key={field}>
                        <TextField
                          desk={desk}
                          at={[...place, index, field]}
                          label={phrase(`workshop.pin.${field}`, { pin: name })}
                          inputMode={field === 'id' ? 'text' : 'numeric'}
                          className="bare"
                        />
                      </td>
                    ))}
                    <td>
                      <select
                        className="cell wide"
                        aria-label={say(phrase('workshop.pin.serves', { pin: name }))}
                        value={textAt(desk, [...place, index, 'serves'])}
                        onChange={({ target }) =>
                          edit({
                            kind: 'set',
                            at: [...place, index, 'serves'],
                            value: target.value || undefined,
                          })
                        }
                      >
                        <option value="">{say(phrase('workshop.pick'))}</option>
                        {served.map(({ value, label }) => (
                          <option key={value} value={value}>
                            {label}
                          </option>
                        ))}
                      </select>
                    </td>
                    <td>
                      <button
                        type="button"
                        className="button plain small"
                        onClick={() => edit({ kind: 'remove', at: [...place, index] })}
                      >
                        <span aria-hidden="true">×</span>
                        <span className="unseen">{say(phrase('workshop.remove-pin', { pin: name }))}</span>
                      </button>
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </section>
      )}
    </>
  );
}

export function Connectors({ desk }: SectionProps) {
  const { draft, say } = desk;
  const taken = (draft.electrical?.connectors ?? []).map(({ id }) => id);
  return (
    <>
      <h3>{say(phrase('workshop.connectors'))}</h3>
      <p className="aside">{say(phrase('workshop.connectors-hint'))}</p>
      <Records
        folds
        desk={desk}
        at={CONNECTORS}
        kind="connector"
        head={(index) => headOf(desk, CONNECTORS, index, 'workshop.connector')}
      >
        {(at) => (
          <>
            <ChoiceField
              desk={desk}
              at={[...at, 'seenFrom']}
              label={phrase('workshop.face-of')}
              options={wordedOptions(say, ['unit', 'harness'], 'workshop.face-of')}
            />
            <div className="fields tight">
              <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
              <TextField
                desk={desk}
                at={[...at, 'rows']}
                label={phrase('workshop.face-rows')}
                inputMode="numeric"
                className="narrow"
              />
              <TextField
                desk={desk}
                at={[...at, 'columns']}
                label={phrase('workshop.face-columns')}
                inputMode="numeric"
                className="narrow"
              />
              <IdField kind="connector" desk={desk} at={[...at, 'id']} label={phrase('workshop.short-id')} />
            </div>
            <PinTable desk={desk} at={at} />
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <AddRecord
        desk={desk}
        at={CONNECTORS}
        value={{ id: taken.includes('case') ? freshId('plug-', taken) : 'case', pins: [] }}
        label={phrase('workshop.add-connector')}
      />
    </>
  );
}
