import { frictionOf } from '../../core/hydraulics/feeds.ts';
import type { Rule } from './rule.ts';

/** Once solenoids are recorded, each brake and clutch has something that feeds it. */
export const feedsRecorded: Rule = {
  id: 'feeds-recorded',
  severity: 'warning',
  check(deck) {
    if (!deck.solenoids?.length) return [];
    const fed = new Set([
      ...deck.solenoids.flatMap((solenoid) => solenoid.feeds),
      ...(deck.lever?.positions ?? []).flatMap((position) => position.feeds ?? []),
    ]);
    const friction = frictionOf(deck);
    return deck.train.elements.flatMap(({ id }, index) =>
      friction.includes(id) && !fed.has(id) ? [{ at: ['train', 'elements', index], values: { id } }] : [],
    );
  },
};
