/** A drawing in text: charts and tables as such, the others as they are told to who cannot see them. */
import { describeDrawing } from '../core/questions/describe/drawing.ts';
import type { Drawing } from '../core/questions/drawing.ts';
import { say as phrase } from '../core/questions/phrase.ts';
import type { Unit } from '../core/unit/unit.ts';
import type { Say } from '../words/words.ts';
import { table, wrap } from './layout.ts';

function chartInWords(drawing: Extract<Drawing, { kind: 'chart' }>, unit: Unit): string {
  const { chart, train } = unit.deck;
  const every = [...chart.ranges, ...(chart.neutral ?? [])];
  const rows = drawing.rows ? drawing.rows.flatMap((id) => every.filter((row) => row.id === id)) : every;
  const covered = (row: string, column: string) =>
    drawing.hiddenRows?.includes(row) || drawing.hiddenColumns?.includes(column);
  return table(
    [
      ['', ...train.elements.map((element) => element.id)],
      ...rows.map((row) => [
        row.id,
        ...train.elements.map(({ id }) => (covered(row.id, id) ? '?' : row.applied.includes(id) ? 'X' : '·')),
      ]),
    ],
    '  ',
  );
}

export function drawingInWords(drawing: Drawing, unit: Unit, say: Say): string {
  switch (drawing.kind) {
    case 'chart':
      return chartInWords(drawing, unit);
    case 'train': {
      const applied = [...(drawing.applied ?? [])];
      return wrap(say(phrase('cli.ask.train', { count: applied.length, applied })), '  ');
    }
    case 'table': {
      const rows = drawing.rows.map((row) => [say(row.head), ...row.cells.map(say)]);
      return table([['', ...drawing.columns.map(say)], ...rows], '  ');
    }
    default:
      return [
        phrase('cli.ask.drawing', { title: phrase(`drawing.${drawing.kind}`) }),
        ...describeDrawing(drawing, unit),
      ]
        .map((told) => wrap(say(told), '  '))
        .join('\n');
  }
}
