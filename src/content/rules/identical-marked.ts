import { differenceOf } from './alike-plates.ts';
import type { Rule } from './rule.ts';

/** Plates of one stack that nothing tells apart are marked identical, so that their order is never asked. */
export const identicalMarked: Rule = {
  id: 'identical-marked',
  severity: 'warning',
  check: (deck) =>
    (deck.stacks ?? []).flatMap(({ items }, s) =>
      items.flatMap((item, index) => {
        const twin = items
          .slice(0, index)
          .find((other) => !differenceOf(other, item) && (other.identical ?? 1) !== (item.identical ?? 2));
        return twin ? [{ at: ['stacks', s, 'items', index], values: { other: twin.id } }] : [];
      }),
    ),
};
