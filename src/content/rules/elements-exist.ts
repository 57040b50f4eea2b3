import { elementReferences, missing } from './references.ts';
import type { Rule } from './rule.ts';

/** Chart, solenoids and lever name only elements of the train. */
export const elementsExist: Rule = {
  id: 'elements-exist',
  severity: 'error',
  check: (deck) =>
    missing(
      elementReferences(deck),
      deck.train.elements.map((element) => element.id),
    ),
};
