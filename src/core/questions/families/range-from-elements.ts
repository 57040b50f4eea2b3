/** Which range has just these elements on? The chart read the other way; the train shows where they sit. */
import type { Range, Unit } from '../../unit/unit.ts';
import { say } from '../phrase.ts';
import type { Family, Lure } from '../question.ts';
import {
  elementInWords,
  elementNames,
  neighboursOf,
  rangeFact,
  rangeOptions,
  rawApplied,
  rowInWords,
  sameRow,
  sureRanges,
} from './chart-parts.ts';

/** Enough wrong rows to choose among, few enough to read. */
const MOST_CHOICES = 8;

const sharesWith = (a: Range, b: Range) => a.applied.some((id) => b.applied.includes(id));

/** Wrong rows a rule gives: those that share an element, the printed neighbours, and what stands beside those. */
function wrongRows(unit: Unit, range: Range): Lure[] {
  const others = sureRanges(unit).filter((row) => row.id !== range.id);
  const sharing = others.filter((row) => sharesWith(row, range));
  const beside = neighboursOf(unit, range);
  const lure = (row: Range, slipUp: Lure['slipUp']): Lure => ({
    answer: { form: 'one', pick: row.id },
    slipUp,
    fact: rangeFact(range.id),
  });
  return [
    ...sharing.map((row) => lure(row, 'subset-range')),
    ...beside.map((row) => lure(row, 'neighbour-range')),
  ];
}

const pickOf = (lure: Lure) => (lure.answer.form === 'one' ? lure.answer.pick : '');

function askable(unit: Unit): Range[] {
  const ranges = sureRanges(unit);
  return ranges.filter(
    (range) =>
      unit.ranges.every((row) => row.id === range.id || !sameRow(row, range)) &&
      new Set(wrongRows(unit, range).map(pickOf)).size >= 3,
  );
}

export const rangeFromElements: Family = {
  id: 'range-from-elements',
  level: 'read',
  form: 'one',
  facts: (unit) => askable(unit).map((range) => rangeFact(range.id)),
  pose(unit, fact, random) {
    const range = askable(unit).find((candidate) => rangeFact(candidate.id) === fact);
    if (!range) return undefined;
    const lures = wrongRows(unit, range);
    const wrong = random.sample([...new Set(lures.map(pickOf))], MOST_CHOICES - 1);
    const shown = sureRanges(unit).filter((row) => row.id === range.id || wrong.includes(row.id));
    return {
      facts: [fact],
      uses: shown.map((row) => row.ref),
      prompt: say('range-from-elements.prompt', { elements: elementNames(range.applied) }),
      drawing: { kind: 'train', applied: range.applied },
      space: { form: 'one', options: rangeOptions(shown) },
      answers: [{ form: 'one', pick: range.id }],
      lures: lures.filter((lure) => wrong.includes(pickOf(lure))),
      explanation: {
        row: rowInWords(range),
        reason: say('range-from-elements.reason'),
        more: range.applied.map((id) => elementInWords(unit, id)),
        drawing: { kind: 'chart', rows: shown.map((row) => row.id), litRows: [range.id] },
      },
      isRight: (answer) => {
        if (answer.form !== 'one') return false;
        const raw = rawApplied(unit, answer.pick);
        return raw.length === range.applied.length && raw.every((id) => range.applied.includes(id));
      },
    };
  },
};
