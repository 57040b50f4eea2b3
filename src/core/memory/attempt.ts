/**
 * Attempts: one answered question each, plain JSON, never changed once written. The log of them is the only
 * truth about a learner; it keeps what is needed to replay it under a better rule (docs/spec/memory.md M1).
 */
import type { Verdict } from '../questions/judge.ts';
import type { Answer, FactId, Form, Question } from '../questions/question.ts';
import type { SlipUp } from '../questions/slip-ups.ts';
import { localDay } from './day.ts';
import { GUESS_WITH, type Support } from './support.ts';

export interface Attempt {
  /** A random uuid; two attempts with the same id are the same attempt. */
  readonly id: string;
  /** Id and revision of the deck the question was computed from. */
  readonly deck: string;
  readonly revision: number;
  /** With deck, family, fact and seed the question can be opened again. */
  readonly family: string;
  readonly fact: FactId;
  readonly seed: number;
  /** Every fact the question needed; the first is `fact`. */
  readonly facts: readonly FactId[];
  readonly form: Form;
  /** Chance of a right answer by blind guessing, or by following a worked example in view, 0 to 1. */
  readonly guessRate: number;
  readonly answer: Answer;
  readonly right: boolean;
  readonly slipUps: readonly SlipUp[];
  /** Facts that those slip-ups show to be missing. */
  readonly missed: readonly FactId[];
  /** Answering time in seconds, to the millisecond; hidden pages do not count. */
  readonly seconds: number;
  /** The time is too long to be an answering time; right or wrong still counts. */
  readonly interrupted: boolean;
  /** Milliseconds since 1970 by the device's clock. */
  readonly at: number;
  /** Whole local days since 1970-01-01 in `zone`, fixed when the answer was given. */
  readonly day: number;
  /** IANA time zone of the learner: "Europe/Berlin". */
  readonly zone: string;
  /** Random id of the browser profile it was answered in. */
  readonly device: string;
  /** 1, 2, 3… on that device. */
  readonly sequence: number;
  readonly drill: string;
}

/** An attempt before the store has numbered it. */
export type AttemptDraft = Omit<Attempt, 'device' | 'sequence'>;

/** Longer than this is no answering time (M9). */
export const INTERRUPTED_AFTER_SECONDS = 60;

/** The log entry of an answer; `id` is a fresh uuid. */
export function draftAttempt(given: {
  readonly id: string;
  readonly question: Question;
  readonly answer: Answer;
  readonly verdict: Verdict;
  /** The worked example that stood above it. */
  readonly support?: Support;
  readonly seconds: number;
  readonly at: number;
  readonly zone: string;
  readonly drill: string;
}): AttemptDraft {
  const { question, verdict } = given;
  return {
    id: given.id,
    deck: question.deck.id,
    revision: question.deck.revision,
    family: question.family,
    fact: question.fact,
    seed: question.seed,
    facts: question.facts,
    form: question.space.form,
    guessRate: Math.max(question.guessRate, GUESS_WITH[given.support ?? 'alone']),
    answer: given.answer,
    right: verdict.right,
    slipUps: verdict.slipUps,
    missed: verdict.missed,
    seconds: Math.round(given.seconds * 1000) / 1000,
    interrupted: given.seconds > INTERRUPTED_AFTER_SECONDS,
    at: given.at,
    day: localDay(given.at, given.zone),
    zone: given.zone,
    drill: given.drill,
  };
}
