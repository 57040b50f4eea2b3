import { isLess, written } from './amounts.ts';
import type { Rule } from './rule.ts';

/** A waved or dished plate stands higher free than pressed flat. */
export const wavesHigher: Rule = {
  id: 'waves-higher',
  severity: 'error',
  check: (deck) =>
    (deck.stacks ?? []).flatMap(({ items }, s) =>
      items.flatMap(({ thickness, free }, index) =>
        thickness && free && !isLess(thickness, free)
          ? [
              {
                at: ['stacks', s, 'items', index, 'free'],
                values: { free: written(free), flat: written(thickness) },
              },
            ]
          : [],
      ),
    ),
};
