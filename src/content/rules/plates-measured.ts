import { type DeckStack, isInPack } from '../../core/unit/stacks.ts';
import type { Spot } from '../finding.ts';
import type { Rule } from './rule.ts';

const SPRINGY = ['waved', 'dished'];

function findings({ items, room, waves }: DeckStack, s: number): Spot[] {
  const spots = items.flatMap((item, index): Spot[] => {
    const at = ['stacks', s, 'items', index];
    const { kind, thickness, free } = item;
    if (isInPack(item) && !thickness) return [{ at, case: 'thickness', values: { kind } }];
    if (SPRINGY.includes(kind) && !free) return [{ at, case: 'free', values: { kind } }];
    if (!SPRINGY.includes(kind) && kind !== 'separator' && free)
      return [{ at: [...at, 'free'], case: 'flat', values: { kind } }];
    return [];
  });
  const counts = room && !waves && items.some(({ kind }) => SPRINGY.includes(kind));
  return counts ? [...spots, { at: ['stacks', s], case: 'waves' }] : spots;
}

/** Each plate has the heights that a clearance is computed from, and only those. */
export const platesMeasured: Rule = {
  id: 'plates-measured',
  severity: 'error',
  check: (deck) => (deck.stacks ?? []).flatMap(findings),
};
