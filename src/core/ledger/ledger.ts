/**
 * The log of one deck, folded: everything practice reads off it, in a size that depends on the facts and days, not
 * on how many answers there are. A ledger with further answers added is the ledger of the whole log, or it is not
 * made at all: then something in the log changed behind its end, and the whole is folded anew.
 * docs/spec/storage.md L1 to L5.
 */
import { type Correction, voidsOf } from '../assign/corrections.ts';
import type { Attempt } from '../memory/attempt.ts';
import { type FactMemory, foldPlaced } from '../memory/fold.ts';
import { BEFORE_ALL, type OrderEnd, placeAfter } from '../memory/order.ts';
import { addTimes, type Times } from '../memory/pace.ts';
import { WEIGHTS } from '../memory/recall.ts';
import { addWorked, NOTHING_WORKED, type Worked } from '../memory/support.ts';
import { type Observation, observationOf } from '../plan/observe.ts';
import type { FactId } from '../questions/question.ts';
import { addToDays, type Days } from './days.ts';

/** Of so many of the latest answers it is kept how they were foreseen. */
export const OBSERVATIONS = 1000;

/** Where and when the last answer that counts was given. */
export interface Latest {
  readonly id: string;
  readonly drill: string;
  readonly zone: string;
  /** By the device's clock, put right where that was wrong (M11). */
  readonly at: number;
  readonly day: number;
}

export interface Ledger {
  /** Answers that count. */
  readonly answers: number;
  readonly memory: ReadonlyMap<FactId, FactMemory>;
  readonly days: Days;
  readonly times: Times;
  readonly worked: Worked;
  /** The latest ones, earliest first. */
  readonly observations: readonly Observation[];
  readonly latest: Latest | null;
  /** Up to where the log is folded, answers that count nowhere included. */
  readonly end: OrderEnd;
}

export const EMPTY_LEDGER: Ledger = {
  answers: 0,
  memory: new Map(),
  days: new Map(),
  times: new Map(),
  worked: NOTHING_WORKED,
  observations: [],
  latest: null,
  end: BEFORE_ALL,
};

/** What a ledger is made under: other corrections or weights make another ledger. */
export interface Terms {
  readonly corrections?: readonly Correction[];
  readonly weights?: readonly number[];
}

/**
 * The ledger after further answers. Null when one of them belongs before what is folded already (an answer of
 * another device that arrives late, a clock that went back).
 */
export function addToLedger(
  before: Ledger,
  attempts: Iterable<Attempt>,
  { corrections = [], weights = WEIGHTS }: Terms = {},
): Ledger | null {
  const after = placeAfter(attempts, before.end);
  if (!after) return null;
  const voids = voidsOf(
    after.placed.map(({ attempt }) => attempt),
    corrections,
  );
  const counted = after.placed.filter(({ attempt }) => !voids.has(attempt.id));
  const given = counted.map(({ attempt }) => attempt);
  const memory = new Map(before.memory);
  const observations = [...before.observations];
  foldPlaced(memory, counted, {
    weights,
    watch: (foreseen) => {
      const observation = observationOf(foreseen);
      if (observation) observations.push(observation);
    },
  });
  const last = counted.at(-1);
  return {
    answers: before.answers + counted.length,
    memory,
    days: addToDays(before.days, given),
    times: addTimes(before.times, given),
    worked: addWorked(before.worked, given),
    observations: observations.slice(-OBSERVATIONS),
    latest: last
      ? {
          id: last.attempt.id,
          drill: last.attempt.drill,
          zone: last.attempt.zone,
          at: last.at,
          day: last.day,
        }
      : before.latest,
    end: after.end,
  };
}

/** The ledger of a whole log, in whatever order and copies it comes. */
export const ledgerOf = (attempts: Iterable<Attempt>, terms: Terms = {}): Ledger =>
  addToLedger(EMPTY_LEDGER, attempts, terms)!;
