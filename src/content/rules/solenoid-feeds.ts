import type { Rule } from './rule.ts';

/** A solenoid feeds something. */
export const solenoidFeeds: Rule = {
  id: 'solenoid-feeds',
  severity: 'error',
  check: (deck) =>
    (deck.solenoids ?? []).flatMap(({ feeds }, index) =>
      feeds.length > 0 ? [] : [{ at: ['solenoids', index, 'feeds'] }],
    ),
};
