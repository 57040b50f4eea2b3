/**
 * Does a one-way hold or overrun in each range, with the engine pulling and with the output pushing back? The
 * chart is shown without the one-way's column. Left out are ranges in which it stands between shafts that turn
 * alike and carry nothing through it, or share a load with a brake: there it does neither.
 */
import { commandedIn } from '../../faults/behaviour.ts';
import { LOADS, type Load, overrunOf, settle } from '../../gears/one-way.ts';
import { elementOf } from '../../gears/train.ts';
import type { Random } from '../../random.ts';
import { type Range, trainRefs, type Unit } from '../../unit/unit.ts';
import { say, thing } from '../phrase.ts';
import type { Answer, FactId, Family, Lure } from '../question.ts';
import { floatOutput, floatSpeeds } from '../second-route.ts';
import {
  distinctLures,
  elementInWords,
  frictionIds,
  oneWayIds,
  rangeOptions,
  rawApplied,
} from './chart-parts.ts';
import { faultRanges } from './fault-parts.ts';
import { perUnit } from './per-unit.ts';

const FEWEST_RANGES = 2;
const MOST_RANGES = 4;

const ACTS = ['holds', 'overruns'] as const;
type Act = (typeof ACTS)[number];
type Acts = Readonly<Record<Load, Act>>;

const factOf = (oneWay: string): FactId => `element:${oneWay}/holds`;

/** What it does in a range under each load; undefined where it does neither, or its speed is left open in drive. */
function actsIn(unit: Unit, oneWay: string, range: Range): Acts | undefined {
  const { train } = unit.deck;
  const friction = commandedIn(train, range.applied);
  const element = elementOf(train, oneWay);
  const drive = settle(train, friction);
  if (drive.holding.includes(oneWay)) {
    const coast = settle(train, friction, 'coast');
    return coast.holding.length === 0 ? { drive: 'holds', coast: 'overruns' } : undefined;
  }
  const coast = settle(train, friction, 'coast');
  const runsOn = [drive, coast].every(({ solution }) => overrunOf(element, solution)?.gt(0n));
  return runsOn ? { drive: 'overruns', coast: 'overruns' } : undefined;
}

interface Setting {
  readonly oneWay: string;
  readonly acts: ReadonlyMap<Range, Acts>;
}

const holdsIn = (acts: ReadonlyMap<Range, Acts>) =>
  [...acts].filter(([, { drive }]) => drive === 'holds').map(([range]) => range);

const settings = perUnit((unit: Unit): Setting[] => {
  const ranges = faultRanges(unit);
  return oneWayIds(unit)
    .map((oneWay) => ({
      oneWay,
      acts: new Map(
        ranges.flatMap((range) => {
          const acts = actsIn(unit, oneWay, range);
          return acts ? [[range, acts] as const] : [];
        }),
      ),
    }))
    .filter(({ acts }) => acts.size >= FEWEST_RANGES && holdsIn(acts).length > 0);
});

/** One range that it holds in, always, and others. */
function drawRanges({ acts }: Setting, random: Random): Range[] {
  const all = [...acts.keys()];
  const held = random.pick(holdsIn(acts));
  const others = random.sample(
    all.filter((range) => range !== held),
    MOST_RANGES - 1,
  );
  return all.filter((range) => range === held || others.includes(range));
}

export const oneWayActs: Family = {
  id: 'one-way-acts',
  level: 'reason',
  form: 'fill',
  facts: (unit) => settings(unit).map(({ oneWay }) => factOf(oneWay)),
  pose(unit, fact, random) {
    const setting = settings(unit).find(({ oneWay }) => factOf(oneWay) === fact);
    if (!setting) return undefined;
    const { oneWay, acts } = setting;
    const ranges = drawRanges(setting, random);
    const cellOf = (range: Range, load: Load) => `${range.id}/${load}`;
    const filled = (rule: (range: Range, load: Load) => Act): Answer => ({
      form: 'fill',
      cells: Object.fromEntries(
        ranges.flatMap((range) => LOADS.map((load) => [cellOf(range, load), rule(range, load)])),
      ),
    });
    const right = (range: Range, load: Load): Act => acts.get(range)![load];
    const lures: Lure[] = [
      { answer: filled(() => 'holds'), slipUp: 'one-way-always-holds', fact },
      { answer: filled((range) => right(range, 'drive')), slipUp: 'one-way-holds-both-ways', fact },
      {
        answer: filled((_, load) => (load === 'drive' ? 'holds' : 'overruns')),
        slipUp: 'holds-whenever-driven',
        fact,
      },
      {
        answer: filled((range, load) => right(range, load === 'drive' ? 'coast' : 'drive')),
        slipUp: 'drive-coast-swapped',
        fact,
      },
    ];
    const held = ranges.filter((range) => right(range, 'drive') === 'holds');
    const names = { oneWay: thing('element', oneWay), ranges: held.map(({ id }) => thing('range', id)) };
    return {
      facts: [fact],
      uses: [...trainRefs(unit.deck), ...ranges.map((range) => range.ref)],
      prompt: say('one-way-acts.prompt', names),
      drawing: {
        kind: 'chart',
        rows: ranges.map(({ id }) => id),
        hiddenColumns: oneWayIds(unit),
        litColumns: [oneWay],
      },
      space: {
        form: 'fill',
        rows: rangeOptions(ranges),
        columns: LOADS.map((id) => ({ id, label: say(`one-way-acts.${id}`) })),
        marks: ACTS.map((id) => ({ id, label: say(`one-way-acts.${id}`) })),
        asked: ranges.flatMap((range) => LOADS.map((load) => cellOf(range, load))),
        given: {},
      },
      answers: [filled(right)],
      lures: distinctLures(lures),
      explanation: {
        row: elementInWords(unit, oneWay),
        reason: say('one-way-acts.reason', names),
        more: ranges.map((range) =>
          say(`one-way-acts.line-${right(range, 'drive')}`, { ...names, range: thing('range', range.id) }),
        ),
        drawing: { kind: 'train', applied: held[0]!.applied },
      },
      /**
       * By the other solver: in drive it holds where the range would not drive at its speed without it, which
       * is also why it lets go on coast; elsewhere its shafts run apart, in its free sense.
       */
      isRight: (answer) => {
        if (answer.form !== 'fill') return false;
        const { train } = unit.deck;
        const { between, overruns } = elementOf(train, oneWay);
        return ranges.every((range) => {
          const applied = rawApplied(unit, range.id);
          const friction = applied.filter((id) => frictionIds(unit).includes(id));
          const others = applied.filter((id) => id !== oneWay);
          const needed = applied.includes(oneWay) && floatOutput(train, others) === null;
          const speeds = floatSpeeds(train, needed ? applied : others);
          const speedOf = (shaft: string) => (shaft === 'case' ? 0 : (speeds?.get(shaft) ?? Number.NaN));
          const ahead = speedOf(between[0]) - speedOf(between[1]);
          const free = (overruns === 'backward' ? -ahead : ahead) > 1e-9;
          const lonely = floatOutput(train, friction) === null;
          const given = LOADS.map((load) => answer.cells[cellOf(range, load)]).join();
          return needed ? lonely && given === 'holds,overruns' : free && given === 'overruns,overruns';
        });
      },
    };
  },
};
