import { makeDecimal } from '../../core/rational.ts';
import { clearanceMm } from '../../core/unit/stacks.ts';
import { written } from './amounts.ts';
import type { Rule } from './rule.ts';

/** The plates of a pack go into its room. */
export const stackRoom: Rule = {
  id: 'stack-room',
  severity: 'error',
  check: (deck) =>
    (deck.stacks ?? []).flatMap((stack, index) => {
      const clearance = clearanceMm(stack);
      if (!clearance || clearance.ok || clearance.error.code !== 'does-not-assemble') return [];
      return [
        {
          at: ['stacks', index, 'room'],
          values: { room: written(stack.room!), by: makeDecimal(clearance.error.by, 2) },
        },
      ];
    }),
};
