/** A heading with a table of records under it, each told in a line with its source. */
import type { ReactNode } from 'react';
import type { Provenance } from '../../core/unit/deck.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { ProvenanceNote } from './ProvenanceNote.tsx';

export interface Entry {
  readonly id: string;
  readonly head: string;
  readonly text: ReactNode;
  readonly of: Provenance;
}

export function Listing({ entries, unit, say }: { entries: readonly Entry[]; unit: Unit; say: Say }) {
  return (
    <table className="listing">
      <tbody>
        {entries.map(({ id, head, text, of }) => (
          <tr key={id}>
            <th scope="row">{head}</th>
            <td>
              {text}
              <ProvenanceNote of={of} unit={unit} say={say} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
