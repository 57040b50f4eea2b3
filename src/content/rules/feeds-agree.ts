import { frictionOf } from '../../core/hydraulics/feeds.ts';
import type { Spot } from '../finding.ts';
import type { Rule } from './rule.ts';

/** Unplugged, an element has pressure or has none. */
export const feedsAgree: Rule = {
  id: 'feeds-agree',
  severity: 'error',
  check: (deck) =>
    frictionOf(deck).flatMap((id): Spot[] => {
      const feeding = (deck.solenoids ?? []).filter((solenoid) => solenoid.feeds.includes(id));
      const index = feeding.findIndex((solenoid) => solenoid.whenUnplugged !== feeding[0]!.whenUnplugged);
      if (index < 0) return [];
      return [
        {
          at: ['solenoids', deck.solenoids!.indexOf(feeding[index]!), 'whenUnplugged'],
          values: { id, first: feeding[0]!.id, second: feeding[index]!.id },
        },
      ];
    }),
};
