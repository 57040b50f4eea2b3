/** Pictures that can be told as tables: charts and tables, what is covered shown as "?". */

import type { Drawing } from '../../core/questions/drawing.ts';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import type { Deck } from '../../core/unit/deck.ts';
import type { Picture, Speak } from './item.ts';

const COVERED = '?';

function chartTable(deck: Deck, drawing: Extract<Drawing, { kind: 'chart' }>, speak: Speak): Picture {
  const all = [...deck.chart.ranges, ...(deck.chart.neutral ?? [])];
  const shown = drawing.rows
    ? drawing.rows.flatMap((id) => all.find((row) => row.id === id) ?? [])
    : deck.chart.ranges;
  const elements = deck.train.elements;
  const covered = (row: string, column: string) =>
    drawing.hiddenRows?.includes(row) || drawing.hiddenColumns?.includes(column);
  return {
    kind: 'table',
    columns: [
      speak(phrase('qti.chart.range')),
      ...elements.map(({ id }) => speak(thing('element', id))),
      ...(drawing.showRatios ? [speak(phrase('qti.chart.ratio'))] : []),
    ],
    rows: shown.map((row) => [
      speak(thing('range', row.id)),
      ...elements.map(({ id }) => (covered(row.id, id) ? COVERED : row.applied.includes(id) ? 'X' : '')),
      ...(drawing.showRatios ? ['ratio' in row && typeof row.ratio === 'string' ? row.ratio : ''] : []),
    ]),
  };
}

/** The drawing as a table; null for those that only a drawing, or words about one, can show. */
export function tablePicture(deck: Deck, drawing: Drawing, speak: Speak): Picture | null {
  if (drawing.kind === 'chart') return chartTable(deck, drawing, speak);
  if (drawing.kind !== 'table') return null;
  return {
    kind: 'table',
    columns: drawing.columns.map(speak),
    rows: drawing.rows.map(({ head, cells }) => [speak(head), ...cells.map(speak)]),
  };
}
