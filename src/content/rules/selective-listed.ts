import { exactIn } from '../../core/unit/record.ts';
import { written } from './amounts.ts';
import type { Rule } from './rule.ts';

/** The plate or seat that a fit chooses is recorded with one of the thicknesses on the list. */
export const selectiveListed: Rule = {
  id: 'selective-listed',
  severity: 'warning',
  check: (deck) =>
    (deck.fits ?? []).flatMap(({ stack, item, seat, parts }, index) => {
      const plates = deck.stacks?.find(({ id }) => id === stack)?.items;
      const plate = plates?.find(({ id }) => id === item);
      const thickness = plate?.thickness ?? deck.seats?.find(({ id }) => id === seat)?.size?.thickness;
      if (!thickness || parts.length === 0) return [];
      const listed = parts.some((part) => exactIn(part.thickness, 'mm').equals(exactIn(thickness, 'mm')));
      return listed
        ? []
        : [
            {
              at: ['fits', index, 'parts'],
              values: { thickness: written(thickness), parts: parts.map((part) => written(part.thickness)) },
            },
          ];
    }),
};
