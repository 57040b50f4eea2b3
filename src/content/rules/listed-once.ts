import { makePointer } from '../finding.ts';
import { idLists } from './references.ts';
import type { Rule } from './rule.ts';

/** A list names each thing once. */
export const listedOnce: Rule = {
  id: 'listed-once',
  severity: 'error',
  check(deck) {
    const seen = new Set<string>();
    return idLists(deck).flatMap(({ at, id }) => {
      const entry = `${makePointer(at.slice(0, -1))} ${id}`;
      if (seen.has(entry)) return [{ at, values: { id } }];
      seen.add(entry);
      return [];
    });
  },
};
