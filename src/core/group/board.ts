/**
 * The group board: what an instructor sees of an assignment, from the learners' digests. For each who started the
 * likely readiness with the number of facts behind it, what he mixes up and whether he needs a make-up drill;
 * for the group what nobody holds. Persons are in the order of their names, never of their results.
 */
import { type Assignment, areaOf } from '../assign/assignment.ts';
import { UNSEEN_RECALL } from '../memory/credit.ts';
import { recallOn } from '../memory/recall.ts';
import { standingOf } from '../memory/standing.ts';
import type { Fact } from '../questions/facts.ts';
import type { FactId } from '../questions/question.ts';
import type { SlipUp } from '../questions/slip-ups.ts';
import type { Area } from '../self-check/areas.ts';
import type { Weakness } from './bench-groups.ts';
import { type ConfusionTally, tallyConfusions } from './confusions.ts';
import { type LearnerDigest, memoryAt, TRIES } from './digest.ts';
import {
  type AnswerReadiness,
  type Likely,
  likelyReady,
  placesOf,
  readinessByAnswers,
} from './readiness-by-answers.ts';

/** Why somebody needs a make-up drill, the first that holds. */
export const MAKE_UP_REASONS = [
  'nothing-answered',
  'caution-missed',
  'little-answered',
  'likely-not-ready',
] as const;
export type MakeUpReason = (typeof MAKE_UP_REASONS)[number];

/** Facts on a make-up sheet. */
export const MAKE_UP_FACTS = 12;

/** With less than this share of the facts tried, too little is answered. */
export const LEAST_TRIED = 0.5;

export interface MakeUp {
  readonly reason: MakeUpReason;
  /** What to ask: missed facts with a caution, other missed ones, then what was never asked; at most MAKE_UP_FACTS. */
  readonly facts: readonly FactId[];
}

export interface SlipUpTally {
  readonly slipUp: SlipUp;
  readonly times: number;
  readonly people: number;
}

export interface Person {
  readonly learner: string;
  readonly name: string;
  readonly started: boolean;
  readonly answers: number;
  readonly voided: number;
  readonly days: number;
  readonly lastDay: number | null;
  readonly readiness: AnswerReadiness;
  /** By the memory model: share of the assigned facts recalled at class if nothing more were practised. */
  readonly kept: number;
  readonly likely: Likely;
  readonly slipUps: readonly SlipUpTally[];
  readonly confusions: readonly ConfusionTally[];
  readonly makeUp: MakeUp | null;
  readonly weakness: Weakness;
}

export interface UnheldFact {
  readonly fact: FactId;
  /** People who were asked for it. */
  readonly tried: number;
}

export interface Board {
  readonly people: readonly Person[];
  /** Names on the instructor's list from which no report came. */
  readonly notHeardFrom: readonly string[];
  readonly started: number;
  readonly likely: Readonly<Record<Likely, number>>;
  readonly slipUps: readonly SlipUpTally[];
  readonly confusions: readonly ConfusionTally[];
  readonly nobodyHolds: readonly UnheldFact[];
  /** Areas of the assigned facts, in their order. */
  readonly areas: readonly Area[];
}

export interface BoardRequest {
  readonly assignment: Pick<Assignment, 'threshold'>;
  /** The assigned facts (`assignedFacts`). */
  readonly facts: readonly Fact[];
  readonly digests: readonly LearnerDigest[];
  /** Local days. */
  readonly today: number;
  readonly classDay: number;
  /** Names the instructor expects; compared without case and spaces around. */
  readonly roster?: readonly string[];
}

const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** Slip-ups over several people, most people first. */
export function tallySlipUps(byLearner: Iterable<LearnerDigest['slipUps']>): SlipUpTally[] {
  const tallies = new Map<SlipUp, { times: number; people: number }>();
  for (const slipUps of byLearner)
    for (const [slipUp, times] of slipUps) {
      const tally = tallies.get(slipUp) ?? { times: 0, people: 0 };
      tallies.set(slipUp, tally);
      tally.times += times;
      tally.people++;
    }
  return [...tallies]
    .map(([slipUp, tally]) => ({ slipUp, ...tally }))
    .sort((a, b) => b.people - a.people || b.times - a.times || byText(a.slipUp, b.slipUp));
}

