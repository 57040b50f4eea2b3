/** Lengths as somebody types them, once they can be read. */
import { LENGTH_UNITS, type Length } from '../unit/record.ts';
import { type DeckDraft, valueAt } from './draft.ts';
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

/** The unit of length that the draft was last begun with: what the next amount will most likely be in. */
export function usualUnit(draft: DeckDraft): Length['unit'] {
  const inches = (value: unknown): number => {
    if (typeof value !== 'object' || value === null) return 0;
    if ('unit' in value && 'value' in value) return value.unit === 'in' ? 1 : value.unit === 'mm' ? -1 : 0;
    return Object.values(value).reduce<number>((sum, entry) => sum + inches(entry), 0);
  };
  return ['stacks', 'seats', 'fits'].reduce((sum, part) => sum + inches(valueAt(draft, [part])), 0) > 0
    ? 'in'
    : 'mm';
}
