import { countOf } from '../../core/unit/stacks.ts';
import type { Rule } from './rule.ts';

/** A capacity is of an element with plates, and counts the frictions that its pack has. */
export const capacityAgrees: Rule = {
  id: 'capacity-agrees',
  severity: 'error',
  check: (deck) =>
    deck.train.elements.flatMap(({ id, kind, capacity }, index) => {
      if (!capacity) return [];
      const at = ['train', 'elements', index, 'capacity'];
      if (kind === 'one-way') return [{ at, case: 'one-way' }];
      const stack = deck.stacks?.find(({ element }) => element === id);
      const counted = stack && countOf(stack, 'friction');
      return counted === undefined || counted === capacity.frictions
        ? []
        : [
            {
              at: [...at, 'frictions'],
              case: 'frictions',
              values: { stated: capacity.frictions, counted, stack: stack!.id },
            },
          ];
    }),
};
