import { isInPack, type StackKind } from '../../core/unit/stacks.ts';
import type { Rule } from './rule.ts';

const REACTS: readonly StackKind[] = ['steel', 'apply', 'backing'];

/** A friction plate lies between plates that react. */
export const frictionsFaced: Rule = {
  id: 'frictions-faced',
  severity: 'warning',
  check: (deck) =>
    (deck.stacks ?? []).flatMap(({ items }, s) => {
      const pack = items.filter(isInPack);
      return pack.flatMap((item, index) => {
        const beside = [pack[index - 1], pack[index + 1]];
        const faced = beside.every((other) => other && REACTS.includes(other.kind));
        return item.kind === 'friction' && !faced
          ? [{ at: ['stacks', s, 'items', items.indexOf(item)], values: { id: item.id } }]
          : [];
      });
    }),
};
