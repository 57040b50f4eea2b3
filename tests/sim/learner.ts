/**
 * Simulated learners. Their memory follows the FSRS-6 model; what may differ is its numbers, which then the
 * scheduler does not know: a learner's own parameters, and for each fact how well it sticks at first and how
 * hard it is. All chance is a pure function of seed, fact and day, so every policy meets the same luck.
 */
import { UNSEEN_RECALL } from '../../src/core/memory/credit.ts';
import { WEIGHTS } from '../../src/core/memory/recall.ts';
import { type Memory, type Transition, transitionOf } from '../../src/core/plan/transition.ts';

/** Uniform in [0, 1) from three whole numbers (a finalising integer mix, public domain). */
export function chance(a: number, b: number, c: number): number {
  let h = Math.imul(a ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(b + 0x7f4a7c15, 0xc2b2ae35);
  h ^= Math.imul(c + 0x165667b1, 0x27d4eb2f);
  for (const [shift, factor] of [
    [15, 0x2c1b3c6d],
    [12, 0x297a2d39],
  ] as const)
    h = Math.imul(h ^ (h >>> shift), factor);
  h = Math.imul(h ^ (h >>> 16), 0x7feb352d);
  return ((h ^ (h >>> 15)) >>> 0) / 2 ** 32;
}

/** Standard normal from two uniforms. */
export function normal(a: number, b: number, c: number): number {
  const radius = Math.sqrt(-2 * Math.log(1 - chance(a, b, c)));
  return radius * Math.cos(2 * Math.PI * chance(a, b, c + 1));
}

/** A sort of fact: how its first memories differ from the learner's usual ones, and how often it occurs. */
export interface FactSort {
  readonly share: number;
  readonly known: Memory;
  readonly missed: Memory;
}

export interface Learner {
  readonly truth: Transition;
  /** Chance that a fact is known at the first ask. */
  readonly firstRecall: number;
  readonly sorts: readonly FactSort[];
}

/** The learner the scheduler expects. */
export function expectedLearner(): Learner {
  const truth = transitionOf(WEIGHTS);
  return { truth, firstRecall: UNSEEN_RECALL, sorts: [{ share: 1, ...truth.first }] };
}

/** Spread of the learners: standard deviation of the logarithm of each parameter (0: as the model has it). */
const SPREAD: Readonly<Record<number, number>> = {
  4: 0.12,
  5: 0.12,
  6: 0.2,
  8: 0.15,
  9: 0.2,
  10: 0.2,
  11: 0.25,
  12: 0.25,
  13: 0.2,
  14: 0.2,
  20: 0.25,
};
const FIRST_SPREAD = 0.4;
const FIRST_RECALL_SPREAD = 0.5;
/** How first stability of the facts differs, and their difficulty, and how often. */
const STICKING = [0.45, 0.68, 1, 1.48, 2.2];
const STICKING_SHARES = [0.1, 0.24, 0.32, 0.24, 0.1];
const HARDNESS = [-1.2, 0, 1.2];
const HARDNESS_SHARES = [0.25, 0.5, 0.25];

/** A learner whose numbers the scheduler does not know. */
export function unknownLearner(seed: number): Learner {
  const common = Math.exp(FIRST_SPREAD * normal(seed, 1, 0));
  const w = WEIGHTS.map((value, index) => {
    if (index < 4) return Math.max(0.1, value * common);
    return value * Math.exp((SPREAD[index] ?? 0) * normal(seed, 2, index));
  });
  w[20] = Math.min(0.8, Math.max(0.1, w[20]!));
  const truth = transitionOf(w);
  const odds = (UNSEEN_RECALL / (1 - UNSEEN_RECALL)) * Math.exp(FIRST_RECALL_SPREAD * normal(seed, 3, 0));
  const sort = (memory: Memory, sticking: number, hardness: number): Memory => ({
    stability: memory.stability * sticking,
    difficulty: Math.min(10, Math.max(1, memory.difficulty + hardness)),
  });
  const sorts = STICKING.flatMap((sticking, i) =>
    HARDNESS.map((hardness, j) => ({
      share: STICKING_SHARES[i]! * HARDNESS_SHARES[j]!,
      known: sort(truth.first.known, sticking, hardness),
      missed: sort(truth.first.missed, sticking, hardness),
    })),
  );
  return { truth, firstRecall: odds / (1 + odds), sorts };
}

/** The sort of a fact of this learner. */
export function sortOf(learner: Learner, seed: number, fact: number): FactSort {
  let left = chance(seed, 4, fact);
  for (const sort of learner.sorts) {
    left -= sort.share;
    if (left < 0) return sort;
  }
  return learner.sorts.at(-1)!;
}
