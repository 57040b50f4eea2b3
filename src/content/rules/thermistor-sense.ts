import { checkHeatTable } from '../../core/electrical/heat-sense.ts';
import { exactIn, limitsIn } from '../../core/unit/record.ts';
import { written } from './amounts.ts';
import type { Rule } from './rule.ts';

/** Resistances go one way with heat, band clear of band. */
export const thermistorSense: Rule = {
  id: 'thermistor-sense',
  severity: 'error',
  check: (deck) =>
    (deck.electrical?.thermistors ?? []).flatMap(({ points, sense }, index) => {
      const rows = points.map(({ at, ohms }) => ({ celsius: exactIn(at, '°C'), ...limitsIn(ohms, 'Ω') }));
      const table = checkHeatTable(rows, sense);
      if (table.ok || table.error.code === 'limits-swapped') return [];
      const point = rows.findLastIndex(({ celsius }) => celsius.equals(table.error.celsius));
      return [
        {
          at: ['electrical', 'thermistors', index, 'points', point],
          case: table.error.code,
          values: { sense, at: written(points[point]!.at) },
        },
      ];
    }),
};
