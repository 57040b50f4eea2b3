/**
 * Opening the group board of learners with 2,000 answers each, against parsing the report files it stands for.
 * The board opens from stored digests, which is what the instructor waits for; folding a log anew happens once,
 * when a report comes in, and is only reported.
 */
import { joinReports, type LearnerLog } from '../../src/core/assign/merge-reports.ts';
import { benchGroups } from '../../src/core/group/bench-groups.ts';
import { type Board, openBoard } from '../../src/core/group/board.ts';
import type { Confusion } from '../../src/core/group/confusions.ts';
import { digestLog, type LearnerDigest } from '../../src/core/group/digest.ts';
import type { Attempt } from '../../src/core/memory/attempt.ts';
import { type Fact, factsOf } from '../../src/core/questions/facts.ts';
import { thing } from '../../src/core/questions/phrase.ts';
import { randomFrom, seedOf } from '../../src/core/random.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { anAttempt } from '../attempts.ts';
import { anAssignment, aReport, sealed } from '../reports.ts';
import { shippedDecks } from '../units.ts';
import type { Suite } from './suite.ts';

const ANSWERS = 2000;
const CLASS_DAY = 20_045;
/** Distinct logs made; more learners share their contents under other names. */
const DISTINCT = 10;

const facts: readonly Fact[] = factsOf(makeUnit(shippedDecks().find((deck) => deck.id === 'kestrel-7')!));

function answersOf(name: string): Attempt[] {
  const random = randomFrom(seedOf('bench', name));
  return Array.from({ length: ANSWERS }, (_, index) => {
    const fact = random.pick(facts).id;
    const right = random.unit() < 0.8;
    return anAttempt({
      id: `${name}-4c1e-8f2a-${String(index).padStart(12, '0')}`,
      device: name,
      sequence: index + 1,
      day: 20_000 + Math.floor(index / 45),
      fact,
      facts: random.unit() < 0.3 ? [...new Set([fact, random.pick(facts).id])] : [fact],
      right,
      slipUps: right ? [] : [random.pick(['neighbour-range', 'inverse-ratio', 'sign-lost'] as const)],
    });
  });
}

const confusedIn = ({ seed, sequence }: Attempt): Confusion[] => {
  const [right, given] = [1 + (sequence % 7), 1 + ((sequence * 3 + seed) % 7)];
  return [
    { about: null, right: thing('range', `${right}`), given: thing('range', `${given}`), swapped: false },
  ];
};

const logs: readonly LearnerLog[] = Array.from({ length: DISTINCT }, (_, index) => {
  const name = `learner-${index}`;
  const report = aReport({ id: name, learner: { id: name, name }, attempts: answersOf(name) });
  return joinReports([sealed(report)]).learners[0]!;
});
const digest = (log: LearnerLog) => digestLog({ log, voids: new Set(), classDay: CLASS_DAY, confusedIn });
const digests = logs.map(digest);

const several = <T>(items: readonly T[], count: number, named: (item: T, index: number) => T): T[] =>
  Array.from({ length: count }, (_, index) => named(items[index % items.length]!, index));

/** Digests as they are stored, one text each. */
const stored = (count: number): string[] =>
  several(digests, count, (own, index) => ({ ...own, learner: `l${index}`, name: `n${index}` })).map((own) =>
    JSON.stringify(own),
  );
const files = (count: number): string[] =>
  several(logs, count, (log) => log).map(({ attempts }) => JSON.stringify(attempts));

function openFrom(texts: readonly string[]): Board {
  const board = openBoard({
    assignment: anAssignment(),
    facts,
    digests: texts.map((text) => JSON.parse(text) as LearnerDigest),
    today: CLASS_DAY - 1,
    classDay: CLASS_DAY,
  });
  benchGroups(
    board.people.map(({ weakness }) => weakness),
    board.areas,
    4,
  );
  return board;
}

const FEW = 10;
const MANY = 1000;
const [few, many, reports] = [stored(FEW), stored(MANY), files(FEW)];

function agree(texts: readonly string[]) {
  const { people } = openFrom(texts);
  if (people.length !== texts.length || people.some(({ answers }) => answers !== ANSWERS))
    throw new Error(`${people.length} people, and not ${ANSWERS} answers each`);
}

export const group: readonly Suite[] = [
  {
    title: `group board, ${FEW} learners with ${ANSWERS} answers each`,
    count: FEW,
    unit: 'learner',
    subject: { name: 'opened from digests, bench groups included', run: () => openFrom(few) },
    baselines: [
      {
        name: 'JSON.parse of the same report files',
        run: () => reports.map((text) => JSON.parse(text)),
        atLeast: 5,
      },
      { name: 'folding the same logs anew', run: () => logs.slice(0, 2).map(digest), count: 2 },
    ],
    agree: () => agree(few),
  },
  {
    title: `group board, ${MANY} learners with ${ANSWERS} answers each`,
    count: MANY,
    unit: 'learner',
    subject: { name: 'opened from digests, bench groups included', run: () => openFrom(many) },
    baselines: [
      {
        name: `JSON.parse of report files, ${FEW} of them`,
        run: () => reports.map((text) => JSON.parse(text)),
        count: FEW,
        atLeast: 5,
      },
    ],
    agree: () => agree(many),
  },
];
