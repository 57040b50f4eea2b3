/**
 * What will be recalled at the class date if the plan is kept, as a range that says how sure that is. Three
 * things are unsure: whether this learner forgets as the model says (one factor on all stabilities, estimated
 * from the answers so far and shrunk towards 1), how much is known at a first ask, and chance on the day itself.
 * docs/spec/plan.md P16 and P17.
 */
import type { FactId } from '../questions/question.ts';
import { type Observation, surprise } from './observe.ts';
import { recallAtClass } from './prospect.ts';
import type { PlanRequest, Solved } from './solve.ts';
import { recallAfter, transitionOf } from './transition.ts';

/** How far learners are taken to differ before any answer: of the factor's logarithm, of first recall's log-odds. */
const FACTOR_SPREAD = 0.4;
const FIRST_SPREAD = 0.5;
/**
 * One factor is not all that learners differ by: answers so far say little about memories that are yet to grow.
 * This much, times the root of the days left, stays unsure however many answers there are. Set so that the range
 * is honest in simulation (P17).
 */
const FACTOR_DRIFT = 0.07;

/** Chance that the share at class lies in the range. */
export const COVERAGE = 0.9;

export interface Readiness {
  /** Share of the weight recalled at class: expected, and the range. */
  readonly expected: number;
  readonly low: number;
  readonly high: number;
  /** The same share if nothing more were practised. */
  readonly kept: number;
}

export interface FactReadiness {
  readonly fact: FactId;
  readonly expected: number;
  readonly kept: number;
}

export interface ReadinessReport {
  readonly all: Readiness;
  readonly facts: readonly FactReadiness[];
  /** In the order the topics first come. */
  readonly topics: ReadonlyMap<string, Readiness>;
  /** Factor on all stabilities that the answers so far point to, and its range: 1 means as the model says. */
  readonly factor: { readonly likely: number; readonly low: number; readonly high: number };
}

/** What the answers say of an unsure number that is 0 on average: posterior mean and deviation, on a fine grid. */
function posterior(spread: number, cost: (at: number) => number): { mean: number; deviation: number } {
  const values = Array.from({ length: 81 }, (_, i) => ((i - 40) * spread) / 8);
  const logs = values.map((at) => -((at / spread) ** 2) / 2 - cost(at));
  const most = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - most));
  const total = weights.reduce((a, b) => a + b, 0);
  const mean = values.reduce((sum, at, i) => sum + at * weights[i]!, 0) / total;
  const variance = values.reduce((sum, at, i) => sum + (at - mean) ** 2 * weights[i]!, 0) / total;
  return { mean, deviation: Math.sqrt(variance) };
}

/** Five-point Gauss-Hermite rule for a normal (standard table): exact for polynomials up to the ninth degree. */
const NODES = [
  { at: -2.8569700138728056, weight: 0.011257411327720691 },
  { at: -1.355626179974266, weight: 0.2220759220056126 },
  { at: 0, weight: 0.5333333333333333 },
  { at: 1.355626179974266, weight: 0.2220759220056126 },
  { at: 2.8569700138728056, weight: 0.011257411327720691 },
] as const;

/** Normal distribution function, to 1.5e-7 (Abramowitz and Stegun 7.1.26). */
function below(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const poly =
    t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const tail = (poly * Math.exp(-x * x)) / 2;
  return z > 0 ? 1 - tail : tail;
}

const logit = (p: number) => Math.log(p / (1 - p));

interface Part {
  readonly weight: number;
  readonly mean: number;
  readonly variance: number;
}

