import { placeIn } from '../../core/measure/limits.ts';
import { makeDecimal } from '../../core/rational.ts';
import { limitsIn } from '../../core/unit/record.ts';
import { clearanceMm } from '../../core/unit/stacks.ts';
import { isLess, written } from './amounts.ts';
import type { Rule } from './rule.ts';

/** The recorded plates leave a clearance within the limits of the pack's fit. */
export const clearanceInLimits: Rule = {
  id: 'clearance-in-limits',
  severity: 'warning',
  check: (deck) =>
    (deck.fits ?? []).flatMap((fit, index) => {
      const { low, high } = fit.limits;
      const stack = deck.stacks?.find(({ id }) => id === fit.stack);
      const clearance = stack && clearanceMm(stack);
      if (fit.kind !== 'clutch-clearance' || !clearance?.ok || !isLess(low, high)) return [];
      return placeIn(limitsIn(fit.limits, 'mm'), clearance.value) === 'in'
        ? []
        : [
            {
              at: ['fits', index, 'limits'],
              values: {
                stack: stack!.id,
                clearance: makeDecimal(clearance.value, 2),
                low: written(low),
                high: written(high),
              },
            },
          ];
    }),
};
