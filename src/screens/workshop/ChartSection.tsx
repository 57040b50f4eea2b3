/** The apply chart: pasted from a spreadsheet or tapped in, solved while it is written. */
import { useMemo, useState } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import { readRows } from '../../core/workshop/rows.ts';
import { takeChart } from '../../core/workshop/take-chart.ts';
import { readChart } from '../../exchange/csv/chart.ts';
import { addRow, ChartGrid, isFine, readingPhrase } from './ChartGrid.tsx';
import type { SectionProps } from './desk.ts';
import { Fold } from './Fold.tsx';
import { IdField } from './fields.tsx';
import { PasteBox } from './PasteBox.tsx';
import { Vouch } from './Provenance.tsx';
import { AddRecord, headOf, Records } from './Records.tsx';
import { UnsureCells } from './UnsureCells.tsx';

export function ChartSection({ desk }: SectionProps) {
  const { draft, settled, say, edit } = desk;
  const [marking, setMarking] = useState(false);
  const readings = useMemo(() => readRows(settled), [settled]);
  const elements = draft.train?.elements ?? [];
  const ranges = draft.chart?.ranges ?? [];
  const neutral = draft.chart?.neutral ?? [];
  const solved = readings.ranges.filter((row) => isFine(row, 'ranges') === true).length;
  const ids = (records: readonly { readonly id?: string | undefined }[]) =>
    records.flatMap(({ id }) => id ?? []);
  const known = { elements: ids(elements), ranges: ids([...ranges, ...neutral]) };
  return (
    <>
      <PasteBox
        has={ranges.length}
        say={say}
        label={phrase('workshop.paste-chart')}
        how={phrase('workshop.paste-chart-how')}
        read={(text) => readChart(text, known)}
        tell={(chart) =>
          phrase('workshop.chart-read', {
            ranges: chart.ranges.length,
            neutral: chart.neutral.length,
            elements: chart.elements.map(({ id }) => id),
            turned: chart.transposed ? 'yes' : 'no',
          })
        }
        onTake={(chart) => desk.replace(takeChart(draft, chart))}
      />
      {elements.length > 0 && ranges.length + neutral.length > 0 && (
        <>
          <div className="choices wide">
            <label className="choice">
              <input
                type="checkbox"
                checked={marking}
                onChange={({ target }) => setMarking(target.checked)}
              />
              <span>{say(phrase('workshop.marking'))}</span>
            </label>
          </div>
          <div className="wide-table">
            {ranges.length > 0 && (
              <ChartGrid desk={desk} which="ranges" readings={readings.ranges} marking={marking} />
            )}
            {neutral.length > 0 && (
              <ChartGrid desk={desk} which="neutral" readings={readings.neutral} marking={marking} />
            )}
          </div>
          <div role="status">
            <p>{say(phrase('workshop.solved-rows', { solved, count: ranges.length }))}</p>
            <ul className="steps">
              {(['ranges', 'neutral'] as const).flatMap((which) =>
                readings[which].flatMap((reading, index) => {
                  if (isFine(reading, which) !== false) return [];
                  const row = settled.chart?.[which]?.[index]?.id ?? String(index + 1);
                  const words = say(
                    phrase('workshop.row-off', { row, reading: readingPhrase(reading, which) }),
                  );
                  return [<li key={`${which} ${words}`}>{words}</li>];
                }),
              )}
            </ul>
          </div>
          <p className="aside">{say(phrase('workshop.grid-keys'))}</p>
          <UnsureCells desk={desk} />
        </>
      )}
      <div className="row-of-buttons">
        <button type="button" className="button plain" onClick={() => edit(addRow(desk, 'ranges'))}>
          {say(phrase('workshop.add-range'))}
        </button>
        <button type="button" className="button plain" onClick={() => edit(addRow(desk, 'neutral'))}>
          {say(phrase('workshop.add-neutral'))}
        </button>
        <AddRecord desk={desk} at={['train', 'elements']} stem="E" label={phrase('workshop.add-column')} />
      </div>
      {elements.length > 0 && (
        <Fold summary={say(phrase('workshop.columns'))}>
          <Records
            desk={desk}
            at={['train', 'elements']}
            kind="element"
            ordered
            head={(index) => headOf(desk, ['train', 'elements'], index, 'workshop.element')}
          >
            {(at) => (
              <IdField
                kind="element"
                desk={desk}
                at={[...at, 'id']}
                label={phrase('workshop.id')}
                className="narrow"
              />
            )}
          </Records>
        </Fold>
      )}
      <Vouch
        desk={desk}
        lists={[
          ['chart', 'ranges'],
          ['chart', 'neutral'],
        ]}
      />
    </>
  );
}
