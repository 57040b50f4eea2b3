import type { Spot } from '../finding.ts';
import type { Rule } from './rule.ts';

/** Each solenoid sits once on the valve body, in a place of its own on the face. */
export const solenoidsPlaced: Rule = {
  id: 'solenoids-placed',
  severity: 'error',
  check({ valveBody }) {
    if (!valveBody) return [];
    const { rows, columns, solenoids } = valveBody;
    return solenoids.flatMap(({ solenoid, row, column }, index): Spot[] => {
      const at = ['valveBody', 'solenoids', index];
      if (row > rows || column > columns)
        return [{ at, case: 'outside', values: { row, column, rows, columns } }];
      const before = solenoids.slice(0, index);
      if (before.some((other) => other.solenoid === solenoid)) return [{ at, case: 'twice', values: {} }];
      const taken = before.find((other) => other.row === row && other.column === column);
      return taken ? [{ at, case: 'taken', values: { row, column, other: taken.solenoid } }] : [];
    });
  },
};
