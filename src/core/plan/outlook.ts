/**
 * What a person is told on the way to a class date, in parts, so that the drill never waits for the rest: first
 * what to ask, then what will be known at class, then the most that the minutes allow, at last the learner's own
 * scale. Pure; src/app/plan-worker.ts runs it beside the page. docs/spec/plan.md.
 */
import type { Attempt } from '../memory/attempt.ts';
import type { FactId } from '../questions/question.ts';
import { everyDay } from './calendar.ts';
import { type Ceiling, ceilingsOf } from './ceiling.ts';
import { type Observation, observationsOf } from './observe.ts';
import { type PersonalScale, personalScale } from './personal.ts';
import { type Plan, planFrom } from './plan.ts';
import { PATIENT } from './prices.ts';
import type { PlanFact } from './problem.ts';
import { type Course, courseOf } from './prospect.ts';
import { type ReadinessReport, readinessOf } from './readiness.ts';
import { type PlanRequest, solve } from './solve.ts';

/** Plain data: it is copied to a worker. */
export interface OutlookRequest {
  /** The 21 memory parameters. */
  readonly w: readonly number[];
  readonly today: number;
  /** Today or later; null when no class is ahead: then only the scale can be told. */
  readonly classDay: number | null;
  readonly minutes: number;
  /** Chance that practice takes place on a day, more than 0. */
  readonly attendance: number;
  /** Practised today already. */
  readonly spentSeconds: number;
  readonly facts: readonly PlanFact[];
  /** By place in `facts`. */
  readonly topicOf: readonly string[];
  /** How answers were foreseen under `w`; replayed from `attempts` when left out. */
  readonly observations?: readonly Observation[];
  /** Needed for the scale, and where there are no observations. */
  readonly attempts: readonly Attempt[];
  readonly voids: ReadonlySet<string>;
  readonly seed: number;
  /** Of the last plan for the same class. */
  readonly prices?: ReadonlyMap<number, number>;
  /** Minutes a day to tell the most of; none when that is known. */
  readonly ceilings: readonly number[];
  /** Whether to estimate the personal scale. */
  readonly scale: boolean;
}

export type OutlookPart =
  | {
      readonly kind: 'drill';
      /** What to ask in a drill that starts now, most worth first; what to go on with at the end. */
      readonly order: readonly FactId[];
      readonly prices: ReadonlyMap<number, number>;
    }
  | {
      readonly kind: 'forecast';
      readonly readiness: ReadinessReport;
      /** Facts the days left have no room for, the first to be dropped last. */
      readonly leftOut: readonly FactId[];
      /** The days to class when the plan is kept, and those of the best plan from tomorrow on. */
      readonly course: Course;
      readonly skipped: Course;
    }
  | { readonly kind: 'ceilings'; readonly each: readonly Ceiling[] }
  | { readonly kind: 'scale'; readonly personal: PersonalScale };

const orderOf = ({ facts, reserve }: Plan): FactId[] => [...facts, ...reserve].map(({ fact }) => fact);

/**
 * A course that ends on what is expected of this learner. The days between are reckoned for a usual one: the
 * difference comes in evenly on the way.
 */
function bend(course: Course, ratio: number): Course {
  const last = Math.max(1, course.days.at(-1)!);
  const recalled = course.recalled.map((share, i) => share * (1 + ((ratio - 1) * course.days[i]!) / last));
  return { ...course, recalled };
}

function* partsToClass(asked: OutlookRequest, classDay: number): Generator<OutlookPart, void> {
  const { today, minutes, attendance, spentSeconds, attempts, voids, w } = asked;
  const practice = everyDay(today, classDay, minutes * 60, attendance);
  const request: PlanRequest = { ...asked, classDay, practice };
  const drill = planFrom(request, solve(request));
  yield { kind: 'drill', order: orderOf(drill), prices: drill.prices };

  // What is told is settled further than a drill needs.
  const withToday = (seconds: number): PlanRequest => ({
    ...request,
    practice: practice.map((day) => (day.day === today ? { ...day, seconds } : day)),
    prices: drill.prices,
    effort: PATIENT,
  });
  // What was practised today is in the memories: only the rest of the day's minutes is still to come.
  const remaining = withToday(Math.max(0, minutes * 60 - spentSeconds));
  const solved = solve(remaining);
  const { leftOut } = planFrom(remaining, solved);
  const observations = asked.observations ?? observationsOf(attempts, voids, w);
  const readiness = readinessOf(request, solved, observations, asked.topicOf);
  const course = courseOf(solved, { skipToday: false });
  const ratio = readiness.all.expected / Math.max(1e-9, course.recalled.at(-1)!);
  yield {
    kind: 'forecast',
    readiness,
    leftOut,
    course: bend(course, ratio),
    skipped: bend(courseOf(solve(withToday(0)), { skipToday: false }), ratio),
  };

  if (asked.ceilings.length > 0 && practice.length > 0)
    yield { kind: 'ceilings', each: ceilingsOf({ ...request, prices: drill.prices }, asked.ceilings) };
}

/** The parts in order; each is reckoned only when it is asked for. */
export function* outlookOf(asked: OutlookRequest): Generator<OutlookPart, void> {
  if (asked.classDay !== null) yield* partsToClass(asked, asked.classDay);
  if (asked.scale) yield { kind: 'scale', personal: personalScale(asked.attempts, asked.voids) };
}
