/** Measurements with limits and a list of selective parts (src/core/measure computes with them). */
import type { Depth, Effect, METHODS, Reading } from '../measure/play.ts';
import type { Fit, Part } from '../measure/select.ts';
import { type Band, exactIn, type Length, limitsIn, type Named, type Provenance } from './record.ts';

export const FIT_KINDS = ['end-play', 'clutch-clearance', 'piston-travel'] as const;
export type FitKind = (typeof FIT_KINDS)[number];

export const INSTRUMENTS = ['dial', 'depth-gauge', 'feeler'] as const;

export interface DeckSelectivePart extends Named, Provenance {
  readonly thickness: Length;
}

/** One depth, read from a face, or over the gauge bar laid on it. */
export interface DeckDepth {
  readonly reading: Length;
  readonly overBar?: true | undefined;
}

/** Figures somebody read, and what was chosen on them. Which fields there are depends on the fit's method. */
export interface DeckReading extends Provenance {
  readonly id: string;
  /** bare, part-fitted: the play read. */
  readonly play?: Length | undefined;
  /** part-fitted: id of the selective part that was in. */
  readonly fitted?: string | undefined;
  /** depths: face down to the seat, and how far the part above stands off its face. */
  readonly seat?: DeckDepth | undefined;
  readonly standOff?: DeckDepth | undefined;
  /** Id of the selective part chosen, and the play read with it. They prove the `effect`. */
  readonly chosen?: string | undefined;
  readonly result?: Length | undefined;
}

export interface DeckFit extends Named, Provenance {
  readonly kind: FitKind;
  /** Where it is measured, in the shop's words. */
  readonly where: string;
  /** bare: with no selective part in. part-fitted: with a known one in. depths: from two depths. */
  readonly method: (typeof METHODS)[number];
  readonly instrument: (typeof INSTRUMENTS)[number];
  readonly limits: Band<Length>;
  /** Play to aim at, where the maker states one that is not the middle. */
  readonly aim?: Length | undefined;
  /** What a thicker selective part does to the play. */
  readonly effect: Effect;
  /** How far apart repeated readings may lie. */
  readonly spread?: Length | undefined;
  /** depths: height of the gauge bar; thickness the gasket is pressed down to. */
  readonly bar?: Length | undefined;
  readonly gasket?: Length | undefined;
  readonly parts: readonly DeckSelectivePart[];
  /** Id of the stack it belongs to, and "stack/item" of the selective part in it. */
  readonly stack?: string | undefined;
  readonly item?: string | undefined;
  /** Id of the seat whose thickness is chosen. */
  readonly seat?: string | undefined;
  readonly readings?: readonly DeckReading[] | undefined;
}

/** The unit a fit is judged in: that of its limits. Everything below is in it. */
export const unitOf = ({ limits }: DeckFit): Length['unit'] => limits.low.unit;

export const partsOf = (fit: DeckFit): Part[] =>
  fit.parts.map(({ id, thickness }) => ({ id, thickness: exactIn(thickness, unitOf(fit)) }));

/** A reading as src/core/measure takes it; null where it lacks what the method needs. */
export function readingOf(fit: DeckFit, reading: DeckReading): Reading | null {
  const unit = unitOf(fit);
  const depth = (of: DeckDepth): Depth => ({
    reading: exactIn(of.reading, unit),
    bar: of.overBar && fit.bar && exactIn(fit.bar, unit),
  });
  if (fit.method === 'depths') {
    if (!reading.seat || !reading.standOff) return null;
    const gasket = fit.gasket && exactIn(fit.gasket, unit);
    return { method: 'depths', seat: depth(reading.seat), standOff: depth(reading.standOff), gasket };
  }
  if (!reading.play) return null;
  const play = exactIn(reading.play, unit);
  if (fit.method === 'bare') return { method: 'bare', play };
  const part = fit.parts.find(({ id }) => id === reading.fitted);
  return part ? { method: 'part-fitted', play, part: exactIn(part.thickness, unit) } : null;
}

/** The fit with any reading, ready for `fitPart`. */
export const fitWith = (fit: DeckFit, reading: Reading): Fit => ({
  limits: limitsIn(fit.limits, unitOf(fit)),
  effect: fit.effect,
  reading,
  parts: partsOf(fit),
  aim: fit.aim && exactIn(fit.aim, unitOf(fit)),
});
