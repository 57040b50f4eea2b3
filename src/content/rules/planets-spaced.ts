import { plainSets } from './gear-sizes.ts';
import type { Rule } from './rule.ts';

/** Planets at even angles go together only when sun + ring teeth divide by their number. */
export const planetsSpaced: Rule = {
  id: 'planets-spaced',
  severity: 'warning',
  check: (deck) =>
    plainSets(deck).flatMap(({ set, at }) => {
      const sum = set.sun.teeth + set.ring.teeth;
      return set.planets === undefined || sum % set.planets === 0
        ? []
        : [{ at: [...at, 'planets'], values: { planets: set.planets, sum } }];
    }),
};
