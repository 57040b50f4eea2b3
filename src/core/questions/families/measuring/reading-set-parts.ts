/** Readings of one play taken several times round the drum, as the families on repeated readings draw them. */
import type { Random } from '../../../random.ts';
import type { Rational } from '../../../rational.ts';
import { type Phrase, say } from '../../phrase.ts';
import { type AskedFit, fixed } from './fit-parts.ts';

/** Taken a quarter turn apart. */
const READINGS = 4;

/** Four readings about a play, each up to so many steps off it; undefined when one would be nothing or less. */
export function drawReadings(
  { step }: AskedFit,
  about: Rational,
  steps: number,
  random: Random,
): Rational[] | undefined {
  const readings = Array.from({ length: READINGS }, () =>
    about.add(step.mul(BigInt(random.int(-steps, steps)))),
  );
  return readings.every((reading) => reading.gt(0n)) ? readings : undefined;
}

/** A play from one limit to the other, by the step that readings have. */
export function playWithin({ limits, step }: AskedFit, random: Random): Rational {
  const steps = Number(limits.high.sub(limits.low).div(step).floor().toFraction());
  return limits.low.add(step.mul(BigInt(random.int(0, steps))));
}

/** "0.31 · 0.33 · 0.30 · 0.32 mm" */
export const readingsInWords = (asked: AskedFit, readings: readonly Rational[]): Phrase =>
  say('measuring.readings', {
    readings: readings.map((reading) => fixed(asked, reading)).join(' · '),
    unit: asked.unit,
  });

/** "0.31 + 0.33 + 0.30 + 0.32" */
export const sumText = (asked: AskedFit, readings: readonly Rational[]): string =>
  readings.map((reading) => fixed(asked, reading)).join(' + ');

/** The mean by plain floating point. */
export const floatMean = (readings: readonly Rational[]): number =>
  readings.reduce((sum, reading) => sum + reading.valueOf(), 0) / readings.length;

/** Highest less lowest by plain floating point. */
export const floatSpread = (readings: readonly Rational[]): number => {
  const values = readings.map((reading) => reading.valueOf());
  return Math.max(...values) - Math.min(...values);
};
