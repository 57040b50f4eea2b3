/**
 * Choosing the selective part from the list: the only one in the window, else the one closest to the thickness
 * aimed at, which is the middle unless the maker states a play to aim at. Two equally close are refused as a
 * tie, because neither is the answer. Source: docs/sources.md [PLAY-1].
 */
import type { Rational } from '../rational.ts';
import { ZERO } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';
import { type Limits, middleOf, placeIn } from './limits.ts';
import {
  bareGap,
  type Effect,
  type PlayError,
  playWith,
  type Reading,
  thicknessFor,
  type WindowError,
  windowFor,
} from './play.ts';

export interface Part {
  readonly id: string;
  readonly thickness: Rational;
}

export type SelectionError =
  | { readonly code: 'no-parts' }
  | { readonly code: 'part-not-positive'; readonly part: string }
  /** A stated aim that is itself outside the limits. */
  | { readonly code: 'aim-outside-limits' }
  | { readonly code: 'none-fits'; readonly window: Limits }
  /** Several parts are equally close, or so nearly that the margin does not tell them apart. */
  | { readonly code: 'tie'; readonly between: readonly string[] };

export interface Aim {
  /** Thickness aimed at; the middle of the window when left out. */
  readonly thickness?: Rational | undefined;
  /** How much closer than the next the chosen part must be to be the answer; more than 0 when left out. */
  readonly margin?: Rational | undefined;
}

/** The part for this window. A thickness on the edge of the window fits. */
export function selectPart(
  parts: readonly Part[],
  window: Limits,
  { thickness, margin = ZERO }: Aim = {},
): Result<Part, SelectionError> {
  if (parts.length === 0) return fail({ code: 'no-parts' });
  const wrong = parts.find((part) => part.thickness.lte(0n));
  if (wrong) return fail({ code: 'part-not-positive', part: wrong.id });
  if (thickness && placeIn(window, thickness) !== 'in') return fail({ code: 'aim-outside-limits' });
  const aim = thickness ?? middleOf(window);
  const offOf = (part: Part) => part.thickness.sub(aim).abs();
  const [best, ...rest] = parts
    .filter((part) => placeIn(window, part.thickness) === 'in')
    .sort((a, b) => offOf(a).compare(offOf(b)));
  if (!best) return fail({ code: 'none-fits', window });
  const tied = rest.filter((part) => offOf(part).sub(offOf(best)).lte(margin));
  return tied.length === 0
    ? pass(best)
    : fail({ code: 'tie', between: [best, ...tied].map((part) => part.id) });
}

/** A measurement with limits and a list of selective parts. */
export interface Fit {
  readonly limits: Limits;
  readonly effect: Effect;
  readonly reading: Reading;
  readonly parts: readonly Part[];
  /** Play to aim at, where the maker states one that is not the middle. */
  readonly aim?: Rational | undefined;
  readonly margin?: Rational | undefined;
}

export interface Fitted {
  readonly bare: Rational;
  /** Thicknesses that would do. */
  readonly window: Limits;
  readonly part: Part;
  /** The play it leaves. */
  readonly play: Rational;
}

/** From reading to part, each step refused by name where it cannot be right. */
export function fitPart(fit: Fit): Result<Fitted, PlayError | WindowError | SelectionError> {
  const bare = bareGap(fit.reading, fit.effect);
  if (!bare.ok) return bare;
  const window = windowFor(bare.value, fit.effect, fit.limits);
  if (!window.ok) return window;
  const thickness = fit.aim && thicknessFor(bare.value, fit.effect, fit.aim);
  const part = selectPart(fit.parts, window.value, { thickness, margin: fit.margin });
  if (!part.ok) return part;
  return pass({
    bare: bare.value,
    window: window.value,
    part: part.value,
    play: playWith(bare.value, fit.effect, part.value.thickness),
  });
}
