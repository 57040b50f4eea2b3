/**
 * Which range the speeds show: the one whose ratio is nearest by share. Refused when two ranges are within the
 * tolerance, or none is. Two rows of one ratio are always refused: speeds do not tell them apart.
 * Source: docs/sources.md [SPEED-1].
 */
import { ONE, type Rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';

export interface RangeRatio {
  readonly id: string;
  /** Never zero; negative in reverse. */
  readonly ratio: Rational;
}

/** How far a measured ratio is from a range's, as a share of the range's: 2.34 from 2.4 is 0.025. */
export const relativeDistance = (measured: Rational, ratio: Rational): Rational =>
  measured.sub(ratio).div(ratio).abs();

export type ActualRangeError =
  | { readonly code: 'ambiguous'; readonly between: readonly string[] }
  | { readonly code: 'none-near'; readonly nearest: string | null };

/** `tolerance` is a share: 0.03 is 3 % of the range's ratio, the edge included. */
export function actualRange(
  ranges: readonly RangeRatio[],
  measured: Rational,
  tolerance: Rational,
): Result<string, ActualRangeError> {
  const near = ranges
    .map(({ id, ratio }) => ({ id, off: relativeDistance(measured, ratio) }))
    .sort((a, b) => a.off.compare(b.off));
  const within = near.filter(({ off }) => off.lte(tolerance));
  if (within.length > 1) return fail({ code: 'ambiguous', between: within.map(({ id }) => id) });
  return within[0] ? pass(within[0].id) : fail({ code: 'none-near', nearest: near[0]?.id ?? null });
}

/** Pairs of ranges so near each other that one measured ratio can be within the tolerance (below 1) of both. */
export function tooClose(ranges: readonly RangeRatio[], tolerance: Rational): [string, string][] {
  return ranges.flatMap((one, index) =>
    ranges.slice(index + 1).flatMap((other): [string, string][] => {
      if (one.ratio.mul(other.ratio).lt(0n)) return [];
      const [small, large] = [one.ratio.abs(), other.ratio.abs()].sort((a, b) => a.compare(b));
      const reach = small!.mul(ONE.add(tolerance));
      return reach.gte(large!.mul(ONE.sub(tolerance))) ? [[one.id, other.id]] : [];
    }),
  );
}
