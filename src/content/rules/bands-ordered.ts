import { bandsOf, isLess, written } from './amounts.ts';
import type { Rule } from './rule.ts';

/** The low end of a band or of limits lies below the high end. */
export const bandsOrdered: Rule = {
  id: 'bands-ordered',
  severity: 'error',
  check: (deck) =>
    bandsOf(deck).flatMap(({ at, less, more }) =>
      isLess(less, more) ? [] : [{ at, values: { low: written(less), high: written(more) } }],
    ),
};
