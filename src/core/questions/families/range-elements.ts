/** Which elements does a range apply? Answered by ticking, from memory: the row is covered. */
import { makeDecimal } from '../../rational.ts';
import { say, thing } from '../phrase.ts';
import type { Family, Lure } from '../question.ts';
import {
  elementInWords,
  elementOptions,
  neighboursOf,
  oneWayIds,
  rangeFact,
  rowInWords,
  setAnswer,
  sureRanges,
} from './chart-parts.ts';

export const rangeElements: Family = {
  id: 'range-elements',
  level: 'read',
  form: 'set',
  facts: (unit) => sureRanges(unit).map((range) => rangeFact(range.id)),
  pose(unit, fact) {
    const range = sureRanges(unit).find((candidate) => rangeFact(candidate.id) === fact);
    if (!range) return undefined;
    const raw = unit.deck.chart.ranges.find((row) => row.id === range.id)!;
    const neighbours = neighboursOf(unit, range);
    const lures: Lure[] = neighbours.map((row) => ({
      answer: setAnswer(row.applied),
      slipUp: 'neighbour-range',
      fact,
    }));
    const byOil = range.applied.filter((id) => !oneWayIds(unit).includes(id));
    if (byOil.length < range.applied.length)
      lures.push({ answer: setAnswer(byOil), slipUp: 'one-way-left-out', fact });
    return {
      facts: [fact],
      uses: [range.ref],
      prompt: say('range-elements.prompt', { range: thing('range', range.id) }),
      drawing: {
        kind: 'chart',
        hiddenRows: [range.id],
        litRows: [range.id],
        rows: unit.ranges.filter((row) => row === range || neighbours.includes(row)).map((row) => row.id),
      },
      space: { form: 'set', options: elementOptions(unit) },
      answers: [setAnswer(range.applied)],
      lures,
      explanation: {
        row: rowInWords(range),
        reason: say('chart.drives-at', {
          range: thing('range', range.id),
          ratio: makeDecimal(range.ratio, range.decimals),
        }),
        more: range.applied.map((id) => elementInWords(unit, id)),
        drawing: { kind: 'chart', litRows: [range.id], showRatios: true },
      },
      isRight: (answer) =>
        answer.form === 'set' &&
        answer.picks.length === raw.applied.length &&
        raw.applied.every((id) => answer.picks.includes(id)),
    };
  },
};
