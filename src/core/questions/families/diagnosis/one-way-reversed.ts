/** A one-way was fitted the wrong way round: what does each range do, the engine pulling? The chart is in view. */
import type { Fault } from '../../../faults/fault.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { FactId, Family } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { elementInWords, oneWayIds, rangeOptions } from '../chart-parts.ts';
import { perUnit } from '../per-unit.ts';
import {
  askable,
  drawRanges,
  proofOf,
  type RangeTest,
  type Result,
  resultLines,
  resultOptions,
  resultPairs,
  resultRefs,
  resultTable,
  resultWith,
} from './range-results.ts';

const reversedFact = (element: string): FactId => `element:${element}/reversed`;

const oneWays = perUnit((unit: Unit) =>
  oneWayIds(unit).filter((element) => askable(unit, { kind: 'one-way-reversed', element }).length > 0),
);

export const oneWayReversed: Family = {
  id: 'one-way-reversed',
  level: 'reason',
  form: 'pair',
  facts: (unit) => oneWays(unit).map(reversedFact),
  pose(unit, fact, random) {
    const element = oneWays(unit).find((id) => reversedFact(id) === fact);
    if (element === undefined) return undefined;
    const fault: Fault = { kind: 'one-way-reversed', element };
    const rows = drawRanges(unit, fault, random);
    const uses = ({ range }: RangeTest) => range.applied.includes(element);
    const rules: readonly (readonly [SlipUp, (row: RangeTest) => Result | null])[] = [
      ['reversed-like-failed', (row) => resultWith(unit, { kind: 'element-fails', element }, row)],
      ['reversed-like-locked', (row) => resultWith(unit, { kind: 'element-stuck', element }, row)],
      ['uses-it-ranges-only', (row) => (uses(row) ? 'no-drive' : 'works')],
      ['fault-left-out', () => 'works'],
    ];
    return {
      facts: [fact],
      uses: resultRefs(unit, fault, rows),
      prompt: say('one-way-reversed.prompt', { element: thing('element', element) }),
      drawing: { kind: 'chart', litColumns: [element] },
      space: { form: 'pair', left: rangeOptions(rows.map(({ range }) => range)), right: resultOptions },
      answers: [resultPairs(rows, (row) => resultWith(unit, fault, row))!],
      lures: rules.flatMap(([slipUp, rule]) => {
        const answer = resultPairs(rows, rule);
        return answer ? [{ answer, slipUp, fact }] : [];
      }),
      explanation: {
        row: elementInWords(unit, element),
        reason: say('one-way-reversed.reason'),
        more: resultLines(unit, fault, rows),
        drawing: resultTable(unit, fault, rows),
      },
      isRight: proofOf(unit, fault, rows),
    };
  },
};
