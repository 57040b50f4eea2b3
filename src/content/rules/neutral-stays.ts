import { makeDecimal } from '../../core/rational.ts';
import { neutralsOf, settleRow } from './rows.ts';
import type { Rule } from './rule.ts';

/** Neutral rows neither drive nor tie up, one-ways left to themselves. */
export const neutralStays: Rule = {
  id: 'neutral-stays',
  severity: 'error',
  check: (deck) =>
    neutralsOf(deck).flatMap(({ at, row }) => {
      const settled = settleRow(deck.train, row.applied);
      const state = settled?.solution.state;
      if (state !== 'drives' && state !== 'tied-up') return [];
      const ratio = settled!.solution.ratio;
      return [
        {
          at: [...at, 'applied'],
          case: state,
          values: {
            elements: row.applied,
            count: row.applied.length,
            ratio: ratio ? makeDecimal(ratio, 3) : '',
          },
        },
      ];
    }),
};
