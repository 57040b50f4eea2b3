/**
 * An element no longer takes hold: which ranges are lost? Its column is covered; the rest of the chart is
 * shown. A range is lost when it does not drive, or drives at another ratio, with the engine pulling: a range
 * that a one-way covers is not lost, though it no longer brakes the engine.
 */
import type { ElementFault } from '../../faults/fault.ts';
import { outcomeOf, type TrainOutcome } from '../../faults/outcome.ts';
import { settle } from '../../gears/one-way.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import type { FactId, Family, Lure } from '../question.ts';
import type { SlipUp } from '../slip-ups.ts';
import { distinctLures, elementNames, oneWayIds, rangeOptions, setAnswer } from './chart-parts.ts';
import { faultRanges, faultRefs, outcomeInWords, rangeNames, recheck } from './fault-parts.ts';

const failsFact = (element: string): FactId => `element:${element}/fails`;

const ids = (ranges: readonly Range[]) => ranges.map(({ id }) => id);

interface Setting {
  readonly element: string;
  readonly ranges: readonly Range[];
  readonly outcomes: ReadonlyMap<Range, TrainOutcome>;
  readonly lost: readonly Range[];
}

/** Undefined where the element makes no question. */
function settingOf(unit: Unit, ranges: readonly Range[], element: string): Setting | undefined {
  const outcomes = new Map(
    ranges.map((range) => [range, outcomeOf(unit, { kind: 'element-fails', element }, range)] as const),
  );
  const lost = ranges.filter((range) => outcomes.get(range)!.kind !== 'works');
  return lost.length > 0 ? { element, ranges, outcomes, lost } : undefined;
}

const elementIds = (unit: Unit): string[] => unit.deck.train.elements.map(({ id }) => id);

/** One-ways that hold in a range when the element does not; none where the range never needed it. */
const coverOf = (unit: Unit, element: string, range: Range): readonly string[] =>
  settle(
    unit.deck.train,
    range.applied.filter((id) => id !== element),
  ).holding;

/** What becomes of a range that uses the element. */
function lineFor(unit: Unit, { element, outcomes }: Setting, range: Range): Phrase {
  const outcome = outcomes.get(range)!;
  if (outcome.kind !== 'works') return outcomeInWords(unit, range, outcome);
  const cover = coverOf(unit, element, range);
  const names = { range: thing('range', range.id), element: thing('element', element) };
  return cover.length > 0
    ? say('outcome.covered', { ...names, oneWays: elementNames(cover) })
    : say('outcome.unneeded', names);
}

export const elementFails: Family = {
  id: 'element-fails',
  level: 'reason',
  form: 'set',
  facts(unit) {
    const ranges = faultRanges(unit);
    return elementIds(unit)
      .filter((element) => settingOf(unit, ranges, element))
      .map(failsFact);
  },
  pose(unit, fact) {
    const asked = elementIds(unit).find((id) => failsFact(id) === fact);
    const setting = asked === undefined ? undefined : settingOf(unit, faultRanges(unit), asked);
    if (!setting) return undefined;
    const { element, ranges, outcomes, lost } = setting;
    const fault: ElementFault = { kind: 'element-fails', element };
    const users = ranges.filter((range) => range.applied.includes(element));
    const spared = users.filter((range) => !lost.includes(range));
    const covered = spared.filter((range) => coverOf(unit, element, range).length > 0);
    const undriven = lost.filter((range) => !['becomes', 'other-ratio'].includes(outcomes.get(range)!.kind));
    const inOrder = (picked: readonly Range[]) => ids(ranges.filter((range) => picked.includes(range)));
    const lure = (picked: readonly Range[], slipUp: SlipUp): Lure => ({
      answer: setAnswer(inOrder(picked)),
      slipUp,
      fact,
    });
    const columns = elementIds(unit);
    const place = columns.indexOf(element);
    const beside = [columns[place - 1], columns[place + 1]]
      .map((other) => ranges.filter((range) => other !== undefined && range.applied.includes(other)))
      .filter((column) => column.length > 0);
    const lures = [
      lure(users.slice(0, 1), 'first-use-only'),
      lure([...lost, ...covered], 'one-way-cover-forgotten'),
      lure([...lost, ...spared.filter((range) => !covered.includes(range))], 'unneeded-counted'),
      lure(undriven, 'other-ratio-kept'),
      lure(ranges, 'all-ranges-lost'),
      ...beside.map((column) => lure(column, 'neighbour-element')),
    ].filter(({ answer }) => answer.form === 'set' && answer.picks.length > 0);
    let checked: ReadonlySet<string> | undefined;
    const reallyLost = () => new Set(ids(ranges).filter((range) => recheck(unit, fault, range) !== 'works'));
    return {
      facts: [fact],
      uses: faultRefs(unit, ranges),
      prompt: say(
        oneWayIds(unit).includes(element) ? 'element-fails.prompt-one-way' : 'element-fails.prompt',
        { element: thing('element', element) },
      ),
      drawing: { kind: 'chart', hiddenColumns: [element], litColumns: [element] },
      space: { form: 'set', options: rangeOptions(ranges) },
      answers: [setAnswer(ids(lost))],
      lures: distinctLures(lures),
      explanation: {
        row: say('element-fails.row', { element: thing('element', element), ranges: rangeNames(users) }),
        reason: say('element-fails.reason', { ranges: rangeNames(lost) }),
        more: ranges
          .filter((range) => users.includes(range) || lost.includes(range))
          .map((range) => lineFor(unit, setting, range)),
        drawing: { kind: 'chart', litColumns: [element] },
      },
      isRight(answer) {
        checked ??= reallyLost();
        const { size } = checked;
        return (
          answer.form === 'set' &&
          answer.picks.length === size &&
          answer.picks.every((range) => checked!.has(range))
        );
      },
    };
  },
};
