/** Cells of the chart that nobody is sure of. Whoever checks one says so; its row says by whom and when. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Edit, Place } from '../../core/workshop/draft.ts';
import type { SectionProps } from './desk.ts';
import { checkedBy } from './Provenance.tsx';

export function UnsureCells({ desk }: SectionProps) {
  const { draft, say, edit, writer } = desk;
  const cells = (['ranges', 'neutral'] as const).flatMap((which) =>
    (draft.chart?.[which] ?? []).flatMap((row, index) =>
      (row.unsureCells ?? []).map((element) => ({
        at: ['chart', which, index] as Place,
        element,
        left: row.unsureCells!.filter((other) => other !== element),
        name: say(phrase('workshop.cell', { row: row.id || String(index + 1), element, unsure: 'no' })),
      })),
    ),
  );
  if (cells.length === 0) return null;
  const settle = (at: Place, left: readonly string[]) => {
    const edits: Edit[] = [
      { kind: 'set', at: [...at, 'unsureCells'], value: left.length > 0 ? left : undefined },
    ];
    // The row is vouched for once none of its cells is in doubt.
    if (writer !== '' && left.length === 0)
      edits.push({ kind: 'set', at: [...at, 'verified'], value: checkedBy(desk) });
    edit({ kind: 'all', edits });
  };
  return (
    <section className="frame">
      <h3>{say(phrase('workshop.unsure-cells'))}</h3>
      <ul className="attached">
        {cells.map(({ at, element, left, name }) => (
          <li key={`${at.join('/')} ${element}`}>
            {name}{' '}
            <button type="button" className="button plain small" onClick={() => settle(at, left)}>
              {say(phrase(writer === '' ? 'workshop.cell-sure' : 'workshop.cell-checked', { writer }))}
              <span className="unseen"> {name}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
