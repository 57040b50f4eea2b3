import { oneWaysInRanges } from './one-way-load.ts';
import type { Rule } from './rule.ts';

/** A one-way charted as holding is pushed the way it blocks. */
export const oneWayHolds: Rule = {
  id: 'one-way-holds',
  severity: 'error',
  check: (deck) =>
    oneWaysInRanges(deck)
      .filter(({ charted }) => charted === 'pushed-free')
      .map(({ at, id }) => ({ at: [...at, 'applied'], values: { id } })),
};
