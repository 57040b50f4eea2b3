/**
 * Quantities as they were entered: the figure stays the text that was written, in the unit it was written in,
 * so nothing is lost by storing it. `parseQuantity` and `makeQuantity` are inverse to each other.
 */
import { parseRational, type Rational } from '../rational.ts';
import { fail, pass, type Result } from '../result.ts';
import { isUnitSymbol, type UnitSymbol } from './units.ts';

export interface Quantity {
  /** Decimal or fraction text: "0.15", "-40", "1/16". */
  readonly value: string;
  readonly unit: UnitSymbol;
}

export type QuantityError =
  | { readonly code: 'number-unreadable'; readonly text: string }
  | { readonly code: 'unit-unknown'; readonly text: string }
  /** A spelling that stands for several units, as "qt" and "pounds" do. */
  | { readonly code: 'unit-ambiguous'; readonly text: string; readonly among: readonly UnitSymbol[] };

/** Other ways people write the units, in lower case. Left out where case or custom makes them unsure. */
// biome-ignore format: a unit a line
const SPELLINGS: Readonly<Partial<Record<UnitSymbol, readonly string[]>>> = {
  mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  in: ['inch', 'inches', 'in.', '"', '″'],
  ft: ['foot', 'feet', 'ft.'],
  'mm²': ['mm2', 'mm^2'],
  'cm²': ['cm2', 'cm^2'],
  'in²': ['in2', 'in^2', 'sq in'],
  L: ['l', 'litre', 'litres', 'liter', 'liters'],
  mL: ['ml'],
  'US qt': ['us qt', 'us quart', 'us quarts'],
  'imp qt': ['imp qt', 'imperial quart', 'imperial quarts'],
  'N·m': ['nm', 'n·m', 'n.m', 'n-m', 'n m', 'n*m', 'n⋅m'],
  'kgf·m': ['kgf·m', 'kgf.m', 'kgf-m', 'kgf m', 'kgf⋅m', 'kgm', 'kg-m'],
  'lbf·ft': [
    'lbf·ft', 'lbf⋅ft', 'lbf-ft', 'lbf ft', 'lb·ft', 'lb-ft', 'lb ft', 'lbft', 'ft·lbf', 'ft-lbf', 'ft·lb',
    'ft-lb', 'ft-lbs', 'ft lb', 'ft lbs', 'ftlb',
  ],
  'lbf·in': [
    'lbf·in', 'lbf⋅in', 'lbf-in', 'lbf in', 'lb·in', 'lb-in', 'lb in', 'lbin', 'in·lbf', 'in-lbf', 'in·lb',
    'in-lb', 'in-lbs', 'in lb', 'in lbs', 'inlb',
  ],
  kPa: ['kpa'],
  bar: ['bar'],
  psi: ['psi', 'lbf/in²', 'lbf/in2', 'lb/in2'],
  'kgf/cm²': ['kgf/cm2', 'kg/cm²', 'kg/cm2'],
  '°C': ['°c', 'c', 'ºc', 'deg c', 'degc', '℃'],
  '°F': ['°f', 'f', 'ºf', 'deg f', 'degf', '℉'],
  rpm: ['rpm', 'r/min', '1/min'],
  Hz: ['hz'],
  kHz: ['khz'],
  Ω: ['ohm', 'ohms', '\u03c9'],
  kΩ: ['kohm', 'kohms', 'k\u03c9'],
  V: ['v', 'volt', 'volts'],
  A: ['a', 'amp', 'amps', 'ampere', 'amperes'],
  W: ['w', 'watt', 'watts'],
  N: ['n', 'newton', 'newtons'],
};

const AMBIGUOUS: Readonly<Record<string, readonly UnitSymbol[]>> = {
  qt: ['US qt', 'imp qt'],
  quart: ['US qt', 'imp qt'],
  quarts: ['US qt', 'imp qt'],
  lbs: ['lb', 'lbf'],
  pound: ['lb', 'lbf'],
  pounds: ['lb', 'lbf'],
};

const BY_SPELLING = new Map(
  Object.entries(SPELLINGS).flatMap(([unit, spellings]) =>
    spellings.map((spelling) => [spelling, unit as UnitSymbol] as const),
  ),
);

/** parseUnit('ft-lb') is 'lbf·ft'; the unit's own symbol always reads as itself. */
export function parseUnit(text: string): Result<UnitSymbol, QuantityError> {
  const trimmed = text.trim().normalize('NFC');
  if (isUnitSymbol(trimmed)) return pass(trimmed);
  const spelling = trimmed.toLowerCase().replace(/\s+/g, ' ');
  const unit = BY_SPELLING.get(spelling);
  if (unit) return pass(unit);
  const among = AMBIGUOUS[spelling];
  return fail(
    among ? { code: 'unit-ambiguous', text: trimmed, among } : { code: 'unit-unknown', text: trimmed },
  );
}

/** parseQuantity('12 ft-lb') is { value: '12', unit: 'lbf·ft' }. The figure is kept as written. */
export function parseQuantity(text: string): Result<Quantity, QuantityError> {
  const [, value = '', rest = ''] = /^\s*([+-]?[\d.,/]*)\s*(.*)$/su.exec(text)!;
  if (parseRational(value) === null) return fail({ code: 'number-unreadable', text: value || text.trim() });
  const unit = parseUnit(rest);
  return unit.ok ? pass({ value, unit: unit.value }) : unit;
}

/** makeQuantity({ value: '0.15', unit: 'mm' }) is "0.15 mm". */
export const makeQuantity = ({ value, unit }: Quantity): string => `${value} ${unit}`;

/** The figure as an exact number, in the quantity's own unit. */
export function amountOf({ value }: Quantity): Result<Rational, QuantityError> {
  const amount = parseRational(value);
  return amount ? pass(amount) : fail({ code: 'number-unreadable', text: value });
}
