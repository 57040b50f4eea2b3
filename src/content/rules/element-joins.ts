import { CASE } from '../../core/gears/train.ts';
import type { Rule } from './rule.ts';

/** A brake joins a shaft to the case, a clutch two shafts; only a one-way has a free sense. */
export const elementJoins: Rule = {
  id: 'element-joins',
  severity: 'error',
  check: (deck) =>
    deck.train.elements.flatMap(({ kind, between: [first, second], overruns }, index) => {
      const at = ['train', 'elements', index, 'between'];
      const spots = [];
      const atCase = [first, second].filter((shaft) => shaft === CASE).length;
      if (first === second) spots.push({ at, case: 'itself', values: { shaft: first } });
      else if (kind === 'brake' && atCase === 0) spots.push({ at, case: 'brake', values: { first, second } });
      else if (kind === 'clutch' && atCase > 0) spots.push({ at, case: 'clutch', values: { first, second } });
      if (overruns !== undefined && kind !== 'one-way')
        spots.push({
          at: ['train', 'elements', index, 'overruns'],
          case: 'overruns',
          values: { overruns, kind },
        });
      return spots;
    }),
};
