import { MEMBERS } from '../../core/gears/train.ts';
import { joinedShafts } from './rows.ts';
import type { Rule } from './rule.ts';

/** A shaft with a single gear or element on it carries nothing: usually its name is spelled in two ways. */
export const shaftsJoined: Rule = {
  id: 'shafts-joined',
  severity: 'warning',
  check(deck) {
    const { input, output, gearsets, elements } = deck.train;
    const uses = [
      { shaft: input, at: ['train', 'input'] },
      { shaft: output, at: ['train', 'output'] },
      ...gearsets.flatMap((set, index) =>
        MEMBERS.map((member) => ({
          shaft: set[member].shaft,
          at: ['train', 'gearsets', index, member, 'shaft'],
        })),
      ),
      ...elements.flatMap(({ between }, index) =>
        between.map((shaft, end) => ({ shaft, at: ['train', 'elements', index, 'between', end] })),
      ),
    ];
    return joinedShafts(deck.train).flatMap((shaft) => {
      const [only, ...more] = uses.filter((use) => use.shaft === shaft);
      return only && more.length === 0 ? [{ at: only.at, values: { shaft } }] : [];
    });
  },
};
