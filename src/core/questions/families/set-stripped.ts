/**
 * The teeth of one gearset are gone, so that no torque passes it: which ranges are lost? The chart is in view. A
 * range is lost when it does not drive or drives at another ratio, with the engine pulling.
 */
import { behaviourOf, commandedIn } from '../../faults/behaviour.ts';
import { solveBySpeeds } from '../../faults/by-speeds.ts';
import { solveSpeeds } from '../../gears/solve.ts';
import { MEMBERS, type Train } from '../../gears/train.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import type { FactId, Family, Lure } from '../question.ts';
import { distinctLures, rangeOptions, rawApplied, setAnswer } from './chart-parts.ts';
import { faultRanges, faultRefs, rangeNames } from './fault-parts.ts';
import { decimalText } from './gear-parts.ts';
import { perUnit } from './per-unit.ts';

const factOf = (gearset: string): FactId => `gearset:${gearset}/stripped`;

interface Setting {
  readonly gearset: string;
  readonly ranges: readonly Range[];
  readonly lost: readonly Range[];
}

const ids = (ranges: readonly Range[]) => ranges.map(({ id }) => id);

const withoutSet = (train: Train, gearset: string): Train => ({
  ...train,
  gearsets: train.gearsets.filter(({ id }) => id !== gearset),
});

/** Gearsets whose loss costs some ranges. */
const settings = perUnit((unit: Unit): Setting[] => {
  const { train } = unit.deck;
  const ranges = faultRanges(unit);
  return train.gearsets
    .map(({ id }): Setting => {
      const lost = ranges.filter((range) => {
        const behaviour = behaviourOf(unit, commandedIn(train, range.applied), withoutSet(train, id));
        return behaviour.does !== 'drives' || !behaviour.ratio.equals(range.ratio);
      });
      return { gearset: id, ranges, lost };
    })
    .filter(({ lost }) => lost.length > 0);
});

const setIn = (unit: Unit, gearset: string) => unit.deck.train.gearsets.find(({ id }) => id === gearset)!;

/** Whether all three members turn at one speed, so that no tooth passes another. */
function turnsAsOne(unit: Unit, gearset: string, { solution }: Range): boolean {
  const set = setIn(unit, gearset);
  const [first, ...others] = MEMBERS.map((member) => solution.speeds.get(set[member].shaft));
  return !!first && others.every((speed) => speed?.equals(first));
}

function lineFor(unit: Unit, { gearset, lost }: Setting, range: Range): Phrase {
  const { train } = unit.deck;
  const names = { range: thing('range', range.id), gearset: thing('gearset', gearset) };
  if (!lost.includes(range)) return say('set-stripped.line-kept', names);
  const { does, ...rest } = behaviourOf(unit, commandedIn(train, range.applied), withoutSet(train, gearset));
  return does === 'drives' && 'ratio' in rest
    ? say('set-stripped.line-other', { ...names, ratio: decimalText(rest.ratio, range.decimals) })
    : say(`set-stripped.line-${does}`, names);
}

/** Whether the range drives as charted without the set, from the raw chart and by the second route. */
function drivesWithout(unit: Unit, gearset: string, range: string): boolean {
  const { train } = unit.deck;
  const applied = rawApplied(unit, range);
  const { ratio } = solveBySpeeds(withoutSet(train, gearset), commandedIn(train, applied));
  return !!ratio && !!solveSpeeds(train, applied).ratio?.equals(ratio);
}

export const setStripped: Family = {
  id: 'set-stripped',
  level: 'reason',
  form: 'set',
  facts: (unit) => settings(unit).map(({ gearset }) => factOf(gearset)),
  pose(unit, fact) {
    const setting = settings(unit).find(({ gearset }) => factOf(gearset) === fact);
    if (!setting) return undefined;
    const { gearset, ranges, lost } = setting;
    const { train } = unit.deck;
    const lure = (picked: (range: Range) => boolean, slipUp: Lure['slipUp']): Lure => ({
      answer: setAnswer(ids(ranges.filter(picked))),
      slipUp,
      fact,
    });
    const asOne = (range: Range) => turnsAsOne(unit, gearset, range);
    const lures = [
      lure(() => true, 'all-ranges-lost'),
      lure((range) => range === lost[0], 'first-use-only'),
      lure((range) => !asOne(range), 'turning-means-working'),
      lure((range) => lost.includes(range) && !asOne(range), 'locked-set-spared'),
      lure((range) => lost.includes(range) && range.ratio.gt(0n), 'reverse-left-out'),
      ...train.gearsets
        .filter(({ id }) => id !== gearset)
        .map(({ id }) => {
          const other = settings(unit).find((candidate) => candidate.gearset === id);
          return lure((range) => other?.lost.includes(range) ?? false, 'neighbour-gearset');
        }),
    ].filter(({ answer }) => answer.form === 'set' && answer.picks.length > 0);
    let kept: ReadonlySet<string> | undefined;
    const { sun, ring, carrier } = setIn(unit, gearset);
    return {
      facts: [fact],
      uses: faultRefs(unit, ranges),
      prompt: say('set-stripped.prompt', { gearset: thing('gearset', gearset) }),
      drawing: {
        kind: 'train',
        litShafts: [sun.shaft, ring.shaft, carrier.shaft].filter((shaft) => shaft !== 'case'),
      },
      space: { form: 'set', options: rangeOptions(ranges) },
      answers: [setAnswer(ids(lost))],
      lures: distinctLures(lures),
      explanation: {
        row: say('set-stripped.row', { gearset: thing('gearset', gearset), ranges: rangeNames(lost) }),
        reason: say('set-stripped.reason'),
        more: ranges.map((range) => lineFor(unit, setting, range)),
        drawing: { kind: 'train', applied: lost[0]!.applied },
      },
      isRight(answer) {
        kept ??= new Set(ids(ranges).filter((id) => drivesWithout(unit, gearset, id)));
        return (
          answer.form === 'set' && ids(ranges).every((id) => answer.picks.includes(id) !== kept!.has(id))
        );
      },
    };
  },
};
