import { isLess, written } from './amounts.ts';
import type { Rule } from './rule.ts';

/** Selective parts are listed thinnest first, no two of one thickness. */
export const selectiveSorted: Rule = {
  id: 'selective-sorted',
  severity: 'error',
  check: (deck) =>
    (deck.fits ?? []).flatMap(({ parts }, f) =>
      parts.slice(1).flatMap((part, index) => {
        const before = parts[index]!;
        return isLess(before.thickness, part.thickness)
          ? []
          : [
              {
                at: ['fits', f, 'parts', index + 1, 'thickness'],
                values: { thickness: written(part.thickness), before: written(before.thickness) },
              },
            ];
      }),
    ),
};
