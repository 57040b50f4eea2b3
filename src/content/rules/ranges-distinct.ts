import { rangesOf } from './rows.ts';
import type { Rule } from './rule.ts';

const key = (applied: readonly string[]) => JSON.stringify([...new Set(applied)].sort());

/** No two ranges apply the same elements. */
export const rangesDistinct: Rule = {
  id: 'ranges-distinct',
  severity: 'error',
  check(deck) {
    const first = new Map<string, string>();
    return rangesOf(deck).flatMap(({ at, row }) => {
      const other = first.get(key(row.applied));
      if (other !== undefined)
        return [
          { at: [...at, 'applied'], values: { other, elements: row.applied, count: row.applied.length } },
        ];
      first.set(key(row.applied), row.id);
      return [];
    });
  },
};
