/**
 * Instruments in words, for who cannot see the drawing: every scale as it is numbered and how far past which
 * number it stands. The reading itself is left to be worked out, as it is from the drawing.
 */
import { makeRational, parseRational, type Rational, rational } from '../../rational.ts';
import type { DepthGaugeDrawing, DialDrawing, MicrometerDrawing, Scale, WindowDrawing } from '../drawing.ts';
import { type Phrase, say } from '../phrase.ts';

/** Divisions from one printed number of a dial to the next. */
export const DIAL_NUMBERED = 10;
/** Of a thimble and of a vernier. */
export const THIMBLE_NUMBERED = 5;
/** Turns that the counter of a dial counts before it starts again. */
export const COUNTER_TURNS = 10;

/** The coarse scale: what a step is worth, and after how many of them a number is printed. */
export interface Coarse {
  readonly step: Rational;
  readonly stepsPerNumber: number;
  /** What the printed number rises by. */
  readonly numberStep: number;
}

/** Numbers stand every 5 mm of a sleeve and every 10 mm of a main scale; every tenth of an inch on either, as 1, 2… */
export function coarseOf({ unit, division, divisions }: Scale, kind: 'micrometer' | 'depth-gauge'): Coarse {
  const step = parseRational(division)!.mul(BigInt(divisions));
  const [apart, numberStep] =
    unit === 'in' ? [rational(1, 10), 1] : kind === 'micrometer' ? [rational(5), 5] : [rational(10), 10];
  return { step, stepsPerNumber: Math.max(1, Math.round(apart.div(step).valueOf())), numberStep };
}

function dialStands(reading: DialDrawing['reading'], key: 'now' | 'start'): Phrase {
  const turns = reading.steps % COUNTER_TURNS;
  return say(`drawing.dial.${key}`, {
    on: reading.divisions === 0 ? 'yes' : 'no',
    turns,
    next: (turns + 1) % COUNTER_TURNS,
    past: reading.divisions % DIAL_NUMBERED,
    number: reading.divisions - (reading.divisions % DIAL_NUMBERED),
  });
}

export function describeDial({ scale, reading, start }: DialDrawing): Phrase[] {
  return [
    say('drawing.dial.scale', { ...scale, apart: DIAL_NUMBERED, turns: COUNTER_TURNS }),
    ...(start ? [dialStands(start, 'start')] : []),
    dialStands(reading, 'now'),
  ];
}

export function describeMicrometer({ scale, reading }: MicrometerDrawing): Phrase[] {
  const { stepsPerNumber, numberStep, step } = coarseOf(scale, 'micrometer');
  const number = Math.floor(reading.steps / stepsPerNumber) * numberStep;
  const beyond = reading.steps % stepsPerNumber;
  const past = reading.divisions % THIMBLE_NUMBERED;
  return [
    say(`drawing.micrometer.scale-${scale.unit}`, {
      step: makeRational(step),
      divisions: scale.divisions,
      division: scale.division,
    }),
    scale.unit === 'mm'
      ? say('drawing.micrometer.sleeve-mm', {
          number,
          whole: Math.floor(beyond / 2),
          half: beyond % 2 === 1 ? 'yes' : 'no',
        })
      : say('drawing.micrometer.sleeve-in', { number, lines: beyond }),
    say('drawing.micrometer.thimble', { past, number: reading.divisions - past }),
  ];
}

export function describeDepthGauge({ scale, reading, overBar }: DepthGaugeDrawing): Phrase[] {
  const { stepsPerNumber, numberStep, step } = coarseOf(scale, 'depth-gauge');
  const number = Math.floor(reading.steps / stepsPerNumber) * numberStep;
  const past = reading.divisions % THIMBLE_NUMBERED;
  return [
    say('drawing.depth.stands', { bar: overBar ? 'yes' : 'no' }),
    say(`drawing.depth.scale-${scale.unit}`, {
      step: step.d === 1n ? makeRational(step) : step.valueOf(),
      lines: scale.divisions,
      division: scale.division,
    }),
    say('drawing.depth.zero', {
      on: reading.divisions === 0 ? 'yes' : 'no',
      number,
      lines: reading.steps % stepsPerNumber,
    }),
    say('drawing.depth.vernier', {
      past,
      number: vernierNumber(scale, reading.divisions - past),
    }),
  ];
}

/** The number printed at a vernier line: fiftieths of a millimetre are numbered in tenths, as 1, 2…; others as counted. */
export const vernierNumber = ({ unit, divisions }: Scale, line: number): number =>
  unit === 'mm' ? (line * 10) / divisions : line;

export function describeWindow({ low, high, aim, unit, parts }: WindowDrawing): Phrase[] {
  return [
    say('drawing.window.band', { low, high, unit }),
    ...(aim === undefined ? [] : [say('drawing.window.aim', { aim, unit })]),
    ...parts.map(({ label, at, lit }) =>
      say('drawing.window.part', { label, at, unit, lit: lit ? 'yes' : 'no' }),
    ),
  ];
}
