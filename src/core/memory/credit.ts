/**
 * What one answer says about the facts it needed: for each, the probability that it was known, by Bayes from
 * the predicted recall, the question's guess rate and a slip rate. A fact's memory then moves to the mixture
 * of its two outcomes. Only right, wrong and a named slip-up count, never time. docs/spec/memory.md M5 to M8;
 * conjunctive form: docs/sources.md [BAYES].
 */
import type { MemoryState, Outcomes } from './recall.ts';

/** Share of answers that are wrong although everything was known. */
export const SLIP_RATE = 0.02;

/** Recall predicted for a fact that was never asked. */
export const UNSEEN_RECALL = 0.3;

/**
 * No fact is taken for surer than an answer can show. The curve gives 1 on the day of the last answer; taken
 * at its word, every wrong answer on that day would be a slip.
 */
export const MOST_SURE = 1 - SLIP_RATE;

/** One answer: recall predicted beforehand for each fact it needed, and how it came out. */
export interface Evidence {
  readonly recalls: readonly number[];
  /** 0 to 1. */
  readonly guessRate: number;
  readonly right: boolean;
  /** Places in `recalls` of the facts that a slip-up names; empty when there is none. */
  readonly missed?: readonly number[];
}

const product = (values: readonly number[]) => values.reduce((a, b) => a * b, 1);

const isShare = (value: number) => value >= 0 && value <= 1;

/** P(known) for each fact after the answer, given the chances of guess and slip; exact by Bayes. */
function posterior(recalls: readonly number[], right: boolean, guess: number, slip: number): number[] {
  const all = product(recalls);
  const rightOverall = all * (1 - slip) + (1 - all) * guess;
  const likelihood = right ? rightOverall : 1 - rightOverall;
  if (likelihood === 0) return [...recalls];
  return recalls.map((recall, place) => {
    const others = product(recalls.toSpliced(place, 1));
    const rightIfKnown = others * (1 - slip) + (1 - others) * guess;
    const joint = recall * (right ? rightIfKnown : 1 - rightIfKnown);
    return Math.min(1, Math.max(0, joint / likelihood));
  });
}

/**
 * P(known) for each fact, in the order of `recalls`. knownAfter({ recalls: [0.9], guessRate: 0.25, right: true })
 * → [0.972…]. A named miss explains a wrong answer: the facts it names answer for it alone (one name: 0), and
 * the others are credited as by a right answer. Throws RangeError on what is no probability.
 */
export function knownAfter({ recalls, guessRate, right, missed = [] }: Evidence): number[] {
  if (![...recalls, guessRate].every(isShare))
    throw new RangeError(`not probabilities: ${recalls}, ${guessRate}`);
  const priors = recalls.map((recall) => Math.min(recall, MOST_SURE));
  const named = right ? [] : priors.map((_, place) => place).filter((place) => missed.includes(place));
  if (named.length === 0) return posterior(priors, right, guessRate, SLIP_RATE);
  const others = priors.map((_, place) => place).filter((place) => !named.includes(place));
  const known = new Map<number, number>();
  const note = (places: readonly number[], values: readonly number[]) => {
    for (const [i, place] of places.entries()) known.set(place, values[i]!);
  };
  const at = (places: readonly number[]) => places.map((place) => priors[place]!);
  note(named, posterior(at(named), false, 0, 0));
  note(others, posterior(at(others), true, guessRate, SLIP_RATE));
  return priors.map((_, place) => known.get(place)!);
}

/** The memory between two outcomes, `known` of the way to recalled: stability by ratio, difficulty by distance. */
export function mixture({ recalled, forgotten }: Outcomes, known: number): MemoryState {
  if (!isShare(known)) throw new RangeError(`not a probability: ${known}`);
  return {
    stability: recalled.stability ** known * forgotten.stability ** (1 - known),
    difficulty: known * recalled.difficulty + (1 - known) * forgotten.difficulty,
    lastDay: recalled.lastDay,
  };
}
