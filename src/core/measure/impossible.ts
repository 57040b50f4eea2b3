/**
 * Figures that cannot be right, whatever the unit: the instrument, the note or the print is wrong, so nothing is
 * reckoned from them. All reasons are given, not only the first. Any one unit of length.
 */
import { type Rational, ZERO } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';
import { type Limits, type Place, placeIn } from './limits.ts';
import { type Effect, playWith } from './play.ts';

export const IMPOSSIBLE = [
  'limits-swapped',
  'limits-negative',
  'play-negative',
  'play-exceeds-depth',
  'stack-exceeds-depth',
  'sum-disagrees',
] as const;
export type Impossible = (typeof IMPOSSIBLE)[number];

/** What was noted of one fit; what was not noted is left out. */
export interface Noted {
  readonly low?: Rational | undefined;
  readonly high?: Rational | undefined;
  readonly play?: Rational | undefined;
  /** Room for the stack. */
  readonly depth?: Rational | undefined;
  /** Height of all that lies in it. */
  readonly stack?: Rational | undefined;
  /** How far depth less stack may differ from the play read; 0 when left out. */
  readonly tolerance?: Rational | undefined;
}

/** Why the figures cannot all be right; empty when nothing speaks against them. */
export function impossibilities(noted: Noted): Impossible[] {
  const { low, high, play, depth, stack, tolerance = ZERO } = noted;
  const holds: Readonly<Record<Impossible, boolean | undefined>> = {
    'limits-swapped': low && high?.lt(low),
    'limits-negative': low?.lt(0n) || high?.lt(0n),
    'play-negative': play?.lt(0n),
    'play-exceeds-depth': depth && play?.gt(depth),
    'stack-exceeds-depth': depth && stack?.gt(depth),
    'sum-disagrees':
      depth && stack && play && depth.gte(stack) && depth.sub(stack).sub(play).abs().gt(tolerance),
  };
  return IMPOSSIBLE.filter((reason) => holds[reason]);
}

export type ExampleError = {
  readonly code: 'source-contradicts-itself';
  /** The play its own figures give. */
  readonly play: Rational;
  readonly place: Place;
};

/** A worked example as a source prints it: the part it chooses must bring the play within its own limits. */
export function checkExample(example: {
  readonly limits: Limits;
  readonly effect: Effect;
  readonly bare: Rational;
  readonly chosen: Rational;
}): Result<Rational, ExampleError> {
  const play = playWith(example.bare, example.effect, example.chosen);
  const place = placeIn(example.limits, play);
  return place === 'in' ? pass(play) : fail({ code: 'source-contradicts-itself', play, place });
}
