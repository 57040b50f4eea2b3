/** A small table computed for one question: a head for each row, words in the cells. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Drawing } from '../../core/questions/question.ts';
import type { Say } from '../../words/words.ts';
import { Scroller } from './Scroller.tsx';

export type WordTable = Extract<Drawing, { kind: 'table' }>;

export function TableDrawing({ drawing, say }: { drawing: WordTable; say: Say }) {
  const { columns, rows } = drawing;
  // Columns may or may not name the column of row heads.
  const widest = Math.max(0, ...rows.map((row) => row.cells.length));
  const headsNamed = columns.length > widest;
  const title = say(phrase('drawing.table'));
  return (
    <Scroller label={say(phrase('drawing.scroll', { drawing: title }))}>
      <table className="dr-table">
        <thead>
          <tr>
            {!headsNamed && <td />}
            {columns.map((column, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: columns have no other identity and never move
              <th scope="col" key={index}>
                {say(column)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: rows have no other identity and never move
            <tr key={index} className={row.lit ? 'dr-lit-row' : undefined}>
              <th scope="row">
                {say(row.head)}
                {row.lit && <span className="dr-unseen">, {say(phrase('drawing.marked'))}</span>}
              </th>
              {row.cells.map((cell, place) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: as above
                <td key={place}>{say(cell)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
