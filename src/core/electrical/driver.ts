/**
 * The controller's pin for a solenoid, by the side the controller switches. On the low side the feed is always
 * there and the driver pulls the pin to ground; on the high side the ground is always there and the driver puts
 * the supply on the pin. The driver's own drop is left out. A pin that nothing holds floats: what a meter then
 * shows depends on the controller and is not guessed. Source: docs/sources.md [DRIVER-1].
 */
import type { Rational } from '../rational.ts';
import { ZERO } from '../rational.ts';

export const SIDES = ['low', 'high'] as const;
/** Which side of the winding the controller switches. */
export type Side = (typeof SIDES)[number];

export const DRIVERS = ['off', 'on'] as const;
export type Driver = (typeof DRIVERS)[number];

/** The circuit from the pin on: a short is on the wire between controller and winding. */
export const CIRCUITS = ['sound', 'open', 'short-to-ground', 'short-to-supply'] as const;
export type Circuit = (typeof CIRCUITS)[number];

export interface PinState {
  readonly level: 'supply' | 'ground' | 'floating';
  /** Whether current flows through the winding. */
  readonly powered: boolean;
  /** The driver works straight against a short: it is limited, switched off or burnt. */
  readonly overloaded: boolean;
}

/** Level of the controller's pin, and whether the winding has current. */
export function pinState(side: Side, driver: Driver, circuit: Circuit): PinState {
  const pull = side === 'low' ? 'ground' : 'supply';
  const rest = side === 'low' ? 'supply' : 'ground';
  if (circuit === 'sound' || circuit === 'open') {
    const whole = circuit === 'sound';
    if (driver === 'on') return { level: pull, powered: whole, overloaded: false };
    return { level: whole ? rest : 'floating', powered: false, overloaded: false };
  }
  const forced = circuit === 'short-to-ground' ? 'ground' : 'supply';
  return { level: forced, powered: forced === pull, overloaded: driver === 'on' && forced !== pull };
}

/** Volts against ground on the pin; null where it floats. */
export function voltsAt(level: PinState['level'], supply: Rational): Rational | null {
  if (level === 'floating') return null;
  return level === 'supply' ? supply : ZERO;
}
