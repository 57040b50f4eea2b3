import { rowsOf } from './rows.ts';
import type { Rule } from './rule.ts';

/** Once a lever is recorded, each row can be had in one of its positions. */
export const rowsReached: Rule = {
  id: 'rows-reached',
  severity: 'error',
  check(deck) {
    if (!deck.lever) return [];
    const reached = new Set(deck.lever.positions.flatMap((position) => position.rows));
    return rowsOf(deck).flatMap(({ at, row }) =>
      reached.has(row.id) ? [] : [{ at, values: { id: row.id } }],
    );
  },
};
