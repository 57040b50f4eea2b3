/** A table of records, each told in a line with its source; only those looked for. */
import type { ReactNode } from 'react';
import type { Provenance } from '../../core/unit/deck.ts';
import type { Ref, Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { useNarrowed } from './found.ts';
import { ProvenanceNote } from './ProvenanceNote.tsx';

export interface Entry {
  readonly ref: Ref;
  readonly head: string;
  readonly text: ReactNode;
  readonly of: Provenance;
}

export function Listing({ entries, unit, say }: { entries: readonly Entry[]; unit: Unit; say: Say }) {
  const { shows } = useNarrowed();
  const shown = entries.filter(({ ref }) => shows(ref));
  if (shown.length === 0) return null;
  return (
    <table className="listing">
      <tbody>
        {shown.map(({ ref, head, text, of }) => (
          <tr key={ref}>
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
