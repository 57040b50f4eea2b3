import { MEMBERS } from '../../core/gears/train.ts';
import type { Rule } from './rule.ts';

/** Sun, ring and carrier of a set turn on three different shafts. */
export const gearsetMembers: Rule = {
  id: 'gearset-members',
  severity: 'error',
  check: (deck) =>
    deck.train.gearsets.flatMap((set, index) => {
      const shafts = MEMBERS.map((member) => set[member].shaft);
      const member = MEMBERS.find((_, place) => shafts.indexOf(shafts[place]!) !== place);
      return member === undefined
        ? []
        : [{ at: ['train', 'gearsets', index, member, 'shaft'], values: { shaft: set[member].shaft } }];
    }),
};
