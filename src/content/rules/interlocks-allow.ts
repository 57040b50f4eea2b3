import type { Spot } from '../finding.ts';
import { rowsOf } from './rows.ts';
import type { Rule } from './rule.ts';

/** No row of the chart needs what an interlock keeps from it. */
export const interlocksAllow: Rule = {
  id: 'interlocks-allow',
  severity: 'error',
  check: (deck) =>
    (deck.interlocks ?? []).flatMap(({ whenApplied, blocks }, index) =>
      rowsOf(deck).flatMap(({ row }): Spot[] => {
        const kept = blocks.filter((element) => row.applied.includes(element));
        const acts = whenApplied.every((element) => row.applied.includes(element));
        return acts && kept.length > 0
          ? [{ at: ['interlocks', index, 'blocks'], values: { row: row.id, elements: kept } }]
          : [];
      }),
    ),
};
