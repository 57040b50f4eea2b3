import type { Spot } from '../finding.ts';
import type { Rule } from './rule.ts';

/** Each pin has a place of its own on the face. */
export const pinsPlaced: Rule = {
  id: 'pins-placed',
  severity: 'error',
  check: (deck) =>
    (deck.electrical?.connectors ?? []).flatMap(({ pins, rows, columns }, c) =>
      pins.flatMap(({ row, column }, index): Spot[] => {
        const at = ['electrical', 'connectors', c, 'pins', index];
        if (row > rows || column > columns)
          return [{ at, case: 'outside', values: { row, column, rows, columns } }];
        const first = pins.findIndex((pin) => pin.row === row && pin.column === column);
        return first < index ? [{ at, case: 'taken', values: { row, column, other: pins[first]!.id } }] : [];
      }),
    ),
};
