import { elementsFedBy, feedsAt, isOpen, positionsFor } from '../../core/hydraulics/feeds.ts';
import { rowsOf } from './rows.ts';
import type { Rule } from './rule.ts';

/** A solenoid that feeds several elements is not asked to give pressure and none in the same row. */
export const solenoidDemands: Rule = {
  id: 'solenoid-demands',
  severity: 'error',
  check: (deck) =>
    (deck.solenoids ?? []).flatMap((solenoid, index) => {
      const alone = elementsFedBy(deck, solenoid).filter((element) =>
        deck.solenoids!.every((other) => other === solenoid || !other.feeds.includes(element)),
      );
      return rowsOf(deck).flatMap(({ row }) => {
        const positions = deck.lever?.valve === 'manual' ? positionsFor(deck, row.id) : [null];
        for (const position of positions) {
          const feeds = feedsAt(deck, position?.id ?? null);
          if (!feeds) continue;
          const reached = alone.filter((id) => isOpen(feeds, id) && !feeds.byHand.includes(id));
          const on = reached.filter((id) => row.applied.includes(id));
          const off = reached.filter((id) => !row.applied.includes(id));
          if (on.length > 0 && off.length > 0)
            return [{ at: ['solenoids', index, 'feeds'], values: { row: row.id, on, off } }];
        }
        return [];
      });
    }),
};
