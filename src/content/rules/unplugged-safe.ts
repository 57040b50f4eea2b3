import { unpluggedAt } from '../../core/hydraulics/pressurised.ts';
import { makeDecimal } from '../../core/rational.ts';
import type { Deck } from '../../core/unit/deck.ts';
import type { Spot } from '../finding.ts';
import { rangesOf, settleRow, solveRow } from './rows.ts';
import type { Rule } from './rule.ts';

/** 1 or -1 for the ways the output turns in these rows; rows that do not drive give nothing. */
function waysOf(deck: Deck, rows: readonly string[]): Set<number> {
  const ratios = rangesOf(deck)
    .filter(({ row }) => rows.includes(row.id))
    .map(({ row }) => solveRow(deck.train, row.applied)?.ratio);
  return new Set(ratios.flatMap((ratio) => (ratio ? [ratio.compare(0n)] : [])));
}

/**
 * With the connector off a unit does not tie up, and it does not drive where its position would not: a unit
 * built that way would be a hazard, so the deck is the likelier one to be wrong.
 */
export const unpluggedSafe: Rule = {
  id: 'unplugged-safe',
  severity: 'warning',
  check: (deck) => {
    if (!deck.solenoids?.length) return [];
    return (deck.lever?.positions ?? []).flatMap((position, index): Spot[] => {
      const elements = unpluggedAt(deck, position.id);
      const solution = elements && settleRow(deck.train, elements)?.solution;
      if (!solution) return [];
      const at = ['lever', 'positions', index];
      const values = { elements, count: elements.length };
      if (solution.state === 'tied-up') return [{ at, case: 'tied-up', values }];
      if (!solution.ratio || waysOf(deck, position.rows).has(solution.ratio.compare(0n))) return [];
      const way = waysOf(deck, position.rows).size === 0 ? 'drives' : 'turned';
      return [{ at, case: way, values: { ...values, ratio: makeDecimal(solution.ratio, 3) } }];
    });
  },
};
