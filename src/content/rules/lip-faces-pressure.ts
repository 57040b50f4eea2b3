import type { Rule } from './rule.ts';

/** The lip of a seal looks to where the pressure is. */
export const lipFacesPressure: Rule = {
  id: 'lip-faces-pressure',
  severity: 'warning',
  check: (deck) =>
    (deck.seats ?? []).flatMap(({ kind, lip, pressure }, index) =>
      kind === 'lip-seal' && lip && pressure && lip !== pressure
        ? [{ at: ['seats', index, 'lip'], values: { lip, pressure } }]
        : [],
    ),
};
