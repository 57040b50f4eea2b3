/**
 * A second way to convert, by plain floating point and figures as tables print them, so that an answer is
 * checked by other numbers than those that made it. Good to about six figures.
 */
import type { UnitSymbol } from '../../../units/units.ts';

/** Of mm, L, N·m and kPa, as printed to seven figures: docs/sources.md [UNIT-1], [UNIT-2]. */
const IN_BASE: Partial<Record<UnitSymbol, number>> = {
  mm: 1,
  in: 25.4,
  L: 1,
  mL: 0.001,
  'US qt': 0.9463529,
  'imp qt': 1.1365225,
  N·m: 1,
  lbf·ft: 1.3558179,
  lbf·in: 0.1129848,
  kgf·m: 9.80665,
  kPa: 1,
  MPa: 1000,
  bar: 100,
  psi: 6.894757,
  'kgf/cm²': 98.0665,
};

/** The figure in the other unit; of units it does not know, not a number. */
export function floatConvert(value: number, from: UnitSymbol, to: UnitSymbol): number {
  if (from === '°C' && to === '°F') return value * 1.8 + 32;
  if (from === '°F' && to === '°C') return (value - 32) / 1.8;
  return (value * (IN_BASE[from] ?? Number.NaN)) / (IN_BASE[to] ?? Number.NaN);
}
