import type { Rule } from './rule.ts';

/** A step that is done both ways says what is done when assembling. */
export const assemblyWorded: Rule = {
  id: 'assembly-worded',
  severity: 'warning',
  check: (deck) =>
    (deck.sequences ?? []).flatMap(({ steps, assembly }, s) => {
      const leftOut = new Set(assembly?.leftOut?.map(({ step }) => step));
      return steps.flatMap((step, index) => {
        const at = ['sequences', s, 'steps', index];
        if (!assembly || leftOut.has(step.id))
          return step.turned === undefined
            ? []
            : [{ at: [...at, 'turned'], case: 'extra', values: { id: step.id } }];
        return step.turned === undefined ? [{ at, case: 'missing', values: { id: step.id } }] : [];
      });
    }),
};
