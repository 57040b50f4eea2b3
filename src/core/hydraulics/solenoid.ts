/**
 * One solenoid: what it gives for its current. The deck stores what it gives when unplugged, never the words
 * "normally open" or "normally low", which makers use both ways round (docs/sources.md [POLARITY]). On means full
 * current.
 */
import type { DeckSolenoid, Pressure } from '../unit/deck.ts';

export const CURRENTS = ['off', 'on'] as const;
export type Current = (typeof CURRENTS)[number];

const other = (pressure: Pressure): Pressure => (pressure === 'full' ? 'none' : 'full');

/** pressureAt({ whenUnplugged: 'full' }, 'on') is "none". */
export function pressureAt(solenoid: Pick<DeckSolenoid, 'whenUnplugged'>, current: Current): Pressure {
  return current === 'off' ? solenoid.whenUnplugged : other(solenoid.whenUnplugged);
}

/** The current that makes it give this pressure: the inverse of `pressureAt`. */
export function currentFor(solenoid: Pick<DeckSolenoid, 'whenUnplugged'>, pressure: Pressure): Current {
  return solenoid.whenUnplugged === pressure ? 'off' : 'on';
}
