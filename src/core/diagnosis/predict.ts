/** What each test shows on a unit with a given fault; null where the deck does not settle it. */
import type { Fault } from '../faults/fault.ts';
import { outcomeOf } from '../faults/outcome.ts';
import { isDead, pressuresWith } from '../faults/pressure.ts';
import type { Deck } from '../unit/deck.ts';
import type { Unit } from '../unit/unit.ts';
import { circuitCodes, type Reading, rowOf, type Test } from './test.ts';

/** Whether a speed sensor is heard. Behind a connector that is off it is not; which are behind it, pins say. */
export function isHeard(deck: Deck, fault: Fault | null, sensor: string): boolean | null {
  switch (fault?.kind) {
    case 'sensor-lost':
      return fault.sensor !== sensor;
    case 'supply-lost': {
      const pickup = deck.electrical?.pickups?.find((candidate) => candidate.sensor === sensor);
      return pickup ? pickup.supply !== fault.supply : null;
    }
    case 'connector-off': {
      const pins = deck.electrical?.connectors?.flatMap((connector) => connector.pins);
      return pins ? !pins.some(({ serves }) => serves === `sensor:${sensor}`) : null;
    }
    default:
      return true;
  }
}

/** Whether the circuit of what a code watches is broken; null where that is not settled. No fault breaks others. */
export function isBroken(deck: Deck, fault: Fault | null, watched: string): boolean | null {
  const [kind, id] = watched.split(':') as [string, string];
  if (kind === 'solenoid') return isDead(deck, fault, { id });
  if (kind === 'sensor') {
    const heard = isHeard(deck, fault, id);
    return heard === null ? null : !heard;
  }
  return fault?.kind === 'supply-lost' && watched === `supply:${fault.supply}`;
}

/** Circuit codes that set, in the deck's order. */
function circuitCodesWith(deck: Deck, fault: Fault | null): string[] | null {
  const set: string[] = [];
  for (const { id, watches } of circuitCodes(deck)) {
    const broken = watches.map((watched) => isBroken(deck, fault, watched));
    if (broken.includes(true)) set.push(id);
    else if (broken.includes(null)) return null;
  }
  return set;
}

/** What this test shows with this fault; `null` as fault is a sound unit. */
export function predict(unit: Unit, fault: Fault | null, test: Test): Reading | null {
  const { deck } = unit;
  switch (test.kind) {
    case 'road': {
      const outcome = outcomeOf(unit, fault, rowOf(unit, test.row), test.position);
      if (outcome.kind === 'unsettled') return null;
      return outcome.kind === 'becomes' ? `range:${outcome.range}` : outcome.kind;
    }
    case 'gauge':
      return pressuresWith(deck, fault, rowOf(unit, test.row), test.position).get(test.element) ?? null;
    case 'codes': {
      const codes = circuitCodesWith(deck, fault);
      return codes && `codes:${codes.join('+')}`;
    }
    case 'resistance':
      return fault?.kind === 'solenoid-unplugged' && fault.solenoid === test.solenoid ? 'open' : 'in-band';
    case 'voltage': {
      const cut = fault?.kind !== 'solenoid-unplugged' && isDead(deck, fault, { id: test.solenoid });
      return cut ? 'no-voltage' : 'voltage';
    }
    case 'signal': {
      const heard = isHeard(deck, fault, test.sensor);
      return heard === null ? null : heard ? 'signal' : 'no-signal';
    }
  }
}
