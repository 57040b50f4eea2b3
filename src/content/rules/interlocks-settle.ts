import type { DeckInterlock } from '../../core/unit/deck.ts';
import type { Rule } from './rule.ts';

/** The elements of a circle that this interlock is part of, by way of what the others block; none mostly. */
function circleFrom(interlocks: readonly DeckInterlock[], start: DeckInterlock): readonly string[] {
  const reach = (element: string, path: readonly string[]): readonly string[] => {
    if (start.whenApplied.includes(element)) return path;
    for (const { whenApplied, blocks } of interlocks) {
      if (!whenApplied.includes(element)) continue;
      for (const next of blocks) {
        const found = path.includes(next) ? [] : reach(next, [...path, next]);
        if (found.length > 0) return found;
      }
    }
    return [];
  };
  return start.blocks.map((element) => reach(element, [element])).find((path) => path.length > 0) ?? [];
}

/** Whether an interlock acts can always be told: none waits for itself. */
export const interlocksSettle: Rule = {
  id: 'interlocks-settle',
  severity: 'error',
  check: ({ interlocks = [] }) =>
    interlocks.flatMap((interlock, index) => {
      const circle = circleFrom(interlocks, interlock);
      return circle.length > 0
        ? [
            {
              at: ['interlocks', index, 'blocks'],
              values: { circle: [circle.at(-1)!, ...circle].join(' → ') },
            },
          ]
        : [];
    }),
};
