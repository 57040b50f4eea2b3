/**
 * A depth gauge: how it stands on the work, where the vernier's zero lies on the main scale, and, under a lens,
 * the vernier lines of which one meets a main line. Both scales run to the right. Under the lens the line that
 * meets is not always in the middle.
 */
import { coarseOf, THIMBLE_NUMBERED, vernierNumber } from '../../core/questions/describe/gauges.ts';
import type { DepthGaugeDrawing } from '../../core/questions/drawing.ts';
import type { Printed, Tick } from './dial-layout.ts';
import type { Segment } from './train-shapes.ts';

/** A strip of both scales: main lines above the seam, vernier lines below. */
export interface Strip {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly seam: Segment;
  readonly main: readonly Tick[];
  readonly mainNumbers: readonly Printed[];
  readonly vernier: readonly Tick[];
  readonly vernierNumbers: readonly Printed[];
}

export interface VernierLayout {
  readonly width: number;
  readonly height: number;
  readonly zero: Strip;
  readonly lens: Strip;
  readonly zeroCaption: Printed;
  readonly lensCaption: Printed;
  readonly legend: Printed;
  readonly setup: Setup;
}

/** The gauge on the work: not to scale, it only tells what was measured from what. */
export interface Setup {
  /** Outline of the work with its pocket, hatched under. */
  readonly work: string;
  readonly base: Box;
  readonly bar: Box | null;
  readonly blade: Box;
  /** Level of the face the gauge or the bar stands on, and of the seat. */
  readonly face: number;
  readonly seat: number;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const SETUP = 92;

function setUp(overBar: boolean): Setup {
  const face = 48;
  const seat = 74;
  const middle = WIDTH / 2;
  const bar = overBar ? { x: middle - 74, y: face - 12, width: 148, height: 12 } : null;
  const base = { x: middle - 46, y: (bar?.y ?? face) - 14, width: 92, height: 14 };
  return {
    work: `M${middle - 110} ${face}H${middle - 40}V${seat}H${middle + 40}V${face}H${middle + 110}`,
    base,
    bar,
    blade: { x: middle - 5, y: 4, width: 10, height: seat - 4 },
    face,
    seat,
  };
}

const WIDTH = 276;
const STRIP = 92;
/** Main steps to be seen in each strip. */
const AROUND_ZERO = 13;
const UNDER_LENS = 5;

function stripOf(
  { scale, reading }: DepthGaugeDrawing,
  top: number,
  from: number,
  steps: number,
  vernierOnly: boolean,
): Strip {
  const { stepsPerNumber, numberStep } = coarseOf(scale, 'depth-gauge');
  const [left, right] = [4, WIDTH - 4];
  const pitch = (right - left) / steps;
  const seam = top + STRIP / 2;
  const xOf = (step: number) => left + (step - from) * pitch;
  const inside = (x: number) => x > left + 3 && x < right - 3;
  const zero = reading.steps + reading.divisions / scale.divisions;
  const mains = Array.from({ length: steps + 1 }, (_, index) => Math.ceil(from) + index).filter(
    (step) => step >= 0 && inside(xOf(step)),
  );
  const verniers = Array.from({ length: scale.divisions + 1 }, (_, line) => ({
    line,
    x: xOf(zero + line * (1 - 1 / scale.divisions)),
  })).filter(({ x }) => inside(x));
  const printed = (x: number) => x > left + 9 && x < right - 9;
  return {
    left,
    right,
    top,
    bottom: top + STRIP,
    seam: { x1: left, x2: right, y1: seam, y2: seam },
    main: mains.map((step) => {
      const numbered = step % stepsPerNumber === 0;
      const half = step % (stepsPerNumber / 2) === 0;
      const length = numbered ? 24 : half ? 19 : 14;
      return {
        x1: xOf(step),
        x2: xOf(step),
        y1: seam,
        y2: seam - length,
        rank: numbered ? 'numbered' : 'division',
      };
    }),
    mainNumbers: vernierOnly
      ? []
      : mains
          .filter((step) => step % stepsPerNumber === 0 && printed(xOf(step)))
          .map((step) => ({
            x: xOf(step),
            y: seam - 33,
            text: String((step / stepsPerNumber) * numberStep),
          })),
    vernier: verniers.map(({ line, x }) => {
      const numbered = line % THIMBLE_NUMBERED === 0;
      return {
        x1: x,
        x2: x,
        y1: seam,
        y2: seam + (numbered ? 24 : 14),
        rank: numbered ? 'numbered' : 'division',
      };
    }),
    vernierNumbers: verniers
      .filter(({ line, x }) => line % THIMBLE_NUMBERED === 0 && printed(x))
      .map(({ line, x }) => ({ x, y: seam + 33, text: String(vernierNumber(scale, line)) })),
  };
}

/** `captions` are what stands over the two strips. */
export function layoutVernier(
  drawing: DepthGaugeDrawing,
  captions: readonly [string, string],
): VernierLayout {
  const { scale, reading } = drawing;
  const zero = reading.steps + reading.divisions / scale.divisions;
  const { stepsPerNumber } = coarseOf(scale, 'depth-gauge');
  // Far enough back that a printed number is seen before the zero.
  const back = Math.min(zero, (reading.steps % stepsPerNumber) + 1.2);
  const around = Math.max(AROUND_ZERO, stepsPerNumber + 4);
  const meets = reading.steps + reading.divisions;
  const aside = ((reading.divisions * 3 + reading.steps) % 3) - 1;
  const last = zero + scale.divisions * (1 - 1 / scale.divisions);
  const middle = Math.max(zero + UNDER_LENS / 2 - 0.7, Math.min(last - UNDER_LENS / 2 + 0.7, meets + aside));
  return {
    width: WIDTH,
    height: SETUP + 2 * STRIP + 66,
    setup: setUp(drawing.overBar ?? false),
    zeroCaption: { x: 4, y: SETUP + 13, text: captions[0] },
    zero: stripOf(drawing, SETUP + 20, zero - back - 0.3, around, false),
    lensCaption: { x: 4, y: SETUP + STRIP + 41, text: captions[1] },
    lens: stripOf(drawing, SETUP + STRIP + 48, middle - UNDER_LENS / 2, UNDER_LENS, true),
    legend: { x: WIDTH - 4, y: SETUP + 2 * STRIP + 61, text: `${scale.division} ${scale.unit}` },
  };
}
