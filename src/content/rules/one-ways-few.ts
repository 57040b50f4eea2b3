import { MOST_ONE_WAYS, oneWaysOf } from './rows.ts';
import type { Rule } from './rule.ts';

/** Every combination of one-ways is tried, so their number is kept small. */
export const oneWaysFew: Rule = {
  id: 'one-ways-few',
  severity: 'error',
  check(deck) {
    const count = oneWaysOf(deck.train).length;
    return count > MOST_ONE_WAYS
      ? [{ at: ['train', 'elements'], values: { count, most: MOST_ONE_WAYS } }]
      : [];
  },
};
