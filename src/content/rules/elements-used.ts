import { rangesOf } from './rows.ts';
import type { Rule } from './rule.ts';

/** Every brake and clutch is on in some range. */
export const elementsUsed: Rule = {
  id: 'elements-used',
  severity: 'error',
  check(deck) {
    const used = new Set(rangesOf(deck).flatMap(({ row }) => row.applied));
    return deck.train.elements.flatMap(({ id, kind }, index) =>
      kind === 'one-way' || used.has(id) ? [] : [{ at: ['train', 'elements', index], values: { id } }],
    );
  },
};
