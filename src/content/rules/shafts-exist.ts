import { CASE } from '../../core/gears/train.ts';
import { missing, type Reference } from './references.ts';
import { joinedShafts } from './rows.ts';
import type { Rule } from './rule.ts';

/** Input, output, sensors and names of shafts speak of shafts that a gearset or an element sits on. */
export const shaftsExist: Rule = {
  id: 'shafts-exist',
  severity: 'error',
  check(deck) {
    const references: Reference[] = [
      { at: ['train', 'input'], id: deck.train.input },
      { at: ['train', 'output'], id: deck.train.output },
      ...(deck.train.shafts ?? []).map(({ id }, index) => ({ at: ['train', 'shafts', index, 'id'], id })),
      ...(deck.sensors ?? []).map(({ reads }, index) => ({ at: ['sensors', index, 'reads'], id: reads })),
    ];
    return missing(references, joinedShafts(deck.train)).map((spot) => ({
      ...spot,
      case: spot.values?.id === CASE ? 'case' : 'unknown',
    }));
  },
};
