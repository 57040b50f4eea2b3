/**
 * One learner's own scale of the memory model. A few weeks of answers are too few for 21 numbers, so two are
 * estimated, shrunk towards the usual model: how long first memories last, and how fast later ones grow. They
 * are taken over only when they predict answers better that were kept out of the estimate. docs/spec/plan.md
 * P20 to P22.
 */
import type { Attempt } from '../memory/attempt.ts';
import { WEIGHTS } from '../memory/recall.ts';
import { minimise } from './minimise.ts';
import { type Observation, observationsOf, surprise } from './observe.ts';

/** Logarithms of factors: of the first stability, and of the gain in stability at each recall. 0: the usual. */
export interface Scale {
  readonly first: number;
  readonly growth: number;
}

/** How far learners are taken to differ (standard deviations); assumptions, no source. */
const SPREAD: Scale = { first: 0.4, growth: 0.2 };

/** Share of the answers, the earliest ones, that the scale is estimated from before it is put to the test. */
const FITTED = 2 / 3;
/** Fewer answers to test on decide nothing. */
const LEAST_HELD_OUT = 40;
const EVALUATIONS = 9;
/** For slopes by difference. */
const STEP = 0.003;

export interface Evidence {
  readonly fitted: number;
  readonly heldOut: number;
  /** Mean surprise at the answers kept out, in nats: under the usual model and under the personal scale. */
  readonly usual: number;
  readonly personal: number;
  /** Standard error of their difference. */
  readonly error: number;
}

export interface PersonalScale {
  /** Estimated from all answers. */
  readonly scale: Scale;
  /** Null when there are too few answers to hold some out. */
  readonly evidence: Evidence | null;
  readonly adopted: boolean;
  /** What to fold and plan with: scaled when adopted, else the usual ones. */
  readonly weights: readonly number[];
}

/** The usual weights at a scale: w0 to w3 times a factor, w8 moved. */
export function weightsAt({ first, growth }: Scale): number[] {
  return WEIGHTS.map((w, index) => {
    if (index < 4) return Math.min(100, Math.max(0.1, w * Math.exp(first)));
    return index === 8 ? w + growth : w;
  });
}

type Replay = (weights: readonly number[]) => readonly Observation[];

const later = (observations: readonly Observation[]) => observations.filter(({ before }) => before !== null);

/** The scale that best explains the first `count` later answers and lies near the usual one. */
function estimateScale(replay: Replay, count: number): Scale {
  const cost = (first: number, growth: number) => {
    const seen = later(replay(weightsAt({ first, growth }))).slice(0, count);
    const shrink = (first / SPREAD.first) ** 2 / 2 + (growth / SPREAD.growth) ** 2 / 2;
    return seen.reduce((sum, observation) => sum + surprise(observation, observation.recall), shrink);
  };
  const at = ([first, growth]: Float64Array) => {
    const value = cost(first!, growth!);
    const slope = (moved: number) => (moved - value) / STEP;
    return {
      value,
      gradient: Float64Array.of(slope(cost(first! + STEP, growth!)), slope(cost(first!, growth! + STEP))),
    };
  };
  const [first, growth] = minimise(at, Float64Array.of(0, 0), { evaluations: EVALUATIONS });
  return { first: first!, growth: growth! };
}

function testScale(replay: Replay, fitted: number, scale: Scale): Evidence {
  const [usual, personal] = [WEIGHTS, weightsAt(scale)].map((weights) =>
    later(replay(weights))
      .slice(fitted)
      .map((observation) => surprise(observation, observation.recall)),
  );
  const gains = usual!.map((value, i) => value - personal![i]!);
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const gain = mean(gains);
  const variance = gains.reduce((sum, x) => sum + (x - gain) ** 2, 0) / (gains.length - 1);
  return {
    fitted,
    heldOut: gains.length,
    usual: mean(usual!),
    personal: mean(personal!),
    error: Math.sqrt(variance / gains.length),
  };
}

/** The learner's scale with its evidence. Adopted when the gain is more than its standard error. */
export function personalScale(
  attempts: readonly Attempt[],
  voids: ReadonlySet<string> = new Set(),
): PersonalScale {
  const replay: Replay = (weights) => observationsOf(attempts, voids, weights);
  const answers = later(replay(WEIGHTS)).length;
  const fitted = Math.floor(answers * FITTED);
  const evidence =
    answers - fitted >= LEAST_HELD_OUT ? testScale(replay, fitted, estimateScale(replay, fitted)) : null;
  const scale = answers > 0 ? estimateScale(replay, answers) : { first: 0, growth: 0 };
  const adopted = evidence !== null && evidence.usual - evidence.personal > evidence.error;
  return { scale, evidence, adopted, weights: adopted ? weightsAt(scale) : WEIGHTS };
}