/** Where a mixture has `share` of its probability below; each part normal in log-odds, so within 0 and 1. */
function quantile(parts: readonly Part[], share: number): number {
  const odds = parts.map(({ weight, mean, variance }) => {
    const inside = Math.min(1 - 1e-6, Math.max(1e-6, mean));
    return { weight, centre: logit(inside), width: Math.sqrt(variance) / (inside * (1 - inside)) };
  });
  let [low, high] = [-16, 16];
  for (let step = 0; step < 50; step++) {
    const x = (low + high) / 2;
    const sum = odds.reduce(
      (total, { weight, centre, width }) =>
        total + weight * (width > 0 ? below((x - centre) / width) : x >= centre ? 1 : 0),
      0,
    );
    if (sum < share) low = x;
    else high = x;
  }
  return 1 / (1 + Math.exp(-(low + high) / 2));
}

/**
 * Readiness of all facts, of each, and of each topic (`topicOf`, by place in the request's list), for a plan
 * solved from the same request.
 */
export function readinessOf(
  request: PlanRequest,
  solved: Solved,
  observations: readonly Observation[],
  topicOf: readonly string[] = [],
): ReadinessReport {
  const { facts } = request;
  const m = transitionOf(request.w);
  const factor = posterior(FACTOR_SPREAD, (at) =>
    observations.reduce((sum, observation) => {
      const { before } = observation;
      if (!before) return sum;
      return sum + surprise(observation, recallAfter(m, before.days, before.stability * Math.exp(at)));
    }, 0),
  );
  const first = posterior(FIRST_SPREAD, (at) =>
    observations.reduce((sum, observation) => {
      if (observation.before) return sum;
      return sum + surprise(observation, 1 / (1 + Math.exp(-logit(observation.recall) - at)));
    }, 0),
  );
  const deviation = Math.hypot(
    factor.deviation,
    FACTOR_DRIFT * Math.sqrt(Math.max(0, request.classDay - request.today)),
  );
  const spreadOut = (groups: Float64Array) => {
    const each = new Float64Array(facts.length);
    for (const [g, places] of solved.problem.members.entries())
      for (const place of places) each[place] = groups[g]!;
    return each;
  };
  const at = (log: number, firstShift: number) =>
    spreadOut(recallAtClass(solved, { factor: Math.exp(log), firstShift }));
  const nodes = NODES.map((node) => ({
    weight: node.weight,
    recalled: at(factor.mean + node.at * deviation, first.mean),
  }));
  const [fewer, more] = [-1, 1].map((side) => at(factor.mean, first.mean + side * first.deviation));
  const kept = spreadOut(solved.problem.asks.recallAtClass);

  const over = (places: readonly number[]): Readiness => {
    const weight = places.reduce((sum, place) => sum + facts[place]!.weight, 0);
    const mean = (values: Float64Array) =>
      places.reduce((sum, place) => sum + facts[place]!.weight * values[place]!, 0) / weight;
    const firstVariance = ((mean(more!) - mean(fewer!)) / 2) ** 2;
    const parts = nodes.map(({ weight: share, recalled }): Part => {
      const luck = places.reduce((sum, place) => {
        const p = recalled[place]!;
        return sum + (facts[place]!.weight / weight) ** 2 * p * (1 - p);
      }, 0);
      return { weight: share, mean: mean(recalled), variance: luck + firstVariance };
    });
    const tail = (1 - COVERAGE) / 2;
    return {
      expected: parts.reduce((sum, part) => sum + part.weight * part.mean, 0),
      low: quantile(parts, tail),
      high: quantile(parts, 1 - tail),
      kept: mean(kept),
    };
  };

  const topics = new Map<string, number[]>();
  for (const [place, topic] of topicOf.entries()) topics.set(topic, [...(topics.get(topic) ?? []), place]);
  const reach = 1.645 * factor.deviation;
  return {
    all: over([...facts.keys()]),
    facts: facts.map(({ id }, place) => ({
      fact: id,
      expected: nodes.reduce((sum, { weight, recalled }) => sum + weight * recalled[place]!, 0),
      kept: kept[place]!,
    })),
    topics: new Map([...topics].map(([topic, places]) => [topic, over(places)])),
    factor: {
      likely: Math.exp(factor.mean),
      low: Math.exp(factor.mean - reach),
      high: Math.exp(factor.mean + reach),
    },
  };
}
