/**
 * A brake or clutch never lets go: what does each range do? The chart is shown; whether one element more binds
 * the train is worked out. At most five ranges, so that it fits a phone. A range whose output would be held
 * still is left out.
 */
import type { ElementFault } from '../../faults/fault.ts';
import { outcomeOf, type TrainOutcome } from '../../faults/outcome.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Answer, FactId, Family, Lure, Option } from '../question.ts';
import type { SlipUp } from '../slip-ups.ts';
import { frictionIds, rangeOptions } from './chart-parts.ts';
import { FEWEST_RANGES, faultRanges, faultRefs, outcomeInWords, rangeNames, recheck } from './fault-parts.ts';

const MOST_RANGES = 5;

const stuckFact = (element: string): FactId => `element:${element}/stuck`;

const RESULTS = ['works', 'other-ratio', 'tied-up', 'no-drive'] as const;
type Result = (typeof RESULTS)[number];

const resultOptions: readonly Option[] = RESULTS.map((result) => ({
  id: result,
  label: say(`element-stuck.${result}`),
}));

function resultOf({ kind }: TrainOutcome): Result {
  if (kind === 'becomes' || kind === 'output-held') return 'other-ratio';
  return kind;
}

/** Outcome by range; undefined where the element makes no question. */
function outcomesOf(
  unit: Unit,
  ranges: readonly Range[],
  element: string,
): ReadonlyMap<Range, TrainOutcome> | undefined {
  const outcomes = ranges
    .map((range) => [range, outcomeOf(unit, { kind: 'element-stuck', element }, range)] as const)
    .filter(([, outcome]) => outcome.kind !== 'output-held');
  const matters =
    outcomes.some(([range]) => range.applied.includes(element)) &&
    outcomes.some(([, { kind }]) => kind !== 'works');
  return matters && outcomes.length >= FEWEST_RANGES ? new Map(outcomes) : undefined;
}

export const elementStuck: Family = {
  id: 'element-stuck',
  level: 'reason',
  form: 'pair',
  facts(unit) {
    const ranges = faultRanges(unit);
    return frictionIds(unit)
      .filter((element) => outcomesOf(unit, ranges, element))
      .map(stuckFact);
  },
  pose(unit, fact, random) {
    const element = frictionIds(unit).find((id) => stuckFact(id) === fact);
    const outcomes = element === undefined ? undefined : outcomesOf(unit, faultRanges(unit), element);
    if (element === undefined || !outcomes) return undefined;
    const fault: ElementFault = { kind: 'element-stuck', element };
    const uses = (range: Range) => range.applied.includes(element);
    const byThumb = (range: Range): Result => (uses(range) ? 'works' : 'tied-up');
    const all = [...outcomes.keys()];
    // Always among them, where there is one: a range that breaks the rule of thumb, one that uses the element
    // and one that does not.
    const anchors = [
      all.filter((range) => resultOf(outcomes.get(range)!) !== byThumb(range)),
      all.filter(uses),
      all.filter((range) => !uses(range)),
    ].flatMap((ranges) => random.sample(ranges, 1));
    const others = random.shuffle(all.filter((range) => !anchors.includes(range)));
    const picked = [...new Set([...anchors, ...others])].slice(0, MOST_RANGES);
    const left = all.filter((range) => picked.includes(range));

    const pair = (resultFor: (range: Range) => Result): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(left.map((range) => [range.id, resultFor(range)])),
    });
    const lure = (slipUp: SlipUp, resultFor: (range: Range) => Result): Lure => ({
      answer: pair(resultFor),
      slipUp,
      fact,
    });
    let checked: ReadonlyMap<string, string> | undefined;
    return {
      facts: [fact],
      uses: faultRefs(unit, left),
      prompt: say('element-stuck.prompt', { element: thing('element', element) }),
      drawing: { kind: 'chart', litColumns: [element] },
      space: { form: 'pair', left: rangeOptions(left), right: resultOptions },
      answers: [pair((range) => resultOf(outcomes.get(range)!))],
      lures: [
        lure('stuck-like-failed', (range) =>
          resultOf(outcomeOf(unit, { kind: 'element-fails', element }, range)),
        ),
        lure('unused-means-tied-up', byThumb),
        lure('uses-it-ranges-only', (range) => (uses(range) ? 'tied-up' : 'works')),
        lure('extra-is-harmless', () => 'works'),
      ],
      explanation: {
        row: say('element-stuck.row', {
          element: thing('element', element),
          ranges: rangeNames(all.filter(uses)),
        }),
        reason: say('element-stuck.reason'),
        more: left.map((range) => outcomeInWords(unit, range, outcomes.get(range)!)),
        drawing: { kind: 'chart', litColumns: [element], rows: left.map(({ id }) => id), showRatios: true },
      },
      isRight(answer) {
        if (answer.form !== 'pair') return false;
        checked ??= new Map(left.map(({ id }) => [id, recheck(unit, fault, id)]));
        return left.every(({ id }) => answer.pairs[id] === checked!.get(id));
      },
    };
  },
};
