import { recordReferences } from './references.ts';
import type { Rule } from './rule.ts';

/** What a fit, a winding, a sensor or a step names by its id is in the deck. */
export const recordsExist: Rule = {
  id: 'records-exist',
  severity: 'error',
  check: (deck) =>
    recordReferences(deck)
      .filter(({ id, known }) => !known.includes(id))
      .map(({ at, id, kind, known }) => ({ at, case: kind, values: { id, known, count: known.length } })),
};
