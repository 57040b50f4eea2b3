/**
 * A harness with one fault, read with a meter: every winding from its own pin to the common one and, if asked
 * for, to the case. And the same readings judged by the formulas of a star, in floating point.
 */
import {
  expectedBetween,
  GROUND,
  type Harness,
  type HarnessFault,
  type PinReading,
} from '../../../electrical/harness.ts';
import type { Random } from '../../../random.ts';
import { type Rational, rational } from '../../../rational.ts';
import { ohmsIn, toTenths } from './winding-parts.ts';

/** Null is a sound harness. */
export type Condition = HarnessFault | null;

/** What the winding at fault is left with, in hundredths of an end of its band. */
const LEFT_WITH = { 'turns-shorted': [35, 85], 'high-resistance': [140, 400] } as const;

const sameOhms = (ohms: Rational) => ({ low: ohms, high: ohms });

/** This very harness: each winding with one resistance, in tenths of an ohm. */
function drawHarness({ common, windings }: Harness, fault: Condition, random: Random): Harness {
  const drawn = windings.map(({ pin, ohms }) => {
    const kind = fault?.kind;
    if ((kind !== 'turns-shorted' && kind !== 'high-resistance') || fault?.pin !== pin)
      return { pin, ohms: sameOhms(ohmsIn(ohms, random)) };
    const end = kind === 'turns-shorted' ? ohms.low : ohms.high;
    const share = rational(random.int(LEFT_WITH[kind][0], LEFT_WITH[kind][1]), 100);
    return { pin, ohms: sameOhms(toTenths(end.mul(share))) };
  });
  return { common, windings: drawn };
}

/** What a meter shows on it, to a tenth of an ohm; open is null. */
export function readHarness(
  harness: Harness,
  fault: Condition,
  toCase: boolean,
  random: Random,
): PinReading[] {
  const real = drawHarness(harness, fault, random);
  // Windings that are only out of their band are in `real` already; the rest changes the wiring.
  const wired = fault?.kind === 'turns-shorted' || fault?.kind === 'high-resistance' ? null : fault;
  const read = (from: string, to: string): PinReading => {
    const shown = expectedBetween(real, wired, from, to);
    return { between: [from, to], ohms: shown.shows === 'open' ? null : toTenths(shown.low) };
  };
  const pins = harness.windings.map(({ pin }) => pin);
  return [
    ...pins.map((pin) => read(pin, harness.common)),
    ...(toCase ? pins.map((pin) => read(pin, GROUND)) : []),
  ];
}

type Span = readonly [low: number, high: number] | null;

const CLOSED: Span = [0, 0];
const parallel = (a: number, b: number) => (a * b) / (a + b);

/** The span of what a meter may show from a pin to the common one, or to the case; null is open. */
function spanFor({ windings, common }: Harness, fault: Condition, pin: string, to: string): Span {
  const own = windings.find((winding) => winding.pin === pin)!.ohms;
  const [low, high] = [own.low.valueOf(), own.high.valueOf()];
  const here = fault !== null && 'pin' in fault && fault.pin === pin;
  if (to === common) {
    if (fault?.kind === 'common-open') return null;
    if (fault?.kind === 'pins-joined' && (here || fault.other === pin)) {
      const mate = windings.find((winding) => winding.pin === (here ? fault.other : fault.pin))!.ohms;
      return [parallel(low, mate.low.valueOf()), parallel(high, mate.high.valueOf())];
    }
    if (!here || fault.kind === 'to-ground' || fault.kind === 'pins-joined') return [low, high];
    if (fault.kind === 'open') return null;
    if (fault.kind === 'shorted') return CLOSED;
    return fault.kind === 'turns-shorted' ? [0, low] : [high, Number.POSITIVE_INFINITY];
  }
  if (fault?.kind === 'common-to-ground') return [low, high];
  if (fault?.kind !== 'to-ground') return null;
  if (here) return CLOSED;
  const mate = windings.find((winding) => winding.pin === fault.pin)!.ohms;
  return [low + mate.low.valueOf(), high + mate.high.valueOf()];
}

/** Whether a condition explains every reading; ends that a weak or bad winding must not reach are left out. */
export function explainsByFormula(
  harness: Harness,
  fault: Condition,
  readings: readonly PinReading[],
): boolean {
  return readings.every(({ between: [pin, to], ohms }) => {
    const span = spanFor(harness, fault, pin, to);
    if (span === null || ohms === null) return span === null && ohms === null;
    const shown = ohms.valueOf();
    const own = fault !== null && 'pin' in fault && fault.pin === pin && to === harness.common;
    if (own && fault.kind === 'turns-shorted') return shown > 0 && shown < span[1] - 1e-9;
    if (own && fault.kind === 'high-resistance') return shown > span[0] + 1e-9;
    return shown >= span[0] - 1e-9 && shown <= span[1] + 1e-9;
  });
}
