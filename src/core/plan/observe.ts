/**
 * What was predicted and how it came out: the answers that say something about one fact alone, each with the
 * memory as it stood before. Questions that needed several facts and repeats on the same day are left out: the
 * first cannot be laid at one fact's door, and for the second the curve predicts nothing.
 */
import type { Attempt } from '../memory/attempt.ts';
import { SLIP_RATE } from '../memory/credit.ts';
import { type Foreseen, foldAttempts } from '../memory/fold.ts';
import { WEIGHTS } from '../memory/recall.ts';

export interface Observation {
  readonly day: number;
  /** Whole days since the last answer, and stability then; null for a fact's first answer. */
  readonly before: { readonly days: number; readonly stability: number } | null;
  /** Recall predicted. */
  readonly recall: number;
  readonly guessRate: number;
  readonly right: boolean;
}

/** The observation an attempt gives, or null. */
export function observationOf({ attempt, day, facts, before, recalls }: Foreseen): Observation | null {
  const [memory] = before;
  const days = memory ? day - memory.lastDay : 0;
  if (facts.length !== 1 || (memory && days < 1)) return null;
  const { guessRate, right } = attempt;
  return {
    day,
    before: memory ? { days, stability: memory.stability } : null,
    recall: recalls[0]!,
    guessRate,
    right,
  };
}

/** In the order they count. */
export function observationsOf(
  attempts: Iterable<Attempt>,
  voids: ReadonlySet<string> = new Set(),
  weights: readonly number[] = WEIGHTS,
): Observation[] {
  const observations: Observation[] = [];
  foldAttempts(attempts, voids, {
    weights,
    watch: (foreseen) => {
      const observation = observationOf(foreseen);
      if (observation) observations.push(observation);
    },
  });
  return observations;
}

/** Chance of a right answer, from recall: known and no slip, or guessed. */
export function rightChance(recall: number, guessRate: number): number {
  return recall * (1 - SLIP_RATE) + (1 - recall) * guessRate;
}

/** Minus the logarithm of the chance that was given to what happened. */
export function surprise({ guessRate, right }: Observation, recall: number): number {
  const chance = rightChance(recall, guessRate);
  return -Math.log(Math.max(1e-9, right ? chance : 1 - chance));
}
