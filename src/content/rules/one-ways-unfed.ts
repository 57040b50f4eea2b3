import { elementReferences } from './references.ts';
import { oneWaysOf } from './rows.ts';
import type { Rule } from './rule.ts';

/** No oil goes to a one-way: it holds and lets go by itself. */
export const oneWaysUnfed: Rule = {
  id: 'one-ways-unfed',
  severity: 'error',
  check(deck) {
    const oneWays = oneWaysOf(deck.train);
    return elementReferences(deck)
      .filter(({ at, id }) => at[0] !== 'chart' && oneWays.includes(id))
      .map(({ at, id }) => ({ at, values: { id } }));
  },
};
