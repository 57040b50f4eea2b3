import { CASE } from '../../core/gears/train.ts';
import { OTHER_FEEDS } from '../../core/unit/deck.ts';
import type { Rule } from './rule.ts';

const RESERVED: readonly string[] = [CASE, ...OTHER_FEEDS];

/** No element is called what a solenoid can feed beside elements, and only the housing is the case. */
export const namesReserved: Rule = {
  id: 'names-reserved',
  severity: 'error',
  check: (deck) =>
    deck.train.elements.flatMap(({ id }, index) =>
      RESERVED.includes(id)
        ? [{ at: ['train', 'elements', index, 'id'], values: { id, reserved: RESERVED } }]
        : [],
    ),
};
