/** In which ranges is an element on? One column of the chart, ticked from memory; no other column is shown. */
import type { Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { FactId, Family, Lure } from '../question.ts';
import { elementInWords, rangeOptions, setAnswer } from './chart-parts.ts';

const factOf = (element: string): FactId => `element:${element}/ranges`;

const columnOf = (unit: Unit, element: string): string[] =>
  unit.ranges.filter((range) => range.applied.includes(element)).map((range) => range.id);

/** Elements whose whole column is verified, neither empty nor full. */
function askable(unit: Unit): string[] {
  if (unit.ranges.some((range) => !unit.sure(range.ref))) return [];
  return unit.deck.train.elements
    .filter((element) => unit.sure(`element:${element.id}`))
    .map((element) => element.id)
    .filter((id) => {
      const used = columnOf(unit, id).length;
      return used > 0 && used < unit.ranges.length;
    });
}

function luresFor(unit: Unit, element: string, fact: FactId): Lure[] {
  const column = columnOf(unit, element);
  const order = unit.ranges.map((range) => range.id);
  const lure = (picks: readonly string[], slipUp: Lure['slipUp']): Lure => ({
    answer: setAnswer(picks),
    slipUp,
    fact,
  });
  const backward = unit.ranges.filter((range) => range.ratio.compare(0n) < 0).map((range) => range.id);
  const forward = order.filter((id) => !backward.includes(id));
  const places = column.filter((id) => forward.includes(id)).map((id) => forward.indexOf(id));
  const run = places.length > 0 ? forward.slice(Math.min(...places), Math.max(...places) + 1) : [];
  const elements = unit.deck.train.elements.map(({ id }) => id);
  const place = elements.indexOf(element);
  return [
    lure(
      order.filter((id) => run.includes(id) || (backward.includes(id) && column.includes(id))),
      'once-on-stays-on',
    ),
    lure(
      column.filter((id) => !backward.includes(id)),
      'reverse-left-out',
    ),
    ...[elements[place - 1], elements[place + 1]]
      .filter((id) => id !== undefined)
      .map((id) => lure(columnOf(unit, id), 'neighbour-element')),
  ];
}

export const elementRanges: Family = {
  id: 'element-ranges',
  level: 'read',
  form: 'set',
  facts: (unit) => askable(unit).map(factOf),
  pose(unit, fact) {
    const element = askable(unit).find((id) => factOf(id) === fact);
    if (!element) return undefined;
    const column = columnOf(unit, element);
    return {
      facts: [fact],
      uses: [`element:${element}`, ...unit.ranges.map((range) => range.ref)],
      prompt: say('element-ranges.prompt', { element: thing('element', element) }),
      drawing: { kind: 'train', applied: [element] },
      space: { form: 'set', options: rangeOptions(unit.ranges) },
      answers: [setAnswer(column)],
      lures: luresFor(unit, element, fact),
      explanation: {
        row: say('element-ranges.row', {
          element: thing('element', element),
          count: column.length,
          ranges: column.map((id) => thing('range', id)),
        }),
        reason: elementInWords(unit, element),
        more: [],
        drawing: { kind: 'chart', litColumns: [element] },
      },
      isRight: (answer) =>
        answer.form === 'set' &&
        unit.deck.chart.ranges.every(
          (row) => answer.picks.includes(row.id) === row.applied.includes(element),
        ),
    };
  },
};
