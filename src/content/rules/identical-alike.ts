import { differenceOf } from './alike-plates.ts';
import type { Rule } from './rule.ts';

/** Plates said to be identical agree in everything that is recorded of them, and there are several. */
export const identicalAlike: Rule = {
  id: 'identical-alike',
  severity: 'error',
  check: (deck) =>
    (deck.stacks ?? []).flatMap(({ items }, s) =>
      items.flatMap((item, index) => {
        if (item.identical === undefined) return [];
        const at = ['stacks', s, 'items', index, 'identical'];
        const group = items.filter(({ identical }) => identical === item.identical);
        if (group.length === 1) return [{ at, case: 'alone', values: { word: item.identical } }];
        const property = differenceOf(group[0]!, item);
        return property
          ? [{ at, case: 'differ', values: { word: item.identical, property, other: group[0]!.id } }]
          : [];
      }),
    ),
};
