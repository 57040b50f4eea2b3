/** What the functions of this folder refuse, and the checks they share. */
import type { Rational } from '../rational.ts';

/** The figures they are given. */
export const FIGURES = [
  'pressure',
  'area',
  'force',
  'spring',
  'speed',
  'density',
  'radius',
  'diameter',
  'friction',
  'faces',
  'torque',
  'wrap',
] as const;
export type Figure = (typeof FIGURES)[number];

export type CapacityError =
  | { readonly code: 'not-positive' | 'negative' | 'not-whole'; readonly of: Figure }
  /** The inner radius or diameter is not smaller than the outer. */
  | { readonly code: 'inside-out' };

/** The first of these that is not above zero. */
export function notPositive(values: Partial<Record<Figure, Rational>>): CapacityError | null {
  const found = (Object.keys(values) as Figure[]).find((figure) => values[figure]!.lte(0n));
  return found ? { code: 'not-positive', of: found } : null;
}

/** The first of these that is below zero. */
export function negative(values: Partial<Record<Figure, Rational>>): CapacityError | null {
  const found = (Object.keys(values) as Figure[]).find((figure) => values[figure]!.lt(0n));
  return found ? { code: 'negative', of: found } : null;
}
