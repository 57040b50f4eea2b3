import { bareGap, windowFor } from '../../core/measure/play.ts';
import { makeDecimal } from '../../core/rational.ts';
import { type DeckFit, type DeckReading, fitWith, readingOf, unitOf } from '../../core/unit/fits.ts';
import type { Path, Spot } from '../finding.ts';
import { isLess } from './amounts.ts';
import type { Rule } from './rule.ts';

function findings(fit: DeckFit, reading: DeckReading, at: Path): Spot[] {
  const read = readingOf(fit, reading);
  if (!read || !isLess(fit.limits.low, fit.limits.high)) return [];
  const bare = bareGap(read, fit.effect);
  const figure = (value: Parameters<typeof makeDecimal>[0]) => `${makeDecimal(value, 3)} ${unitOf(fit)}`;
  if (!bare.ok)
    return bare.error.code === 'parts-overlap'
      ? [{ at, case: 'overlap', values: { by: figure(bare.error.by) } }]
      : bare.error.code === 'bar-exceeds-reading'
        ? [{ at, case: 'bar' }]
        : [];
  const window = windowFor(bare.value, fit.effect, fitWith(fit, read).limits);
  if (window.ok) return [];
  return [
    {
      at,
      case: window.error.code === 'bare-below-limits' ? 'below' : 'above',
      values: { bare: figure(bare.value) },
    },
  ];
}

/** A reading can be right: nothing overlaps, and a part could bring the play within the limits. */
export const readingsPossible: Rule = {
  id: 'readings-possible',
  severity: 'error',
  check: (deck) =>
    (deck.fits ?? []).flatMap((fit, f) =>
      (fit.readings ?? []).flatMap((reading, index) =>
        findings(fit, reading, ['fits', f, 'readings', index]),
      ),
    ),
};
