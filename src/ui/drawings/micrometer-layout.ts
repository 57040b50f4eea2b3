/**
 * A micrometer's sleeve and thimble. Along the sleeve everything is to scale; the thimble's lines lie round a
 * cylinder, closer together towards its edges, and rise upwards as they do on one held in the right hand.
 */
import { coarseOf, THIMBLE_NUMBERED } from '../../core/questions/describe/gauges.ts';
import type { MicrometerDrawing } from '../../core/questions/drawing.ts';
import type { Printed, Tick } from './dial-layout.ts';
import type { Segment } from './train-shapes.ts';

export interface MicrometerLayout {
  readonly width: number;
  readonly height: number;
  readonly datum: Segment;
  /** Left end of what is seen of the sleeve; broken off there when the zero lies further left. */
  readonly sleeve: { readonly left: number; readonly top: number; readonly bottom: number };
  readonly isBroken: boolean;
  readonly lines: readonly Tick[];
  readonly numbers: readonly Printed[];
  /** Edge of the thimble, where its lines start; the bevel ends where the body begins. */
  readonly thimble: {
    readonly edge: number;
    readonly body: number;
    readonly right: number;
    /** Half heights at the edge and on the body. */
    readonly rim: number;
    readonly radius: number;
  };
  readonly thimbleLines: readonly Tick[];
  readonly thimbleNumbers: readonly Printed[];
  readonly legend: Printed;
}

const WIDTH = 276;
const HEIGHT = 164;
const MIDDLE = 72;
/** Room for the sleeve. */
const SLEEVE = 168;
const BEVEL = 34;
/** Length along the sleeve that is drawn at most, in printed numbers. */
const NUMBERS_SEEN = 2.4;

export function layoutMicrometer({ scale, reading }: MicrometerDrawing): MicrometerLayout {
  const { stepsPerNumber, numberStep } = coarseOf(scale, 'micrometer');
  const pitch = SLEEVE / (NUMBERS_SEEN * stepsPerNumber);
  const value = reading.steps + reading.divisions / scale.divisions;
  const room = SLEEVE / pitch;
  const isBroken = value > room - stepsPerNumber * 0.4;
  const edge = 10 + (isBroken ? SLEEVE : value * pitch + 0.4 * stepsPerNumber * pitch);
  const left = 10;
  const xOf = (step: number) => edge - (value - step) * pitch;
  const isMetric = scale.unit === 'mm';
  const steps = Array.from({ length: reading.steps + 1 }, (_, step) => step).filter(
    (step) => xOf(step) > left + 2,
  );
  const lines = steps.map((step): Tick => {
    const x = xOf(step);
    const numbered = step % stepsPerNumber === 0;
    // Half millimetres stand below the datum, all other lines above it.
    const below = isMetric && step % 2 === 1;
    const length = numbered ? 20 : 13;
    return {
      x1: x,
      x2: x,
      y1: MIDDLE,
      y2: below ? MIDDLE + length : MIDDLE - length,
      rank: numbered ? 'numbered' : 'division',
    };
  });
  const numbers = steps
    .filter((step) => step % stepsPerNumber === 0 && xOf(step) > left + 8 && xOf(step) < edge - 5)
    .map((step) => ({
      x: xOf(step),
      y: MIDDLE - 29,
      text: String((step / stepsPerNumber) * numberStep),
    }));

  const rim = 50;
  const radius = 66;
  const body = edge + BEVEL;
  const right = WIDTH - 4;
  const apart = (2 * Math.PI) / scale.divisions;
  const near = Array.from({ length: scale.divisions }, (_, line) => {
    const half = scale.divisions / 2;
    // How many divisions above the datum, the short way round.
    const up =
      ((((line - reading.divisions + half) % scale.divisions) + scale.divisions) % scale.divisions) - half;
    return { line, angle: up * apart };
  }).filter(({ angle }) => Math.abs(angle) < 1.25);
  const thimbleLines = near.map(({ line, angle }): Tick => {
    const numbered = line % THIMBLE_NUMBERED === 0;
    const reach = numbered ? 1 : 0.62;
    const from = MIDDLE - rim * Math.sin(angle);
    const to = MIDDLE - (rim + (radius - rim) * reach) * Math.sin(angle);
    return {
      x1: edge,
      y1: from,
      x2: edge + BEVEL * reach,
      y2: to,
      rank: numbered ? 'numbered' : 'division',
    };
  });
  const thimbleNumbers = near
    .filter(({ line, angle }) => line % THIMBLE_NUMBERED === 0 && Math.abs(angle) < 1.1)
    .map(({ line, angle }) => ({
      x: body + 12,
      y: MIDDLE - radius * Math.sin(angle),
      text: String(line),
    }));
  return {
    width: WIDTH,
    height: HEIGHT,
    datum: { x1: left, y1: MIDDLE, x2: edge, y2: MIDDLE },
    sleeve: { left, top: MIDDLE - 44, bottom: MIDDLE + 44 },
    isBroken,
    lines,
    numbers,
    thimble: { edge, body, right, rim, radius },
    thimbleLines,
    thimbleNumbers,
    legend: { x: left, y: HEIGHT - 6, text: `${scale.division} ${scale.unit}` },
  };
}
