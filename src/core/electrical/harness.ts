/**
 * Windings on one connector, all joined at one end to a common wire, each with a pin of its own. What a meter
 * shows between any two pins, sound or with one fault, comes from solving the network. Ohms, with the leads' own
 * resistance taken off, all at one temperature.
 */
import type { Limits } from '../measure/limits.ts';
import { type Rational, ZERO } from '../rational.ts';
import { type Resistor, resistanceBetween } from './network.ts';

export interface Winding {
  readonly pin: string;
  /** Band of its resistance at the temperature of the readings. */
  readonly ohms: Limits;
}

/** The case, where windings should not reach unless their common wire is the ground itself. */
export const GROUND = 'ground';
/** Inside the unit, where the windings meet; no pin reaches it but through the common wire. */
const JUNCTION = ' junction';

export interface Harness {
  /** Pin of the common wire, or GROUND. */
  readonly common: string;
  readonly windings: readonly Winding[];
}

export type HarnessFault =
  /** Winding or its wire broken. */
  | { readonly kind: 'open'; readonly pin: string }
  /** Some turns bridged: less than its band, more than nothing. */
  | { readonly kind: 'turns-shorted'; readonly pin: string }
  /** Bridged from end to end. */
  | { readonly kind: 'shorted'; readonly pin: string }
  /** A bad joint in its wire: more than its band. */
  | { readonly kind: 'high-resistance'; readonly pin: string }
  | { readonly kind: 'to-ground'; readonly pin: string }
  | { readonly kind: 'pins-joined'; readonly pin: string; readonly other: string }
  | { readonly kind: 'common-open' | 'common-to-ground' };

/** Every single fault of the harness that a meter at its pins could tell. */
export function everyFault({ common, windings }: Harness): HarnessFault[] {
  const pins = windings.map(({ pin }) => pin);
  const grounded = common === GROUND;
  const ofPin = (pin: string): HarnessFault[] =>
    (['open', 'turns-shorted', 'shorted', 'high-resistance', 'to-ground'] as const)
      .filter((kind) => !(grounded && kind === 'to-ground'))
      .map((kind) => ({ kind, pin }));
  return [
    ...pins.flatMap(ofPin),
    ...pins.flatMap((pin, index) =>
      pins.slice(index + 1).map((other) => ({ kind: 'pins-joined', pin, other }) as const),
    ),
    { kind: 'common-open' },
    ...(grounded ? [] : [{ kind: 'common-to-ground' } as const]),
  ];
}

/** Which end of every band; the network's resistance rises with each of its resistors. */
type End = 'low' | 'high';

/** The harness as resistors, the faulty winding left out. */
function wiring({ common, windings }: Harness, fault: HarnessFault | null, end: End): Resistor[] {
  const join = (a: string, b: string): Resistor => ({ between: [a, b], ohms: ZERO });
  const own = fault && 'pin' in fault ? fault.pin : null;
  const replaced = own !== null && !['to-ground', 'pins-joined'].includes(fault!.kind);
  const resistors = windings
    .filter(({ pin }) => !(replaced && pin === own))
    .map(({ pin, ohms }): Resistor => ({ between: [JUNCTION, pin], ohms: ohms[end] }));
  if (fault?.kind !== 'common-open') resistors.push(join(common, JUNCTION));
  switch (fault?.kind) {
    case 'shorted':
      return [...resistors, join(JUNCTION, fault.pin)];
    case 'to-ground':
      return [...resistors, join(fault.pin, GROUND)];
    case 'pins-joined':
      return [...resistors, join(fault.pin, fault.other)];
    case 'common-to-ground':
      return [...resistors, join(common, GROUND)];
    default:
      return resistors;
  }
}

/** What the meter may show: open, or ohms from low to high. `without` ends do not belong to it. */
export type Expected =
  | { readonly shows: 'open' }
  | {
      readonly shows: 'ohms';
      readonly low: Rational;
      /** Null: as high as you like, short of open. */
      readonly high: Rational | null;
      readonly without: readonly End[];
    };

/** What a meter shows between two pins (or a pin and GROUND) with this fault; `null` is a sound harness. */
export function expectedBetween(
  harness: Harness,
  fault: HarnessFault | null,
  from: string,
  to: string,
): Expected {
  const solve = (end: End, ohms?: Rational) => {
    const resistors = wiring(harness, fault, end);
    const own = fault && 'pin' in fault ? fault.pin : '';
    return resistanceBetween(ohms ? [...resistors, { between: [JUNCTION, own], ohms }] : resistors, from, to);
  };
  const band = (low: Rational | null, high: Rational | null, without: readonly End[] = []): Expected =>
    low === null ? { shows: 'open' } : { shows: 'ohms', low, high, without };

  if (fault?.kind !== 'turns-shorted' && fault?.kind !== 'high-resistance')
    return band(solve('low'), solve('high'));
  const sound = harness.windings.find(({ pin }) => pin === fault.pin)!.ohms;
  const throughIt = solve('low') === null && solve('low', sound.low) !== null;
  if (!throughIt) return band(solve('low'), solve('high'));
  return fault.kind === 'turns-shorted'
    ? band(solve('low', ZERO), solve('high', sound.low), ['low', 'high'])
    : band(solve('low', sound.high), null, ['low']);
}

/** A reading fits when the meter may show it: null ohms is open. */
export function fits(expected: Expected, ohms: Rational | null): boolean {
  if (expected.shows === 'open' || ohms === null) return expected.shows === 'open' && ohms === null;
  const { low, high, without } = expected;
  const aboveLow = without.includes('low') ? ohms.gt(low) : ohms.gte(low);
  if (high === null) return aboveLow;
  return aboveLow && (without.includes('high') ? ohms.lt(high) : ohms.lte(high));
}

export interface PinReading {
  readonly between: readonly [string, string];
  /** Null when the meter shows open. */
  readonly ohms: Rational | null;
}

/**
 * Every explanation that fits all the readings: `null` for a sound harness, and each single fault. One alone is
 * a diagnosis; several mean that the readings do not settle it; none, that there is more than one fault or that
 * a reading is wrong.
 */
export function faultsThatFit(harness: Harness, readings: readonly PinReading[]): (HarnessFault | null)[] {
  return [null, ...everyFault(harness)].filter((fault) =>
    readings.every(({ between, ohms }) => fits(expectedBetween(harness, fault, ...between), ohms)),
  );
}

/** What a sound harness shows between every two pins, common pin first: each winding, then sums of two. */
export function pinMatrix(
  harness: Harness,
): { readonly between: [string, string]; readonly expected: Expected }[] {
  const pins = [harness.common, ...harness.windings.map(({ pin }) => pin)];
  return pins.flatMap((from, index) =>
    pins.slice(index + 1).map((to) => ({
      between: [from, to] as [string, string],
      expected: expectedBetween(harness, null, from, to),
    })),
  );
}
