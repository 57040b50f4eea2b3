/** Every amount of a deck that has a partner it must be larger or smaller than, and how amounts are written. */
import type { Deck } from '../../core/unit/deck.ts';
import { type Amount, type Band, exactIn } from '../../core/unit/record.ts';
import { makeQuantity } from '../../core/units/quantity.ts';
import type { UnitSymbol } from '../../core/units/units.ts';
import type { Path } from '../finding.ts';

export const written = (amount: Amount<UnitSymbol>): string => makeQuantity(amount);

export type AnyAmount = Amount<UnitSymbol>;

export interface Pair {
  readonly at: Path;
  readonly less: AnyAmount;
  readonly more: AnyAmount;
}

/** Whether the first is smaller than the second, whatever units they were entered in. */
export const isLess = (less: AnyAmount, more: AnyAmount): boolean =>
  exactIn(less, more.unit).lt(exactIn(more, more.unit));

/** Limits and bands. */
export function bandsOf(deck: Deck): Pair[] {
  const pair = (at: Path, band: Band<AnyAmount> | undefined): Pair[] =>
    band ? [{ at, less: band.low, more: band.high }] : [];
  const { windings = [], pickups = [], thermistors = [] } = deck.electrical ?? {};
  return [
    ...(deck.fits ?? []).flatMap((fit, index) => pair(['fits', index, 'limits'], fit.limits)),
    ...windings.flatMap(({ at20 }, index) => pair(['electrical', 'windings', index, 'at20'], at20)),
    ...pickups.flatMap(({ at20 }, index) => pair(['electrical', 'pickups', index, 'at20'], at20)),
    ...thermistors.flatMap(({ points }, index) =>
      points.flatMap(({ ohms }, point) =>
        pair(['electrical', 'thermistors', index, 'points', point, 'ohms'], ohms),
      ),
    ),
    ...(deck.fluids ?? []).flatMap(({ levelAt }, index) => pair(['fluids', index, 'levelAt'], levelAt)),
  ];
}

/** Inner and outer diameters of one thing. */
export function widthsOf(deck: Deck): Pair[] {
  return [
    ...(deck.seats ?? []).flatMap(({ size }, index) =>
      size ? [{ at: ['seats', index, 'size', 'inner'], less: size.inner, more: size.outer }] : [],
    ),
    ...deck.train.elements.flatMap(({ capacity }, index) => {
      if (!capacity) return [];
      const at = ['train', 'elements', index, 'capacity'];
      const { piston, lining } = capacity;
      return [
        ...(piston.inner ? [{ at: [...at, 'piston', 'inner'], less: piston.inner, more: piston.outer }] : []),
        { at: [...at, 'lining', 'inner'], less: lining.inner, more: lining.outer },
      ];
    }),
  ];
}
