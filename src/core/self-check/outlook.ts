/**
 * The probability of reaching a threshold on another check of the same make. Method: the true share of each
 * area has Jeffreys' prior, Beta(½, ½), so after r of n it is Beta(r + ½, n − r + ½); the number right of the
 * area's next questions is then beta-binomial, areas apart; their sum is convolved exactly (docs/sources.md [I3]). It
 * takes the next questions to be like these: it is no forecast of another exam.
 */
import { gammaln } from 'simple-statistics';
import type { Score } from './interval.ts';

const logBeta = (a: number, b: number) => gammaln(a) + gammaln(b) - gammaln(a + b);

/** P(k right of `next`) for k = 0 … next, after this score. Sums to 1. */
export function nextScores({ right, asked }: Score, next: number): number[] {
  const [a, b] = [right + 0.5, asked - right + 0.5];
  return Array.from({ length: next + 1 }, (_, k) => {
    const ways = gammaln(next + 1) - gammaln(k + 1) - gammaln(next - k + 1);
    return Math.exp(ways + logBeta(k + a, next - k + b) - logBeta(a, b));
  });
}

function convolve(a: readonly number[], b: readonly number[]): number[] {
  const sum = new Array<number>(a.length + b.length - 1).fill(0);
  for (const [i, x] of a.entries()) for (const [j, y] of b.entries()) sum[i + j]! += x * y;
  return sum;
}

/** Probability, 0 to 1, that the next check with as many questions in each area has at least this share right. */
export function chanceToReach(areas: readonly Score[], threshold: number): number {
  const total = areas.reduce((sum, { asked }) => sum + asked, 0);
  const scores = areas.map((area) => nextScores(area, area.asked)).reduce(convolve, [1]);
  const needed = Math.ceil(threshold * total - 1e-9);
  return Math.min(
    1,
    scores.slice(needed).reduce((sum, chance) => sum + chance, 0),
  );
}