function makeUpOf(
  digest: LearnerDigest,
  facts: readonly Fact[],
  places: readonly number[],
  readiness: AnswerReadiness,
  likely: Likely,
): MakeUp | null {
  const missed: Fact[] = [];
  const untried: Fact[] = [];
  for (const [index, place] of places.entries()) {
    const outcome = place < 0 ? TRIES.none : digest.columns.latest[place]!;
    if (outcome === TRIES.missed) missed.push(facts[index]!);
    else if (outcome === TRIES.none) untried.push(facts[index]!);
  }
  const cautioned = missed.filter((fact) => fact.cautioned);
  const reason: MakeUpReason | null =
    digest.answers === 0
      ? 'nothing-answered'
      : cautioned.length > 0
        ? 'caution-missed'
        : readiness.tried < LEAST_TRIED * readiness.of
          ? 'little-answered'
          : likely === 'unlikely'
            ? 'likely-not-ready'
            : null;
  if (reason === null) return null;
  const ordered = [...cautioned, ...missed.filter((fact) => !fact.cautioned), ...untried];
  return { reason, facts: ordered.slice(0, MAKE_UP_FACTS).map(({ id }) => id) };
}

function weaknessOf(
  digest: LearnerDigest,
  factAreas: readonly (Area | undefined)[],
  places: readonly number[],
): Weakness {
  const areas = new Map<Area, { tried: number; missed: number }>();
  for (const [index, place] of places.entries()) {
    const area = factAreas[index];
    if (place < 0 || area === undefined) continue;
    const own = areas.get(area) ?? { tried: 0, missed: 0 };
    areas.set(area, own);
    own.tried += digest.columns.tries[place]!;
    own.missed += digest.columns.tries[place]! - digest.columns.triesRight[place]!;
  }
  return { learner: digest.learner, areas };
}

const plain = (name: string) => name.trim().toLocaleLowerCase();

/** The board of one assignment. */
export function openBoard({ assignment, facts, digests, today, classDay, roster = [] }: BoardRequest): Board {
  const factAreas = facts.map(areaOf);
  const held = new Array<number>(facts.length).fill(0);
  const tried = new Array<number>(facts.length).fill(0);
  const people = digests
    .map((digest): Person => {
      const places = placesOf(digest, facts);
      let recalled = 0;
      for (const [index, place] of places.entries()) {
        if (place < 0) {
          recalled += UNSEEN_RECALL;
          continue;
        }
        const memory = memoryAt(digest, place);
        recalled += recallOn(memory, classDay);
        if (digest.columns.tries[place]! > 0) tried[index]!++;
        if (standingOf(memory, today) === 'holding') held[index]!++;
      }
      const readiness = readinessByAnswers(digest, facts, places);
      const likely = likelyReady(readiness, assignment.threshold);
      return {
        learner: digest.learner,
        name: digest.name,
        started: digest.answers > 0,
        answers: digest.answers,
        voided: digest.voided,
        days: digest.days,
        lastDay: digest.lastDay,
        readiness,
        kept: facts.length === 0 ? 0 : recalled / facts.length,
        likely,
        slipUps: digest.slipUps.map(([slipUp, times]) => ({ slipUp, times, people: 1 })),
        confusions: tallyConfusions([digest.confusions.flatMap(([, confusions]) => confusions)]),
        makeUp: makeUpOf(digest, facts, places, readiness, likely),
        weakness: weaknessOf(digest, factAreas, places),
      };
    })
    .sort((a, b) => byText(a.name, b.name) || byText(a.learner, b.learner));
  const names = new Set(people.map(({ name }) => plain(name)));
  const count = (likely: Likely) => people.filter((person) => person.likely === likely).length;
  return {
    people,
    notHeardFrom: roster.filter((name) => !names.has(plain(name))),
    started: people.filter(({ started }) => started).length,
    likely: { likely: count('likely'), unlikely: count('unlikely'), open: count('open') },
    slipUps: tallySlipUps(digests.map(({ slipUps }) => slipUps)),
    confusions: tallyConfusions(digests.map(({ confusions }) => confusions.flatMap(([, of]) => of))),
    nobodyHolds: facts.flatMap(({ id }, index) =>
      held[index] === 0 ? [{ fact: id, tried: tried[index]! }] : [],
    ),
    areas: [...new Set(factAreas)].filter((area) => area !== undefined),
  };
}
