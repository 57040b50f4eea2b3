import type { Rule } from './rule.ts';
import { everyStep } from './steps.ts';

/** A step with a hazard has a caution about that hazard attached to it. */
export const hazardsCautioned: Rule = {
  id: 'hazards-cautioned',
  severity: 'warning',
  check: (deck) =>
    everyStep(deck).flatMap(({ at, ref, step }) =>
      (step.hazards ?? []).flatMap((hazard, index) => {
        const cautioned = deck.cautions?.some(
          (caution) => caution.hazard === hazard && caution.attachedTo.includes(ref),
        );
        return cautioned ? [] : [{ at: [...at, 'hazards', index], values: { hazard, ref } }];
      }),
    ),
};
