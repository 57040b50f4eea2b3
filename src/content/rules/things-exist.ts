import { refsOf } from '../../core/unit/refs.ts';
import { pointers } from './references.ts';
import type { Rule } from './rule.ts';

/** What is named by kind and id is in the deck. */
export const thingsExist: Rule = {
  id: 'things-exist',
  severity: 'error',
  check(deck) {
    const refs: ReadonlySet<string> = refsOf(deck);
    return pointers(deck)
      .filter(({ id }) => !refs.has(id))
      .map(({ at, id }) => ({ at, values: { ref: id } }));
  },
};
