import { type DeckFit, unitOf } from '../../core/unit/fits.ts';
import type { Length } from '../../core/unit/record.ts';
import type { Path } from '../finding.ts';
import { written } from './amounts.ts';
import type { Rule } from './rule.ts';

function lengthsOf({ limits, aim, spread, bar, gasket, parts, readings }: DeckFit): [Path, Length][] {
  const found: [Path, Length | undefined][] = [
    [['limits', 'high'], limits.high],
    [['aim'], aim],
    [['spread'], spread],
    [['bar'], bar],
    [['gasket'], gasket],
    ...parts.map(({ thickness }, index): [Path, Length] => [['parts', index, 'thickness'], thickness]),
    ...(readings ?? []).flatMap(({ play, seat, standOff, result }, index): [Path, Length | undefined][] => [
      [['readings', index, 'play'], play],
      [['readings', index, 'seat', 'reading'], seat?.reading],
      [['readings', index, 'standOff', 'reading'], standOff?.reading],
      [['readings', index, 'result'], result],
    ]),
  ];
  return found.filter((entry): entry is [Path, Length] => entry[1] !== undefined);
}

/** A fit is in one unit: a figure printed in two was rounded twice, and is not judged by converting it. */
export const fitOneUnit: Rule = {
  id: 'fit-one-unit',
  severity: 'warning',
  check: (deck) =>
    (deck.fits ?? []).flatMap((fit, index) =>
      lengthsOf(fit)
        .filter(([, length]) => length.unit !== unitOf(fit))
        .map(([at, length]) => ({
          at: ['fits', index, ...at],
          values: { length: written(length), unit: unitOf(fit) },
        })),
    ),
};
