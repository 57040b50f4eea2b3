/**
 * Play (end play or clearance) and the part that sets it. Everything turns on the bare gap: the play there
 * would be with no selective part. A part that lies in the stack which the play closes takes its thickness off
 * the play; one on the other side of a fixed face adds it. Which it is, the unit's data must say. Any one unit of
 * length. Source: docs/sources.md [PLAY-1].
 */
import type { Rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';
import type { Limits } from './limits.ts';

/** What a thicker part does to the play. */
export const EFFECTS = ['closes', 'opens'] as const;
export type Effect = (typeof EFFECTS)[number];

/** One depth read from a face; with a gauge bar laid across the face, its height is in the reading. */
export interface Depth {
  readonly reading: Rational;
  readonly bar?: Rational | undefined;
}

export const METHODS = ['bare', 'part-fitted', 'depths'] as const;

/** How the gap was found. */
export type Reading =
  /** Play read with no selective part fitted. */
  | { readonly method: 'bare'; readonly play: Rational }
  /** Play read with a part of known thickness fitted: the present one, or the thinnest of the list. */
  | { readonly method: 'part-fitted'; readonly play: Rational; readonly part: Rational }
  /** No play read: how deep the seat lies below the case face, less how far the part stands off its own. */
  | {
      readonly method: 'depths';
      readonly seat: Depth;
      readonly standOff: Depth;
      /** Thickness the gasket is pressed down to; it keeps the faces apart. */
      readonly gasket?: Rational | undefined;
    };

export type PlayError =
  | {
      readonly code:
        | 'play-negative'
        | 'depth-negative'
        | 'part-not-positive'
        | 'gasket-negative'
        | 'bar-not-positive';
    }
  /** The reading is smaller than the bar it was taken over. */
  | { readonly code: 'bar-exceeds-reading' }
  /** The depths leave less than nothing between the parts. */
  | { readonly code: 'parts-overlap'; readonly by: Rational };

/** Depth below the face: reading less the bar. Depth 63.42 over a bar of 25.00 is 38.42. */
export function depthOf({ reading, bar }: Depth): Result<Rational, PlayError> {
  if (!bar) return reading.lt(0n) ? fail({ code: 'depth-negative' }) : pass(reading);
  if (bar.lte(0n)) return fail({ code: 'bar-not-positive' });
  return bar.gt(reading) ? fail({ code: 'bar-exceeds-reading' }) : pass(reading.sub(bar));
}

function gapBetween(reading: Extract<Reading, { method: 'depths' }>): Result<Rational, PlayError> {
  const seat = depthOf(reading.seat);
  if (!seat.ok) return seat;
  const standOff = depthOf(reading.standOff);
  if (!standOff.ok) return standOff;
  if (reading.gasket?.lt(0n)) return fail({ code: 'gasket-negative' });
  const gap = seat.value.sub(standOff.value);
  return pass(reading.gasket ? gap.add(reading.gasket) : gap);
}

/**
 * The play with no selective part. Where the part opens the play it may be below zero: there is none until the
 * part makes some. Where it closes the play, less than nothing is a wrong reading.
 */
export function bareGap(reading: Reading, effect: Effect): Result<Rational, PlayError> {
  if (reading.method === 'depths') {
    const gap = gapBetween(reading);
    return gap.ok && effect === 'closes' && gap.value.lt(0n)
      ? fail({ code: 'parts-overlap', by: gap.value.neg() })
      : gap;
  }
  if (reading.play.lt(0n)) return fail({ code: 'play-negative' });
  if (reading.method === 'bare') return pass(reading.play);
  if (reading.part.lte(0n)) return fail({ code: 'part-not-positive' });
  return pass(effect === 'closes' ? reading.play.add(reading.part) : reading.play.sub(reading.part));
}

/** Play with a part of this thickness fitted; below zero it does not go together. */
export function playWith(bare: Rational, effect: Effect, thickness: Rational): Rational {
  return effect === 'closes' ? bare.sub(thickness) : bare.add(thickness);
}

/** The thickness that gives this play. */
export function thicknessFor(bare: Rational, effect: Effect, play: Rational): Rational {
  return effect === 'closes' ? bare.sub(play) : play.sub(bare);
}

export type WindowError =
  /** Too little play with no part at all, and a part would only take more: measure again. */
  | { readonly code: 'bare-below-limits'; readonly bare: Rational }
  /** Too much play with no part at all, and a part would only add to it. */
  | { readonly code: 'bare-above-limits'; readonly bare: Rational };

/**
 * The thicknesses that bring the play within its limits. For a closing part from bare - high to bare - low. A
 * lower end at or below zero means that no part at all would do as well.
 */
export function windowFor(bare: Rational, effect: Effect, limits: Limits): Result<Limits, WindowError> {
  const ends = [limits.low, limits.high].map((play) => thicknessFor(bare, effect, play));
  const [low, high] = effect === 'closes' ? [ends[1]!, ends[0]!] : [ends[0]!, ends[1]!];
  if (high.lt(0n))
    return fail({ code: effect === 'closes' ? 'bare-below-limits' : 'bare-above-limits', bare });
  return pass({ low, high });
}
