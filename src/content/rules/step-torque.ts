import type { Rule } from './rule.ts';
import { everyStep } from './steps.ts';

/** A step has a torque of its own or names one of the deck's, and not both. */
export const stepTorque: Rule = {
  id: 'step-torque',
  severity: 'error',
  check: (deck) =>
    everyStep(deck).flatMap(({ at, step }) =>
      step.torque && step.tightens !== undefined
        ? [{ at: [...at, 'tightens'], values: { tightens: step.tightens } }]
        : [],
    ),
};
