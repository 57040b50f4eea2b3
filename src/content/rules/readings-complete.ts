import type { DeckFit, DeckReading } from '../../core/unit/fits.ts';
import type { Path, Spot } from '../finding.ts';
import type { Rule } from './rule.ts';

const NEEDED = { bare: ['play'], 'part-fitted': ['play', 'fitted'], depths: ['seat', 'standOff'] } as const;
const FIELDS = ['play', 'fitted', 'seat', 'standOff'] as const;

function findings({ method, bar }: DeckFit, reading: DeckReading, at: Path): Spot[] {
  const needed: readonly string[] = NEEDED[method];
  const missing = needed.filter((field) => reading[field as (typeof FIELDS)[number]] === undefined);
  const extra = FIELDS.filter((field) => reading[field] !== undefined && !needed.includes(field));
  const halves = (reading.chosen === undefined) !== (reading.result === undefined);
  const overBar = (['seat', 'standOff'] as const).filter((field) => reading[field]?.overBar && !bar);
  return [
    ...missing.map((field): Spot => ({ at, case: 'missing', values: { method, field } })),
    ...extra.map((field): Spot => ({ at: [...at, field], case: 'extra', values: { method, field } })),
    ...overBar.map((field): Spot => ({ at: [...at, field, 'overBar'], case: 'bar' })),
    ...(halves ? [{ at, case: 'half' }] : []),
  ];
}

/** A reading has the figures that its fit's method needs, and no others. */
export const readingsComplete: Rule = {
  id: 'readings-complete',
  severity: 'error',
  check: (deck) =>
    (deck.fits ?? []).flatMap((fit, f) =>
      (fit.readings ?? []).flatMap((reading, index) =>
        findings(fit, reading, ['fits', f, 'readings', index]),
      ),
    ),
};
