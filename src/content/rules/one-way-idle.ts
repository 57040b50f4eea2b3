import { oneWaysInRanges } from './one-way-load.ts';
import type { Rule } from './rule.ts';

/** A one-way charted as holding carries some torque. */
export const oneWayIdle: Rule = {
  id: 'one-way-idle',
  severity: 'warning',
  check: (deck) =>
    oneWaysInRanges(deck)
      .filter(({ charted }) => charted === 'idle')
      .map(({ at, id }) => ({ at: [...at, 'applied'], values: { id } })),
};
