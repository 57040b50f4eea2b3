import { frictionOf } from '../../core/hydraulics/feeds.ts';
import type { Spot } from '../finding.ts';
import type { Rule } from './rule.ts';

/**
 * One solenoid for each element: a deck does not say which of two wins. When they agree unplugged it is only
 * left out of questions; when they do not, the unplugged state is not defined (feeds-agree).
 */
export const feedsSingle: Rule = {
  id: 'feeds-single',
  severity: 'warning',
  check: (deck) =>
    frictionOf(deck).flatMap((id): Spot[] => {
      const feeding = (deck.solenoids ?? []).filter((solenoid) => solenoid.feeds.includes(id));
      const agree = new Set(feeding.map((solenoid) => solenoid.whenUnplugged)).size === 1;
      if (feeding.length < 2 || !agree) return [];
      const index = deck.solenoids!.indexOf(feeding[1]!);
      return [
        {
          at: ['solenoids', index, 'feeds'],
          values: { id, solenoids: feeding.map((solenoid) => solenoid.id) },
        },
      ];
    }),
};
