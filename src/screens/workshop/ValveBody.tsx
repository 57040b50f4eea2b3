/** Where the solenoids sit on the valve body: a grid as large as its face, a solenoid picked for each place. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { countOf } from '../../core/workshop/train.ts';
import type { SectionProps } from './desk.ts';
import { TextField } from './fields.tsx';
import { Provenance } from './Provenance.tsx';

/** The largest face that a deck can hold. */
const LARGEST = 12;

export function ValveBody({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const body = draft.valveBody;
  const placed = body?.solenoids ?? [];
  const [rows, columns] = [countOf(body?.rows) ?? 0, countOf(body?.columns) ?? 0];
  const solenoids = (draft.solenoids ?? []).flatMap(({ id }) => id ?? []);
  const at = (row: number, column: number) =>
    placed.find((one) => Number(one.row) === row && Number(one.column) === column)?.solenoid ?? '';
  /** A solenoid sits once: it leaves the place where it was, and whatever sat here leaves this one. */
  const put = (row: number, column: number, solenoid: string) => {
    const others = placed.filter(
      (one) => one.solenoid !== solenoid && (Number(one.row) !== row || Number(one.column) !== column),
    );
    const next = solenoid === '' ? others : [...others, { solenoid, row, column }];
    edit({ kind: 'set', at: ['valveBody', 'solenoids'], value: next.length > 0 ? next : undefined });
  };
  return (
    <>
      <h3>{say(phrase('workshop.valve-body'))}</h3>
      <p className="aside">{say(phrase('workshop.valve-body-hint'))}</p>
      <div className="fields tight">
        <TextField
          desk={desk}
          at={['valveBody', 'rows']}
          label={phrase('workshop.face-rows')}
          inputMode="numeric"
          className="narrow"
        />
        <TextField
          desk={desk}
          at={['valveBody', 'columns']}
          label={phrase('workshop.face-columns')}
          inputMode="numeric"
          className="narrow"
        />
        <TextField
          desk={desk}
          at={['valveBody', 'seenFrom']}
          label={phrase('workshop.seen-how')}
          placeholder={say(phrase('workshop.seen-such-as'))}
        />
      </div>
      {rows > 0 && columns > 0 && rows <= LARGEST && columns <= LARGEST && (
        <>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
          <section className="wide-table" tabIndex={0} aria-label={say(phrase('workshop.valve-body'))}>
            <table className="chart-grid">
              <tbody>
                {Array.from({ length: rows }, (_, row) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a place is its number
                  <tr key={row}>
                    {Array.from({ length: columns }, (_, column) => (
                      // biome-ignore lint/suspicious/noArrayIndexKey: a place is its number
                      <td key={column}>
                        <select
                          className="cell"
                          aria-label={say(
                            phrase('workshop.face-place', { row: row + 1, column: column + 1 }),
                          )}
                          value={at(row + 1, column + 1)}
                          onChange={({ target }) => put(row + 1, column + 1, target.value)}
                        >
                          <option value="">–</option>
                          {solenoids.map((id) => (
                            <option key={id} value={id}>
                              {id}
                            </option>
                          ))}
                        </select>
                      </td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
          <Provenance desk={desk} at={['valveBody']} />
        </>
      )}
      {body !== undefined && (
        <button
          type="button"
          className="button plain"
          onClick={() => edit({ kind: 'set', at: ['valveBody'], value: undefined })}
        >
          {say(phrase('workshop.no-valve-body'))}
        </button>
      )}
    </>
  );
}
