import { isLess, widthsOf, written } from './amounts.ts';
import type { Rule } from './rule.ts';

/** An inner diameter is smaller than the outer one. */
export const innerSmaller: Rule = {
  id: 'inner-smaller',
  severity: 'error',
  check: (deck) =>
    widthsOf(deck).flatMap(({ at, less, more }) =>
      isLess(less, more) ? [] : [{ at, values: { inner: written(less), outer: written(more) } }],
    ),
};
