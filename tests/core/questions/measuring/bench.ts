/** Units whose bench has just the fits of a table. */
import type { DeckFit } from '../../../../src/core/unit/fits.ts';
import { makeUnit, type Unit } from '../../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../../units.ts';

export const mm = (value: string) => ({ value, unit: 'mm' as const });
export const inch = (value: string) => ({ value, unit: 'in' as const });

type Of = typeof mm | typeof inch;

/** Parts named by their thickness. */
export const listed = (of: Of, ...thicknesses: string[]) =>
  thicknesses.map((thickness) => ({ id: thickness, thickness: of(thickness) }));

/** A fit read with the part in that is fitted, closing; change what the case asks for. */
export const fitOf = (of: Of, low: string, high: string, more: Partial<DeckFit> = {}): DeckFit => ({
  id: 'f',
  kind: 'end-play',
  where: 'at the shaft',
  method: 'part-fitted',
  instrument: 'dial',
  limits: { low: of(low), high: of(high) },
  effect: 'closes',
  parts: [],
  ...more,
});

const train = PUBLISHED.find(({ id }) => id === 'four-range-two-crossed-sets')!;

export const unitWithFits = (...fits: DeckFit[]): Unit => makeUnit({ ...deckOf(train), fits });
