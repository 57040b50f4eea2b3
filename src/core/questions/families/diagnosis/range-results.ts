/** What each range does with a fault, as pairs: rows that are asked, options, and the chart before and after. */
import { predict } from '../../../diagnosis/predict.ts';
import { readingPhrase } from '../../../diagnosis/say.ts';
import type { Reading, Test } from '../../../diagnosis/test.ts';
import type { Fault } from '../../../faults/fault.ts';
import { usualPosition } from '../../../faults/pressure.ts';
import type { Random } from '../../../random.ts';
import type { Range, Ref, Unit } from '../../../unit/unit.ts';
import type { TableDrawing } from '../../drawing.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { Answer, Option } from '../../question.ts';
import { FEWEST_RANGES, faultRanges } from '../fault-parts.ts';
import { seenAgain } from './seen-again.ts';
import { benchRefs, interlocksSure } from './suspect-parts.ts';

/** As many as fit a phone. */
const MOST_RANGES = 5;

const RESULTS = ['works', 'other-ratio', 'tied-up', 'no-drive'] as const;
export type Result = (typeof RESULTS)[number];

export const resultOptions: readonly Option[] = RESULTS.map((id) => ({
  id,
  label: say(`element-stuck.${id}`),
}));

export interface RangeTest {
  readonly range: Range;
  readonly test: Extract<Test, { kind: 'road' }>;
}

const roadTest = (unit: Unit, range: Range): RangeTest => ({
  range,
  test: { kind: 'road', row: range.id, position: usualPosition(unit.deck, range) },
});

/** A held output and what is not settled are not asked. */
function resultOf(reading: Reading | null): Result | null {
  if (reading?.startsWith('range:')) return 'other-ratio';
  return RESULTS.find((result) => result === reading) ?? null;
}

export const resultWith = (unit: Unit, fault: Fault, { test }: RangeTest): Result | null =>
  resultOf(predict(unit, fault, test));

/** The ranges that can be asked about this fault; none where too few can, or none is touched. */
export function askable(unit: Unit, fault: Fault): RangeTest[] {
  if (!interlocksSure(unit)) return [];
  const tests = faultRanges(unit)
    .map((range) => roadTest(unit, range))
    .filter(({ test }) => test.position === null || unit.sure(`position:${test.position}`))
    .filter((row) => resultWith(unit, fault, row) !== null);
  const touched = tests.some((row) => resultWith(unit, fault, row) !== 'works');
  return touched && tests.length >= FEWEST_RANGES ? tests : [];
}

/** At most five of them in chart order, one that the fault touches and one that it leaves alone among them. */
export function drawRanges(unit: Unit, fault: Fault, random: Random): RangeTest[] {
  const all = askable(unit, fault);
  const anchors = [true, false].flatMap((works) =>
    random.sample(
      all.filter((row) => (resultWith(unit, fault, row) === 'works') === works),
      1,
    ),
  );
  const others = random.shuffle(all.filter((row) => !anchors.includes(row)));
  const drawn = [...anchors, ...others].slice(0, MOST_RANGES);
  return all.filter((row) => drawn.includes(row));
}

/** Null where the rule leaves a range unsettled. */
export function resultPairs(
  rows: readonly RangeTest[],
  rule: (row: RangeTest) => Result | null,
): Answer | null {
  const pairs: Record<string, string> = {};
  for (const row of rows) {
    const result = rule(row);
    if (result === null) return null;
    pairs[row.range.id] = result;
  }
  return { form: 'pair', pairs };
}

/** Judges answers by the second working, which is done once. */
export function proofOf(unit: Unit, fault: Fault, rows: readonly RangeTest[]): (answer: Answer) => boolean {
  let found: ReadonlyMap<string, Result | null> | undefined;
  return (answer) => {
    found ??= new Map(rows.map(({ range, test }) => [range.id, resultOf(seenAgain(unit, fault, test))]));
    return answer.form === 'pair' && [...found].every(([range, result]) => answer.pairs[range] === result);
  };
}

export const resultRefs = (unit: Unit, fault: Fault, rows: readonly RangeTest[]): Ref[] =>
  benchRefs(
    unit,
    [fault],
    rows.map(({ test }) => test),
  );

/** The chart before and after, the ranges that change lit. */
export const resultTable = (unit: Unit, fault: Fault, rows: readonly RangeTest[]): TableDrawing => ({
  kind: 'table',
  columns: [say('before-after.sound'), say('before-after.fault')],
  rows: rows.map(({ range, test }) => ({
    head: thing('range', range.id),
    cells: [readingPhrase(unit, test, 'works'), readingPhrase(unit, test, predict(unit, fault, test)!)],
    lit: predict(unit, fault, test) !== 'works',
  })),
});

/** "Range 3: ties up." */
export const resultLines = (unit: Unit, fault: Fault, rows: readonly RangeTest[]): Phrase[] =>
  rows.map(({ range, test }) =>
    say('before-after.line', {
      range: thing('range', range.id),
      does: readingPhrase(unit, test, predict(unit, fault, test)!),
    }),
  );
