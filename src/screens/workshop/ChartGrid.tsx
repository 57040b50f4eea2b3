/** The apply chart as a grid: taps or X for on, arrows to move; each row solved beside what it states. */
import { type KeyboardEvent, useRef } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import { makeDecimal } from '../../core/rational.ts';
import type { Edit, Place } from '../../core/workshop/draft.ts';
import { applyEdit } from '../../core/workshop/draft.ts';
import { dropMentions } from '../../core/workshop/mentions.ts';
import type { RowReading } from '../../core/workshop/rows.ts';
import type { Desk } from './desk.ts';
import { IdField, TextField, textAt } from './fields.tsx';

type Which = 'ranges' | 'neutral';

interface Props {
  readonly desk: Desk;
  readonly which: Which;
  readonly readings: readonly RowReading[];
  /** Taps mark cells as not sure instead of turning them on. */
  readonly marking: boolean;
}

export const readingPhrase = ({ state, ratio, agrees }: RowReading, which: Which) =>
  state === 'drives' && ratio
    ? phrase(
        `workshop.row.${which === 'neutral' ? 'neutral-drives' : agrees === false ? 'disagrees' : 'drives'}`,
        {
          ratio: makeDecimal(ratio, 3),
        },
      )
    : phrase(
        `workshop.row.${which === 'neutral' && state !== 'waits' && state !== 'tied-up' ? 'stays' : state}`,
      );

/** Whether a reading is what a chart may say there; null while it waits. */
export function isFine({ state, agrees }: RowReading, which: Which): boolean | null {
  if (state === 'waits') return null;
  return which === 'ranges'
    ? state === 'drives' && agrees !== false
    : state !== 'drives' && state !== 'tied-up';
}

const toggled = (list: readonly string[] | undefined, id: string, order: readonly string[]) => {
  const now = list ?? [];
  if (now.includes(id)) return now.filter((entry) => entry !== id);
  return [...now, id].sort((a, b) => order.indexOf(a) - order.indexOf(b));
};

const STEPS: Readonly<Record<string, readonly [row: number, column: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

export function ChartGrid({ desk, which, readings, marking }: Props) {
  const table = useRef<HTMLTableElement>(null);
  const { draft, say, edit } = desk;
  const elements = (draft.train?.elements ?? []).map(({ id, kind }) => ({
    id: id ?? '',
    oneWay: kind === 'one-way',
  }));
  const order = elements.map(({ id }) => id);
  const rows = draft.chart?.[which] ?? [];

  const change = (row: number, field: 'applied' | 'unsureCells', id: string) => {
    const next = toggled(rows[row]?.[field], id, order);
    const value = field === 'unsureCells' && next.length === 0 ? undefined : next;
    edit({ kind: 'set', at: ['chart', which, row, field], value });
  };
  const move = (event: KeyboardEvent<HTMLElement>) => {
    const { row, column } = event.currentTarget.dataset;
    const step = STEPS[event.key];
    const id = order[Number(column)] ?? '';
    if (step) {
      const [to, across] = [Number(row) + step[0], Number(column) + step[1]];
      const cell = table.current?.querySelector<HTMLElement>(`[data-row="${to}"][data-column="${across}"]`);
      if (!cell) return;
      event.preventDefault();
      cell.focus();
    } else if (event.key === 'x' || event.key === 'X') change(Number(row), 'applied', id);
    else if (event.key === '?') change(Number(row), 'unsureCells', id);
  };
  const removeRow = (row: number) => {
    const at: Place = ['chart', which, row];
    const left = applyEdit(draft, { kind: 'remove', at });
    desk.replace(dropMentions(left, 'row', rows[row]?.id ?? ''));
  };

  return (
    <table className="chart-grid" ref={table}>
      <caption>{say(phrase(`workshop.${which}`))}</caption>
      <thead>
        <tr>
          <th scope="col">{say(phrase('workshop.row'))}</th>
          {elements.map(({ id }, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: ids change while they are typed
            <th key={index} scope="col">
              {id || '?'}
            </th>
          ))}
          {which === 'ranges' && <th scope="col">{say(phrase('workshop.stated'))}</th>}
          <th scope="col">{say(phrase('workshop.solved'))}</th>
          <th scope="col">
            <span className="unseen">{say(phrase('workshop.remove'))}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row, index) => {
          const reading = readings[index];
          const fine = reading ? isFine(reading, which) : null;
          const name = row.id || String(index + 1);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: ids change while they are typed
            <tr key={index} className={fine === false ? 'off' : undefined}>
              <th scope="row">
                <IdField
                  kind="row"
                  desk={desk}
                  at={['chart', which, index, 'id']}
                  label={phrase('workshop.row-no', { number: index + 1 })}
                  className="bare"
                />
              </th>
              {elements.map(({ id, oneWay }, column) => {
                const on = row.applied?.includes(id) ?? false;
                const unsure = row.unsureCells?.includes(id) ?? false;
                const mark = `${on ? (oneWay ? '(X)' : 'X') : ''}${unsure ? '?' : ''}`;
                return (
                  // biome-ignore lint/suspicious/noArrayIndexKey: ids change while they are typed
                  <td key={column}>
                    <button
                      type="button"
                      className={unsure ? 'cell unsure' : 'cell'}
                      aria-pressed={on}
                      aria-label={say(
                        phrase('workshop.cell', { row: name, element: id, unsure: unsure ? 'yes' : 'no' }),
                      )}
                      data-row={index}
                      data-column={column}
                      disabled={id === ''}
                      onClick={() => change(index, marking ? 'unsureCells' : 'applied', id)}
                      onKeyDown={move}
                    >
                      {mark}
                    </button>
                  </td>
                );
              })}
              {which === 'ranges' && (
                <td>
                  <TextField
                    desk={desk}
                    at={['chart', which, index, 'ratio']}
                    label={phrase('workshop.ratio-of', { row: name })}
                    inputMode="decimal"
                    className="bare ratio"
                  />
                </td>
              )}
              <td className="reading">{reading && say(readingPhrase(reading, which))}</td>
              <td>
                <button type="button" className="button plain small" onClick={() => removeRow(index)}>
                  <span aria-hidden="true">×</span>
                  <span className="unseen">{say(phrase('workshop.remove-row', { row: name }))}</span>
                </button>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** A row after the last one, called the next number where the last is one. */
export function addRow(desk: Desk, which: Which): Edit {
  const rows = desk.draft.chart?.[which] ?? [];
  const last = textAt(desk, ['chart', which, rows.length - 1, 'id']);
  const taken = [...(desk.draft.chart?.ranges ?? []), ...(desk.draft.chart?.neutral ?? [])].map(
    ({ id }) => id,
  );
  const next =
    which === 'neutral'
      ? taken.includes('N')
        ? 'P'
        : 'N'
      : /^\d+$/.test(last)
        ? String(Number(last) + 1)
        : rows.length === 0
          ? '1'
          : 'R';
  return {
    kind: 'insert',
    at: ['chart', which],
    value: { id: taken.includes(next) ? '' : next, applied: [] },
  };
}
