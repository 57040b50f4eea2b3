/** A drawing in text: charts and tables as such, the others as they are told to who cannot see them. */
import {
  describeDepthGauge,
  describeDial,
  describeMicrometer,
  describeWindow,
} from '../core/questions/describe/gauges.ts';
import { describeCircuit, describeConnector, describeValveBody } from '../core/questions/describe/harness.ts';
import { describeSeat, describeShaftLine } from '../core/questions/describe/seats.ts';
import { describeSpeeds } from '../core/questions/describe/speeds.ts';
import { describeStack } from '../core/questions/describe/stack.ts';
import { stepsShown } from '../core/questions/describe/steps.ts';
import type { Drawing } from '../core/questions/drawing.ts';
import { type Phrase, say as phrase } from '../core/questions/phrase.ts';
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

/** What is told of a drawing that is neither chart, train nor table. */
function toldOf(drawing: Exclude<Drawing, { kind: 'chart' | 'train' | 'table' }>, unit: Unit): Phrase[] {
  const { deck } = unit;
  switch (drawing.kind) {
    case 'stack':
      return describeStack(deck, drawing);
    case 'seat':
      return describeSeat(deck, drawing);
    case 'shaft-line':
      return describeShaftLine(deck, drawing);
    case 'valve-body':
      return describeValveBody(deck, drawing);
    case 'connector':
      return describeConnector(deck, drawing);
    case 'circuit':
      return describeCircuit(drawing);
    case 'dial':
      return describeDial(drawing);
    case 'micrometer':
      return describeMicrometer(drawing);
    case 'depth-gauge':
      return describeDepthGauge(drawing);
    case 'speeds':
      return describeSpeeds(unit, drawing);
    case 'window':
      return describeWindow(drawing);
    case 'steps':
      return stepsShown(deck, drawing).map(({ text, isDone }) => ({
        key: 'text',
        values: { text: `${isDone ? '[x]' : '[ ]'} ${text}` },
      }));
  }
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
        ...toldOf(drawing, unit),
      ]
        .map((told) => wrap(say(told), '  '))
        .join('\n');
  }
}
