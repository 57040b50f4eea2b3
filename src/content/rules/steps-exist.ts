import { missing } from './references.ts';
import type { Rule } from './rule.ts';

/** A step comes after steps of its own sequence. */
export const stepsExist: Rule = {
  id: 'steps-exist',
  severity: 'error',
  check: (deck) =>
    (deck.sequences ?? []).flatMap((sequence, s) =>
      missing(
        sequence.steps.flatMap((step, index) =>
          (step.after ?? []).map((before, entry) => ({
            at: ['sequences', s, 'steps', index, 'after', entry, 'step'],
            id: before.step,
          })),
        ),
        sequence.steps.map((step) => step.id),
      ),
    ),
};
