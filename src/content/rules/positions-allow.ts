import { feedsAt, frictionOf, isOpen } from '../../core/hydraulics/feeds.ts';
import type { Spot } from '../finding.ts';
import { rowsOf } from './rows.ts';
import type { Rule } from './rule.ts';

/** The manual valve lets oil to every element of the rows a position commands, and forces no other one on. */
export const positionsAllow: Rule = {
  id: 'positions-allow',
  severity: 'error',
  check(deck) {
    if (deck.lever?.valve !== 'manual') return [];
    const friction = frictionOf(deck);
    const rows = rowsOf(deck).map(({ row }) => row);
    return deck.lever.positions.flatMap((position, index) => {
      const feeds = position.opens && feedsAt(deck, position.id);
      if (!feeds) return [];
      return position.rows.flatMap((id, entry): Spot[] => {
        const row = rows.find((candidate) => candidate.id === id);
        if (!row) return [];
        const at = ['lever', 'positions', index, 'rows', entry];
        const closed = row.applied.filter(
          (element) =>
            friction.includes(element) && !isOpen(feeds, element) && !feeds.byHand.includes(element),
        );
        const forced = feeds.byHand.filter(
          (element) => friction.includes(element) && !row.applied.includes(element),
        );
        return [
          ...(closed.length > 0 ? [{ at, case: 'closed', values: { row: id, elements: closed } }] : []),
          ...(forced.length > 0 ? [{ at, case: 'forced', values: { row: id, elements: forced } }] : []),
        ];
      });
    });
  },
};
