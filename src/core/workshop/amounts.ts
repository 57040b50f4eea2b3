/** Lengths as somebody types them, once they can be read, and the units that a draft is written in. */
import { LENGTH_UNITS, type Length } from '../unit/record.ts';
import type { DeckDraft } from './draft.ts';
import { figureFrom } from './finish.ts';

export type TypedAmount =
  | { readonly value?: string | undefined; readonly unit?: string | undefined }
  | undefined;

/** Zero or more; null while it is no figure with a unit. */
export function lengthFrom(typed: TypedAmount): Length | null {
  const unit = LENGTH_UNITS.find((known) => known === typed?.unit);
  const value = figureFrom(String(typed?.value ?? ''));
  return unit && /^\d{1,6}(\.\d{1,6})?$/.test(value) ? { value, unit } : null;
}

/** Above zero. */
export function sizeFrom(typed: TypedAmount): Length | null {
  const length = lengthFrom(typed);
  return length && Number(length.value) > 0 ? length : null;
}

const counted = new WeakMap<DeckDraft, ReadonlyMap<string, number>>();

/** How many amounts of the draft are in each unit. */
function unitsOf(draft: DeckDraft): ReadonlyMap<string, number> {
  const known = counted.get(draft);
  if (known) return known;
  const counts = new Map<string, number>();
  const walk = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if ('unit' in value && 'value' in value && typeof value.unit === 'string')
      counts.set(value.unit, (counts.get(value.unit) ?? 0) + 1);
    else for (const entry of Object.values(value)) walk(entry);
  };
  walk(draft);
  counted.set(draft, counts);
  return counts;
}

/** Of these units the one that the draft has most amounts in: the next will most likely be in it too. */
export function usualUnit<U extends string>(draft: DeckDraft, units: readonly [U, ...U[]]): U {
  const counts = unitsOf(draft);
  const count = (unit: U) => counts.get(unit) ?? 0;
  return units.reduce((best, unit) => (count(unit) > count(best) ? unit : best), units[0]);
}
