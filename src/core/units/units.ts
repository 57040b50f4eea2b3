/**
 * Units of measurement a shop writes, with exact factors. Each kind of quantity has one base unit, and a value
 * is taken there by (value - zero) × scale. Sources: docs/sources.md [UNIT-1] for inch, foot, pound, standard
 * gravity and Fahrenheit, [UNIT-2] for the quarts; the rest are products of those. Not to be confused with a
 * unit, which in this project is one transmission.
 */
import { ONE, parseRational, type Rational, ZERO } from '../rational.ts';

/** Quantities of different kinds never convert into each other. */
export const KINDS = [
  'length',
  'area',
  'volume',
  'mass',
  'force',
  'torque',
  'pressure',
  'temperature',
  'rotation',
  'frequency',
  'resistance',
  'voltage',
  'current',
  'power',
] as const;
export type Kind = (typeof KINDS)[number];

export interface UnitOfMeasure {
  readonly kind: Kind;
  /** Base units in one of this unit. */
  readonly scale: Rational;
  /** Where the base unit reads zero, in this unit; only temperatures differ from 0. */
  readonly zero: Rational;
}

const exact = (text: string): Rational => parseRational(text)!;
const of = (kind: Kind, scale: Rational | string, zero = ZERO): UnitOfMeasure => ({
  kind,
  scale: typeof scale === 'string' ? exact(scale) : scale,
  zero,
});

// [UNIT-1]: exact by agreement.
const MM_PER_INCH = exact('25.4');
const KG_PER_POUND = exact('0.45359237');
const GRAVITY = exact('9.80665');
const NEWTONS_PER_LBF = KG_PER_POUND.mul(GRAVITY);
// [UNIT-2]: a US gallon is 231 cubic inches, an imperial gallon 4.54609 L; a quart is a quarter of either.
const LITRES_PER_US_QUART = exact('231').mul(MM_PER_INCH).mul(MM_PER_INCH).mul(MM_PER_INCH).div(4_000_000n);
const LITRES_PER_IMPERIAL_QUART = exact('4.54609').div(4n);

/**
 * Base units: mm, mm², L, kg, N, N·m, kPa, °C, rpm, Hz, Ω, V, A, W. Turns a minute and pulses a second are
 * kept apart on purpose: between a shaft's speed and a sensor's frequency stand the teeth.
 */
export const UNITS = {
  mm: of('length', ONE),
  cm: of('length', '10'),
  m: of('length', '1000'),
  in: of('length', MM_PER_INCH),
  ft: of('length', MM_PER_INCH.mul(12n)),
  'mm²': of('area', ONE),
  'cm²': of('area', '100'),
  'in²': of('area', MM_PER_INCH.mul(MM_PER_INCH)),
  L: of('volume', ONE),
  mL: of('volume', '1/1000'),
  'US qt': of('volume', LITRES_PER_US_QUART),
  'imp qt': of('volume', LITRES_PER_IMPERIAL_QUART),
  kg: of('mass', ONE),
  g: of('mass', '1/1000'),
  lb: of('mass', KG_PER_POUND),
  N: of('force', ONE),
  kN: of('force', '1000'),
  kgf: of('force', GRAVITY),
  lbf: of('force', NEWTONS_PER_LBF),
  N·m: of('torque', ONE),
  kgf·m: of('torque', GRAVITY),
  lbf·ft: of('torque', NEWTONS_PER_LBF.mul(MM_PER_INCH).mul(12n).div(1000n)),
  lbf·in: of('torque', NEWTONS_PER_LBF.mul(MM_PER_INCH).div(1000n)),
  kPa: of('pressure', ONE),
  MPa: of('pressure', '1000'),
  bar: of('pressure', '100'),
  psi: of('pressure', NEWTONS_PER_LBF.div(MM_PER_INCH).div(MM_PER_INCH).mul(1000n)),
  'kgf/cm²': of('pressure', GRAVITY.mul(10n)),
  '°C': of('temperature', ONE),
  '°F': of('temperature', '5/9', exact('32')),
  rpm: of('rotation', ONE),
  Hz: of('frequency', ONE),
  kHz: of('frequency', '1000'),
  Ω: of('resistance', ONE),
  kΩ: of('resistance', '1000'),
  V: of('voltage', ONE),
  mV: of('voltage', '1/1000'),
  A: of('current', ONE),
  mA: of('current', '1/1000'),
  W: of('power', ONE),
} as const satisfies Readonly<Record<string, UnitOfMeasure>>;

export type UnitSymbol = keyof typeof UNITS;

export const isUnitSymbol = (text: string): text is UnitSymbol => Object.hasOwn(UNITS, text);

/** kindOf('psi') is 'pressure'. */
export const kindOf = (unit: UnitSymbol): Kind => UNITS[unit].kind;

/** Whether values convert between the two: compatible('lbf·in', 'N·m') is true, ('rpm', 'Hz') false. */
export const compatible = (one: UnitSymbol, other: UnitSymbol): boolean => kindOf(one) === kindOf(other);

/** Units of one kind, in the order of the table. */
export function unitsOf(kind: Kind): UnitSymbol[] {
  return (Object.keys(UNITS) as UnitSymbol[]).filter((unit) => kindOf(unit) === kind);
}
