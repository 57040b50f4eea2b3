import type { Rule } from './rule.ts';

/** A clearance is of a stack, a chosen plate is in one, and a fit chooses a plate or a seat. */
export const fitPlace: Rule = {
  id: 'fit-place',
  severity: 'error',
  check: (deck) =>
    (deck.fits ?? []).flatMap(({ kind, stack, item, seat }, index) => {
      const at = ['fits', index];
      if (item !== undefined && stack === undefined) return [{ at: [...at, 'item'], case: 'item' }];
      if (item !== undefined && seat !== undefined) return [{ at: [...at, 'seat'], case: 'two' }];
      return kind === 'clutch-clearance' && stack === undefined ? [{ at, case: 'stack' }] : [];
    }),
};
