/**
 * What the group board needs of one learner: a fold of his log, small enough that a thousand of them open at once.
 * Facts are columns of numbers, one place a fact, so that it is stored and read without an object for each. It
 * is made anew when a report or a correction comes in; the log stays the only truth. docs/spec/group.md.
 */
import type { LearnerLog } from '../assign/merge-reports.ts';
import type { Attempt } from '../memory/attempt.ts';
import { type FactMemory, foldAttempts } from '../memory/fold.ts';
import type { FactId } from '../questions/question.ts';
import type { SlipUp } from '../questions/slip-ups.ts';
import type { Confusion } from './confusions.ts';

/** How the first answer of a day that asked for a fact came out; none: there was none. */
export const TRIES = { none: -1, missed: 0, right: 1 } as const;
export type Try = (typeof TRIES)[keyof typeof TRIES];

/** One entry for each fact, in the order of `facts`. */
export interface FactColumns {
  readonly stability: readonly number[];
  readonly difficulty: readonly number[];
  readonly firstDay: readonly number[];
  readonly lastDay: readonly number[];
  readonly asked: readonly number[];
  readonly missed: readonly number[];
  readonly rightDays: readonly number[];
  /** 1 when it once held. */
  readonly held: readonly number[];
  /** Days on which it was asked for, and those on which the first such answer was right. */
  readonly tries: readonly number[];
  readonly triesRight: readonly number[];
  /** The latest first try of all, of those before the day of class, and of those on it or later. */
  readonly latest: readonly Try[];
  readonly before: readonly Try[];
  readonly after: readonly Try[];
}

export interface LearnerDigest {
  readonly learner: string;
  readonly name: string;
  readonly reports: number;
  readonly lastReport: number;
  /** Answers that count, and those a correction voided. */
  readonly answers: number;
  readonly voided: number;
  /** Separate days with an answer; the first and last of them, null without any. */
  readonly days: number;
  readonly firstDay: number | null;
  readonly lastDay: number | null;
  readonly facts: readonly FactId[];
  readonly columns: FactColumns;
  /** Times each slip-up was made, most frequent first. */
  readonly slipUps: readonly (readonly [SlipUp, number])[];
  /** What was taken for what, by wrong attempt: carried over when the digest is made anew. */
  readonly confusions: readonly (readonly [attempt: string, readonly Confusion[]])[];
}

/** Of so many of the latest wrong answers the digest says what was confused: opening questions takes time. */
export const WRONG_LOOKED_AT = 50;

export interface DigestRequest {
  readonly log: LearnerLog;
  readonly voids: ReadonlySet<string>;
  /** Local day of class. */
  readonly classDay: number;
  /** Opens the question of a wrong answer and says what was confused; asked only for attempts not in `known`. */
  readonly confusedIn: (attempt: Attempt) => readonly Confusion[];
  /** The learner's digest so far. */
  readonly known?: LearnerDigest | undefined;
}

interface Tries {
  day: number;
  tries: number;
  right: number;
  latest: Try;
  before: Try;
  after: Try;
}

const noTries = (): Tries => ({
  day: Number.NEGATIVE_INFINITY,
  tries: 0,
  right: 0,
  latest: TRIES.none,
  before: TRIES.none,
  after: TRIES.none,
});

const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** One learner's digest. The same log, voids and class day give the same digest, whatever was known before. */
export function digestLog({ log, voids, classDay, confusedIn, known }: DigestRequest): LearnerDigest {
  const tried = new Map<FactId, Tries>();
  const slipUps = new Map<SlipUp, number>();
  const days = new Set<number>();
  const wrong: Attempt[] = [];
  let answers = 0;
  const memory = foldAttempts(log.attempts, voids, {
    watch: ({ attempt, day }) => {
      answers++;
      days.add(day);
      for (const slipUp of attempt.slipUps) slipUps.set(slipUp, (slipUps.get(slipUp) ?? 0) + 1);
      if (!attempt.right) wrong.push(attempt);
      const own = tried.get(attempt.fact) ?? noTries();
      tried.set(attempt.fact, own);
      if (day === own.day) return;
      own.day = day;
      own.tries++;
      own.latest = attempt.right ? TRIES.right : TRIES.missed;
      if (attempt.right) own.right++;
      if (day < classDay) own.before = own.latest;
      else own.after = own.latest;
    },
  });
  const facts = [...memory.keys()].sort(byText);
  const sorted = [...days].sort((a, b) => a - b);
  return {
    learner: log.learner,
    name: log.name,
    reports: log.reports,
    lastReport: log.lastReport,
    answers,
    voided: log.attempts.length - answers,
    days: sorted.length,
    firstDay: sorted[0] ?? null,
    lastDay: sorted.at(-1) ?? null,
    facts,
    columns: columnsOf(
      facts.map((fact) => memory.get(fact)!),
      facts.map((fact) => tried.get(fact) ?? noTries()),
    ),
    slipUps: [...slipUps].sort(([a, x], [b, y]) => y - x || byText(a, b)),
    confusions: confusionsOf(wrong.slice(-WRONG_LOOKED_AT), confusedIn, known),
  };
}

function columnsOf(memories: readonly FactMemory[], tries: readonly Tries[]): FactColumns {
  return {
    stability: memories.map(({ stability }) => stability),
    difficulty: memories.map(({ difficulty }) => difficulty),
    firstDay: memories.map(({ firstDay }) => firstDay),
    lastDay: memories.map(({ lastDay }) => lastDay),
    asked: memories.map(({ asked }) => asked),
    missed: memories.map(({ missed }) => missed),
    rightDays: memories.map(({ rightDays }) => rightDays),
    held: memories.map(({ held }) => (held ? 1 : 0)),
    tries: tries.map((own) => own.tries),
    triesRight: tries.map(({ right }) => right),
    latest: tries.map(({ latest }) => latest),
    before: tries.map(({ before }) => before),
    after: tries.map(({ after }) => after),
  };
}

function confusionsOf(
  wrong: readonly Attempt[],
  confusedIn: DigestRequest['confusedIn'],
  known: LearnerDigest | undefined,
): LearnerDigest['confusions'] {
  const before = new Map(known?.confusions);
  return wrong.map((attempt) => [attempt.id, before.get(attempt.id) ?? confusedIn(attempt)]);
}

/** The memory of the fact at this place of the columns. */
export function memoryAt({ columns }: LearnerDigest, place: number): FactMemory {
  return {
    stability: columns.stability[place]!,
    difficulty: columns.difficulty[place]!,
    lastDay: columns.lastDay[place]!,
    firstDay: columns.firstDay[place]!,
    asked: columns.asked[place]!,
    missed: columns.missed[place]!,
    rightDays: columns.rightDays[place]!,
    held: columns.held[place] === 1,
  };
}
