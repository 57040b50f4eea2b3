/** How well recall is predicted for this learner: predicted against observed, on questions about one fact. */
import { type Observation, rightChance, surprise } from './observe.ts';

export interface Bin {
  /** Predicted chance of a right answer: low included, high not (but 1). */
  readonly low: number;
  readonly high: number;
  readonly count: number;
  /** Means over the bin. */
  readonly predicted: number;
  readonly observed: number;
  /** Standard error of `observed` if the predictions are true. */
  readonly error: number;
}

export interface Calibration {
  readonly answers: number;
  /** Mean surprise an answer, in nats; and that of always predicting the overall share of right answers. */
  readonly logLoss: number;
  readonly plainLogLoss: number;
  /** Root of the mean squared gap between predicted and observed, over bins by their counts. */
  readonly rmse: number;
  /** Only those with answers, rising. */
  readonly bins: readonly Bin[];
}

const BINS = 10;

/** Null without answers. First answers are left out unless asked for: what they predict is the same for all. */
export function calibrationOf(
  observations: readonly Observation[],
  { firstOnes = false }: { readonly firstOnes?: boolean } = {},
): Calibration | null {
  const used = observations.filter(({ before }) => firstOnes || before !== null);
  if (used.length === 0) return null;
  const chances = used.map(({ recall, guessRate }) => rightChance(recall, guessRate));
  const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
  const bins = Array.from({ length: BINS }, (_, bin): Bin => {
    const places = chances.flatMap((chance, place) =>
      Math.min(BINS - 1, Math.floor(chance * BINS)) === bin ? [place] : [],
    );
    const count = places.length;
    return {
      low: bin / BINS,
      high: (bin + 1) / BINS,
      count,
      predicted: sum(places.map((place) => chances[place]!)) / count,
      observed: places.filter((place) => used[place]!.right).length / count,
      error: Math.sqrt(sum(places.map((place) => chances[place]! * (1 - chances[place]!)))) / count,
    };
  }).filter(({ count }) => count > 0);
  const right = used.filter((observation) => observation.right).length / used.length;
  const entropy = (share: number) => (share > 0 ? -share * Math.log(share) : 0);
  const squares = bins.map(({ count, predicted, observed }) => count * (predicted - observed) ** 2);
  return {
    answers: used.length,
    logLoss: sum(used.map((observation) => surprise(observation, observation.recall))) / used.length,
    plainLogLoss: entropy(right) + entropy(1 - right),
    rmse: Math.sqrt(sum(squares) / used.length),
    bins,
  };
}
