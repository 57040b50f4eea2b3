import type { Rule } from './rule.ts';

/** Steps are listed in an order that works. */
export const sequenceOrder: Rule = {
  id: 'sequence-order',
  severity: 'warning',
  check: (deck) =>
    (deck.sequences ?? []).flatMap((sequence, s) => {
      const place = new Map(sequence.steps.map((step, index) => [step.id, index]));
      return sequence.steps.flatMap((step, index) =>
        (step.after ?? []).flatMap(({ step: before }, entry) =>
          (place.get(before) ?? -1) > index
            ? [
                {
                  at: ['sequences', s, 'steps', index, 'after', entry, 'step'],
                  values: { step: step.id, before },
                },
              ]
            : [],
        ),
      );
    }),
};
