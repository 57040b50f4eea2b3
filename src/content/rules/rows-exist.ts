import { missing, rowReferences } from './references.ts';
import { rowsOf } from './rows.ts';
import type { Rule } from './rule.ts';

/** The lever commands only rows of the chart. */
export const rowsExist: Rule = {
  id: 'rows-exist',
  severity: 'error',
  check: (deck) =>
    missing(
      rowReferences(deck),
      rowsOf(deck).map(({ row }) => row.id),
    ),
};
