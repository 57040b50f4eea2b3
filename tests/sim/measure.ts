/** One cell measured: every policy with the same learners and the same luck. */
import { type Bound, boundOf } from './bound.ts';
import type { Cell } from './cells.ts';
import { expectedLearner, type Learner, unknownLearner } from './learner.ts';
import type { Policy } from './policies.ts';
import { run } from './world.ts';

export interface Estimate {
  readonly mean: number;
  /** Standard error of the mean. */
  readonly error: number;
}

export interface Row {
  readonly policy: string;
  readonly share: Estimate;
  /** Share over bound, with the error of the ratio. */
  readonly ratio: Estimate;
  /** What ours is better by, in share, pair by pair. */
  readonly behind: Estimate;
}

export interface Measured {
  readonly cell: Cell;
  readonly runs: number;
  readonly bound: Estimate;
  readonly rows: readonly Row[];
}

export function estimate(values: readonly number[]): Estimate {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const variance = values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / Math.max(1, values.length - 1);
  return { mean, error: Math.sqrt(variance / values.length) };
}

/** `runs` runs of each policy, the first being ours; unknown learners differ from run to run. */
export function measure(cell: Cell, policies: readonly Policy[], runs: number, firstSeed = 1): Measured {
  const seeds = Array.from({ length: runs }, (_, i) => firstSeed + i);
  const met = new Map<number, { learner: Learner; bound: Bound }>();
  const meet = (seed: number) => {
    const key = cell.known ? 0 : seed;
    let found = met.get(key);
    if (!found) {
      const learner = cell.known ? expectedLearner() : unknownLearner(seed);
      found = { learner, bound: boundOf(cell, learner) };
      met.set(key, found);
    }
    return found;
  };
  const bounds = seeds.map((seed) => meet(seed).bound.share);
  const bound = estimate(bounds);
  const scores = policies.map((policy) =>
    seeds.map((seed) => run(cell, meet(seed).learner, policy, meet(seed).bound, seed).share),
  );
  return {
    cell,
    runs,
    bound,
    rows: policies.map((policy, p) => {
      const own = scores[p]!;
      const share = estimate(own);
      const ratio = share.mean / bound.mean;
      return {
        policy: policy.name,
        share,
        ratio: {
          mean: ratio,
          error: estimate(own.map((score, i) => (score - ratio * bounds[i]!) / bound.mean)).error,
        },
        behind: estimate(own.map((score, i) => scores[0]![i]! - score)),
      };
    }),
  };
}

/** Whether ours is below a baseline by more than two standard errors, and by more than rounding. */
export const beatenBy = ({ rows }: Measured): string[] =>
  rows.filter(({ behind }) => behind.mean < -2 * behind.error - 1e-6).map(({ policy }) => policy);
