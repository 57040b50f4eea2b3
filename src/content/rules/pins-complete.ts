import type { Rule } from './rule.ts';

/** With connectors recorded, what has a wire has a pin. */
export const pinsComplete: Rule = {
  id: 'pins-complete',
  severity: 'warning',
  check(deck) {
    const { windings = [], pickups = [], thermistors = [], connectors } = deck.electrical ?? {};
    if (!connectors || connectors.length === 0) return [];
    const served = new Set(connectors.flatMap(({ pins }) => pins.map(({ serves }) => serves)));
    const wired = [
      ...windings.map(({ solenoid }, index) => ({ at: ['windings', index], what: `solenoid:${solenoid}` })),
      ...pickups.map(({ sensor }, index) => ({ at: ['pickups', index], what: `sensor:${sensor}` })),
      ...thermistors.map(({ id }, index) => ({ at: ['thermistors', index], what: `thermistor:${id}` })),
    ];
    return wired
      .filter(({ what }) => !served.has(what))
      .map(({ at, what }) => ({ at: ['electrical', ...at], values: { what } }));
  },
};
