/**
 * Some elements are known to be on or off: which one is best looked at next to tell the range? Best is what
 * leaves the fewest ranges when it goes badly; every element that does as well is ticked. The chart is in view.
 */
import type { Random } from '../../random.ts';
import type { Range, Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Family, Lure } from '../question.ts';
import {
  distinctLures,
  elementOptions,
  frictionIds,
  rawApplied,
  setAnswer,
  sureRanges,
} from './chart-parts.ts';
import { perUnit } from './per-unit.ts';

const FACT = 'skill:look-first';
const FEWEST_ELEMENTS = 4;
const FEWEST_LEFT = 3;
const MOST_KNOWN = 2;

interface Known {
  readonly element: string;
  readonly on: boolean;
}

interface Split {
  readonly element: string;
  readonly on: number;
  readonly off: number;
  /** Ranges left when the look goes badly. */
  readonly worst: number;
}

const isOn = (range: Range, element: string) => range.applied.includes(element);

const splitBy = (element: string, ranges: readonly Range[]): Split => {
  const on = ranges.filter((range) => isOn(range, element)).length;
  const off = ranges.length - on;
  return { element, on, off, worst: Math.max(on, off) };
};

/** Ranges that brakes and clutches alone tell apart; none where a row is not verified. */
const tellable = perUnit((unit: Unit): Range[] => {
  if (sureRanges(unit).length < unit.ranges.length) return [];
  const friction = frictionIds(unit);
  const rowOf = (range: Range) => friction.filter((id) => isOn(range, id)).join('+');
  return unit.ranges.filter((range) =>
    unit.ranges.every((row) => row === range || rowOf(row) !== rowOf(range)),
  );
});

interface Setting {
  readonly known: readonly Known[];
  readonly left: readonly Range[];
  readonly splits: readonly Split[];
  readonly best: readonly string[];
}

const fewest = (splits: readonly Split[], cost: (split: Split) => number): string[] => {
  const least = Math.min(...splits.map(cost));
  return splits.filter((split) => cost(split) === least).map(({ element }) => element);
};

function settingFor(unit: Unit, known: readonly Known[]): Setting | undefined {
  const left = tellable(unit).filter((range) =>
    known.every(({ element, on }) => isOn(range, element) === on),
  );
  const open = frictionIds(unit).filter((id) => known.every(({ element }) => element !== id));
  const splits = open.map((element) => splitBy(element, left));
  const best = fewest(splits, ({ worst }) => worst);
  const telling = left.length >= FEWEST_LEFT && splits.some(({ worst }) => worst < left.length);
  return telling && open.length >= FEWEST_ELEMENTS && best.length < open.length
    ? { known, left, splits, best }
    : undefined;
}

/** A range to be found out, and what has been seen of it so far. */
function draw(unit: Unit, random: Random): Setting | undefined {
  const ranges = tellable(unit);
  if (ranges.length < FEWEST_LEFT) return undefined;
  const range = random.pick(ranges);
  const room = Math.min(MOST_KNOWN, frictionIds(unit).length - FEWEST_ELEMENTS);
  if (room < 0) return undefined;
  const seen = random.sample(frictionIds(unit), random.int(0, room));
  const known = frictionIds(unit)
    .filter((id) => seen.includes(id))
    .map((element) => ({ element, on: isOn(range, element) }));
  return settingFor(unit, known);
}

export const lookFirst: Family = {
  id: 'look-first',
  level: 'reason',
  form: 'set',
  facts: (unit) => (tellable(unit).length >= FEWEST_LEFT && settingFor(unit, []) ? [FACT] : []),
  pose(unit, fact, random) {
    const setting = fact === FACT ? draw(unit, random) : undefined;
    if (!setting) return undefined;
    const { known, left, splits, best } = setting;
    const lures: Lure[] = [
      {
        answer: setAnswer(
          fewest(
            splits.filter(({ on, off }) => on > 0 && off > 0),
            ({ on, off }) => Math.min(on, off),
          ),
        ),
        slipUp: 'counts-on-luck',
        fact,
      },
      {
        answer: setAnswer(splits.filter(({ on, off }) => on > 0 && off > 0).map(({ element }) => element)),
        slipUp: 'every-split-alike',
        fact,
      },
      {
        answer: setAnswer(
          fewest(
            splits.map(({ element }) => splitBy(element, tellable(unit))),
            ({ worst }) => worst,
          ),
        ),
        slipUp: 'known-left-out',
        fact,
      },
      { answer: setAnswer(fewest(splits, ({ off }) => off)), slipUp: 'most-used-first', fact },
    ];
    const shown = splits.find(({ element }) => element === best[0])!;
    return {
      facts: [fact],
      uses: [
        ...frictionIds(unit).map((id) => `element:${id}` as const),
        ...unit.ranges.map((range) => range.ref),
      ],
      prompt: say('look-first.prompt', {
        count: known.length,
        known: known.map(({ element, on }) =>
          say(on ? 'look-first.on' : 'look-first.off', { element: thing('element', element) }),
        ),
      }),
      drawing: {
        kind: 'chart',
        rows: unit.ranges.map(({ id }) => id),
        litColumns: known.map(({ element }) => element),
      },
      space: {
        form: 'set',
        options: elementOptions(unit).filter(({ id }) => splits.some(({ element }) => element === id)),
      },
      answers: [setAnswer(best)],
      lures: distinctLures(lures),
      explanation: {
        row: say('look-first.row', { ranges: left.map(({ id }) => thing('range', id)) }),
        reason: say('look-first.reason', {
          element: thing('element', shown.element),
          on: shown.on,
          off: shown.off,
          worst: shown.worst,
        }),
        more: splits.map(({ element, on, off, worst }) =>
          say('look-first.line', { element: thing('element', element), on, off, worst }),
        ),
        drawing: { kind: 'chart', rows: left.map(({ id }) => id), litColumns: best },
      },
      // By the raw chart: nothing else that is left to look at cuts the ranges into a smaller largest heap.
      isRight: (answer) => {
        if (answer.form !== 'set') return false;
        const rows = tellable(unit)
          .map(({ id }) => rawApplied(unit, id))
          .filter((row) => known.every(({ element, on }) => row.includes(element) === on));
        const heapOf = (element: string) => {
          const sizes = [true, false].map((on) => rows.filter((row) => row.includes(element) === on).length);
          return Math.max(...sizes);
        };
        const heaps = splits.map(({ element }) => [element, heapOf(element)] as const);
        const smallest = Math.min(...heaps.map(([, heap]) => heap));
        return heaps.every(([element, heap]) => answer.picks.includes(element) === (heap === smallest));
      },
    };
  },
};
