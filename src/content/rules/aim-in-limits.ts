import { placeIn } from '../../core/measure/limits.ts';
import { exactIn, limitsIn } from '../../core/unit/record.ts';
import { written } from './amounts.ts';
import type { Rule } from './rule.ts';

/** The play aimed at is within the limits. */
export const aimInLimits: Rule = {
  id: 'aim-in-limits',
  severity: 'error',
  check: (deck) =>
    (deck.fits ?? []).flatMap(({ aim, limits }, index) =>
      aim && placeIn(limitsIn(limits, aim.unit), exactIn(aim, aim.unit)) !== 'in'
        ? [
            {
              at: ['fits', index, 'aim'],
              values: { aim: written(aim), low: written(limits.low), high: written(limits.high) },
            },
          ]
        : [],
    ),
};
