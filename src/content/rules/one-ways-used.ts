import { rangesOf } from './rows.ts';
import type { Rule } from './rule.ts';

/** A one-way is charted where it holds. Charts that leave one-ways out altogether are common. */
export const oneWaysUsed: Rule = {
  id: 'one-ways-used',
  severity: 'warning',
  check(deck) {
    const used = new Set(rangesOf(deck).flatMap(({ row }) => row.applied));
    return deck.train.elements.flatMap(({ id, kind }, index) =>
      kind !== 'one-way' || used.has(id) ? [] : [{ at: ['train', 'elements', index], values: { id } }],
    );
  },
};
