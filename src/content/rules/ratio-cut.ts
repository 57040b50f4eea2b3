import { decimalsOf, makeDecimal } from '../../core/rational.ts';
import { statedRatios } from './ratio-agrees.ts';
import type { Rule } from './rule.ts';

/** A stated ratio that agrees only when digits are cut off: books print such, but it may be a typing slip. */
export const ratioCut: Rule = {
  id: 'ratio-cut',
  severity: 'warning',
  check: (deck) =>
    statedRatios(deck)
      .filter(({ stated, rounded, cut }) => stated !== rounded && stated === cut)
      .map(({ at, stated, rounded, ratio }) => ({
        at,
        values: { stated, rounded, exact: makeDecimal(ratio, decimalsOf(stated) + 3) },
      })),
};
