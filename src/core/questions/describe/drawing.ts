/** Any drawing that is neither chart, train nor table, as it is told to who cannot see it. */

import type { Unit } from '../../unit/unit.ts';
import type { Drawing } from '../drawing.ts';
import type { Phrase } from '../phrase.ts';
import { describeDepthGauge, describeDial, describeMicrometer, describeWindow } from './gauges.ts';
import { describeCircuit, describeConnector, describeValveBody } from './harness.ts';
import { describeSeat, describeShaftLine } from './seats.ts';
import { describeSpeeds } from './speeds.ts';
import { describeStack } from './stack.ts';
import { stepsShown } from './steps.ts';

/** What is told of a drawing that is neither chart, train nor table. */
export function describeDrawing(
  drawing: Exclude<Drawing, { kind: 'chart' | 'train' | 'table' }>,
  unit: Unit,
): Phrase[] {
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
