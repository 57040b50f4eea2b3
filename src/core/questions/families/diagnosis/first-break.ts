/**
 * Three units, each read along the chain from command to gear: where is the first link that does not follow from
 * the one before? What the solenoid gives with no current is told, so that every link can be judged.
 */
import { chainOf, type Link } from '../../../diagnosis/chain.ts';
import { predict } from '../../../diagnosis/predict.ts';
import { linkPhrase, readingPhrase } from '../../../diagnosis/say.ts';
import type { Reading } from '../../../diagnosis/test.ts';
import type { Fault, FaultKind } from '../../../faults/fault.ts';
import { pressuresWith, suppliedBy, usualPosition } from '../../../faults/pressure.ts';
import { faultSpace } from '../../../faults/space.ts';
import { elementsFedBy } from '../../../hydraulics/feeds.ts';
import { pressureAt } from '../../../hydraulics/solenoid.ts';
import type { DeckSolenoid, Pressure } from '../../../unit/deck.ts';
import type { Range, Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { frictionIds } from '../chart-parts.ts';
import { faultRanges } from '../fault-parts.ts';
import { perDeck } from '../per-unit.ts';
import { benchRefs } from './suspect-parts.ts';

const FACT = 'skill:first-break';
const CASES = 3;
const NAMES = ['A', 'B', 'C'] as const;

const ASKED = ['driver', 'winding', 'valve', 'feed', 'element'] as const satisfies readonly Link[];
type Asked = (typeof ASKED)[number];

const KINDS: readonly FaultKind[] = [
  'element-fails',
  'element-stuck',
  'feed-lost',
  'solenoid-stuck-off',
  'solenoid-stuck-on',
  'solenoid-unplugged',
  'supply-lost',
];

interface Run {
  readonly fault: Fault;
  readonly element: string;
  readonly rangeId: string;
  readonly position: string | null;
  readonly solenoid: string;
  /** Whether the row asks for current, and what is found along the chain. */
  readonly asked: boolean;
  readonly voltage: boolean;
  readonly current: boolean;
  readonly given: Pressure;
  readonly port: Pressure;
  readonly applied: boolean;
  readonly road: Reading;
  readonly broken: Asked;
}

function runOf(unit: Unit, fault: Fault, element: string, range: Range): Run[] {
  const chain = chainOf(unit, fault, element, range);
  const broken = ASKED.find((link) => link === chain?.firstBreak);
  const position = usualPosition(unit.deck, range);
  const port = pressuresWith(unit.deck, fault, range).get(element);
  const road = predict(unit, fault, { kind: 'road', row: range.id, position });
  if (!chain || !broken || !port || port === 'low' || !road || road === 'works') return [];
  const { sound, commanded } = chain;
  if (Object.values(sound).includes(null)) return [];
  const solenoid = unit.deck.solenoids!.find(({ id }) => id === chain.solenoid)!;
  const asked = commanded === 'on';
  const voltage = asked && sound.driver === true;
  const current = asked && sound.winding === true;
  const right = pressureAt(solenoid, commanded);
  const wrong: Pressure = right === 'full' ? 'none' : 'full';
  const given = sound.valve ? right : wrong;
  const applied = range.applied.includes(element);
  return [{ fault, element, rangeId: range.id, position, solenoid: solenoid.id, asked, voltage, current, given, port, applied, road, broken }]; // biome-ignore format: what is read, in one line
}

/** Elements whose own chain the fault is in. An interlock stands outside the chain, so what one blocks is left out. */
function touchedBy(unit: Unit, fault: Fault): string[] {
  const { deck } = unit;
  const solenoids =
    fault.kind === 'supply-lost'
      ? suppliedBy(deck, fault.supply)
      : (deck.solenoids ?? []).filter(({ id }) => 'solenoid' in fault && fault.solenoid === id);
  const touched = 'element' in fault ? [fault.element] : solenoids.flatMap((one) => elementsFedBy(deck, one));
  return frictionIds(unit).filter(
    (id) => touched.includes(id) && !deck.interlocks?.some(({ blocks }) => blocks.includes(id)),
  );
}

const runs = perDeck((unit: Unit): Run[] =>
  faultSpace(unit, KINDS).flatMap((fault) =>
    touchedBy(unit, fault).flatMap((element) =>
      faultRanges(unit).flatMap((range) => runOf(unit, fault, element, range)),
    ),
  ),
);

const breaks = (unit: Unit): Asked[] => [...new Set(runs(unit).map(({ broken }) => broken))];

const solenoidOf = (unit: Unit, { solenoid }: Run): DeckSolenoid =>
  unit.deck.solenoids!.find(({ id }) => id === solenoid)!;

/** The first reading that does not follow from the one before it. */
function firstOdd(unit: Unit, run: Run): Asked {
  const solenoid = solenoidOf(unit, run);
  if (run.voltage !== run.asked) return 'driver';
  if (run.current !== run.voltage) return 'winding';
  if ((run.given === 'full') !== ((solenoid.whenUnplugged === 'full') !== run.current)) return 'valve';
  return run.port === run.given ? 'element' : 'feed';
}

const BEFORE: Readonly<Record<Asked, Asked>> = {
  driver: 'driver',
  winding: 'driver',
  valve: 'winding',
  feed: 'valve',
  element: 'feed',
};

function linesOf(unit: Unit, run: Run): Phrase[] {
  const test = { kind: 'road', row: run.rangeId, position: run.position } as const;
  return [
    say(run.asked ? 'first-break.on' : 'first-break.off'),
    say(run.voltage ? 'first-break.voltage' : 'first-break.no-voltage'),
    say(run.current ? 'first-break.on' : 'first-break.off'),
    say(`reading.${run.given}`),
    say(`reading.${run.port}`),
    readingPhrase(unit, test, run.road),
  ];
}

export const firstBreak: Family = {
  id: 'first-break',
  level: 'reason',
  form: 'pair',
  facts: (unit) => (breaks(unit).length >= CASES ? [FACT] : []),
  pose(unit, fact, random) {
    if (fact !== FACT || breaks(unit).length < CASES) return undefined;
    const cases = random
      .sample(breaks(unit), CASES)
      .map((link) => random.pick(runs(unit).filter(({ broken }) => broken === link)));
    const told = (rule: (run: Run) => Asked): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(cases.map((run, place) => [NAMES[place]!, rule(run)])),
    });
    const lure = (slipUp: SlipUp, rule: (run: Run) => Asked): Lure => ({ answer: told(rule), slipUp, fact });
    const byThumb = (run: Run): Asked => {
      const solenoid = solenoidOf(unit, run);
      if (run.broken !== 'valve' && run.broken !== 'feed' && run.broken !== 'element') return run.broken;
      // As if current always gave pressure.
      if ((run.given === 'full') !== run.current) return 'valve';
      return solenoid.whenUnplugged === 'none' ? run.broken : run.port === run.given ? 'element' : 'feed';
    };
    const heads = cases.map((run, place) =>
      say('first-break.case', {
        name: NAMES[place]!,
        element: thing('element', run.element),
        range: thing('range', run.rangeId),
        solenoid: thing('solenoid', run.solenoid),
        gives: solenoidOf(unit, run).whenUnplugged,
        wanted: run.applied ? 'on' : 'off',
      }),
    );
    return {
      facts: [fact],
      uses: [
        ...new Set(
          cases.flatMap((run) => [
            ...benchRefs(unit, [run.fault], [{ kind: 'road', row: run.rangeId, position: run.position }]),
            `solenoid:${run.solenoid}` as const,
          ]),
        ),
      ],
      prompt: say('first-break.prompt'),
      drawing: {
        kind: 'table',
        columns: ['asked', 'voltage', 'current', 'given', 'port', 'road'].map((id) =>
          say(`first-break.column-${id}`),
        ),
        rows: cases.map((run, place) => ({ head: heads[place]!, cells: linesOf(unit, run) })),
      },
      space: {
        form: 'pair',
        left: cases.map((_, place) => ({
          id: NAMES[place]!,
          label: say('suspects.unit', { name: NAMES[place]! }),
        })),
        right: ASKED.map((id) => ({ id, label: linkPhrase(id) })),
      },
      answers: [told(({ broken }) => broken)],
      lures: [
        lure('blames-the-part', () => 'element'),
        lure('last-sound-link', ({ broken }) => BEFORE[broken]),
        lure('current-means-pressure', byThumb),
        lure('blames-the-solenoid', ({ broken }) => (broken === 'element' ? broken : 'valve')),
      ],
      explanation: {
        row: say('first-break.row'),
        reason: say('first-break.reason'),
        more: cases.map((run, place) =>
          say('first-break.line', { name: NAMES[place]!, link: linkPhrase(run.broken), side: run.broken }),
        ),
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        cases.every((run, place) => answer.pairs[NAMES[place]!] === firstOdd(unit, run)),
    };
  },
};
