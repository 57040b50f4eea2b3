import { makeDecimal } from '../../core/rational.ts';
import { oneWaysOf, rangesOf, solveRow } from './rows.ts';
import type { Rule } from './rule.ts';

/**
 * Two ranges of one ratio are usually a slip in a row. A range held by a one-way and the same range held
 * against coasting are meant to be alike.
 */
export const ratiosDistinct: Rule = {
  id: 'ratios-distinct',
  severity: 'warning',
  check(deck) {
    const oneWays = oneWaysOf(deck.train);
    const solved = rangesOf(deck).flatMap(({ at, row }) => {
      const ratio = solveRow(deck.train, row.applied)?.ratio;
      const held = oneWays.filter((id) => row.applied.includes(id)).join(' ');
      return ratio ? [{ at, row, ratio, held, elements: [...new Set(row.applied)].sort().join(' ') }] : [];
    });
    return solved.flatMap((range, index) => {
      const twin = solved
        .slice(0, index)
        .find(
          (other) =>
            other.ratio.equals(range.ratio) && other.held === range.held && other.elements !== range.elements,
        );
      return twin
        ? [
            {
              at: [...range.at, 'applied'],
              values: { other: twin.row.id, ratio: makeDecimal(range.ratio, 3) },
            },
          ]
        : [];
    });
  },
};
