/** What the families that read an instrument say alike: its scale, readings drawn on it, a number to answer with. */
import {
  DEPTH_GAUGE_INCH,
  DEPTH_GAUGE_MM,
  DIAL_INCH,
  DIAL_MM,
  type Instrument,
  MICROMETER_INCH,
  MICROMETER_MM,
  type ScaleReading,
  valueShown,
} from '../../../measure/instrument.ts';
import { makeDecimal, type Rational } from '../../../rational.ts';
import type { Scale } from '../../drawing.ts';
import type { Answer, AnswerSpace } from '../../question.ts';
import { floatOf } from '../number-parts.ts';

const SCALES: Readonly<Record<Instrument['kind'], Readonly<Record<Instrument['unit'], Instrument>>>> = {
  dial: { mm: DIAL_MM, in: DIAL_INCH },
  micrometer: { mm: MICROMETER_MM, in: MICROMETER_INCH },
  'depth-gauge': { mm: DEPTH_GAUGE_MM, in: DEPTH_GAUGE_INCH },
};

export const instrumentOf = (kind: Instrument['kind'], unit: Instrument['unit']): Instrument =>
  SCALES[kind][unit];

/** Places that a length is read to: 0.01 mm, 0.001 in. */
export const PLACES: Readonly<Record<Instrument['unit'], number>> = { mm: 2, in: 3 };

/** The value of a reading that was drawn on the scale. */
export function shownOn(instrument: Instrument, reading: ScaleReading): Rational {
  const value = valueShown(instrument, reading);
  if (!value.ok) throw new Error(`reading: ${value.error.code}`);
  return value.value;
}

/** "0.02" mm: what a fine division is worth, and how far an answer may be off. */
export const divisionText = ({ division, unit }: Instrument): string => makeDecimal(division, PLACES[unit]);

/** The scale as a drawing shows it. */
export const drawnScale = (instrument: Instrument): Scale => ({
  unit: instrument.unit,
  division: divisionText(instrument),
  divisions: instrument.divisions,
});

/** A length to answer with, one fine division either way. */
export const lengthSpace = (instrument: Instrument): AnswerSpace & { readonly form: 'number' } => ({
  form: 'number',
  unit: instrument.unit,
  tolerance: divisionText(instrument),
  signed: false,
  decimals: PLACES[instrument.unit],
});

/** Divisions from zero, counted one by one. */
const counted = ({ divisions }: Instrument, reading: ScaleReading): number =>
  reading.steps * divisions + reading.divisions;

/** Whether an answer is the distance between two readings less something taken off, counted in divisions. */
export function isDistance(
  instrument: Instrument,
  answer: Answer,
  to: ScaleReading,
  from: ScaleReading = { steps: 0, divisions: 0 },
  less = 0,
): boolean {
  const given = floatOf(answer);
  const division = instrument.division.valueOf();
  const really = (counted(instrument, to) - counted(instrument, from)) * division - less;
  return given !== null && Math.abs(given - really) <= division * (1 + 1e-9);
}
