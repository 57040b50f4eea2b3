import { oneWaysInRanges } from './one-way-load.ts';
import type { Rule } from './rule.ts';

/** A one-way that a range does not list is not turned the way it blocks. */
export const oneWayBinds: Rule = {
  id: 'one-way-binds',
  severity: 'error',
  check: (deck) =>
    oneWaysInRanges(deck)
      .filter(({ binds }) => binds)
      .map(({ at, id }) => ({ at: [...at, 'applied'], values: { id } })),
};
