import { plainSets } from './gear-sizes.ts';
import type { Rule } from './rule.ts';

/** In a plain simple set ring = sun + 2 × planet, so the difference is even and above zero. */
export const planetsWhole: Rule = {
  id: 'planets-whole',
  severity: 'warning',
  check: (deck) =>
    plainSets(deck).flatMap(({ set, at }) => {
      const values = {
        sun: set.sun.teeth,
        ring: set.ring.teeth,
        planet: (set.ring.teeth - set.sun.teeth) / 2,
      };
      if (set.ring.teeth <= set.sun.teeth) return [{ at: [...at, 'ring', 'teeth'], case: 'none', values }];
      return Number.isInteger(values.planet) ? [] : [{ at: [...at, 'ring', 'teeth'], case: 'half', values }];
    }),
};
