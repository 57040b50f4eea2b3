/**
 * Steps typed in the order of stripping, a line each, and the assembly that follows from them. What really must come
 * before a step is said by somebody; the order they were typed in alone binds nothing.
 */
import { fail, pass, type Result } from '../result.ts';
import { type AssemblyError, assemblyOf, assemblyOrder } from '../sequence/assembly.ts';
import { checkOrder } from '../sequence/order.ts';
import { checkPrecedence, type Step } from '../sequence/precedence.ts';
import type { DeckDraft } from './draft.ts';

export type DraftSequence = NonNullable<DeckDraft['sequences']>[number];
type DraftStep = NonNullable<DraftSequence['steps']>[number];

/** An id of a few words of the step: "Take the pan off." → "take-the-pan-off". Letters of any script stay. */
export function stepIdFrom(words: string, taken: { includes(id: string): boolean }): string {
  const stem =
    words
      .toLowerCase()
      .replace(/[^\p{L}\p{M}\p{N}]+/gu, ' ')
      .trim()
      .split(' ')
      .slice(0, 4)
      .join('-')
      .slice(0, 32)
      .replace(/-+$/, '') || 'step';
  if (!taken.includes(stem)) return stem;
  let number = 2;
  while (taken.includes(`${stem}-${number}`)) number++;
  return `${stem}-${number}`;
}

/** Steps from lines: "Take the pan off. / Set the pan on." also says what is done when it goes together. */
export function stepsFromLines(lines: string, before: readonly DraftStep[]): DraftStep[] {
  const ids = new Set(before.map(({ id }) => id));
  const taken = { includes: (id: string) => ids.has(id) };
  return lines
    .split('\n')
    .map((line) => line.replace(/^\s*(?:\d{1,3}[.)]|[-*•])\s+/, '').trim())
    .filter((line) => line !== '')
    .map((line) => {
      const [text = '', turned] = line.replace(/\s+/g, ' ').split(' / ', 2);
      const id = stepIdFrom(text, taken);
      ids.add(id);
      return { id, text, ...(turned && { turned }) };
    });
}

const said = (text: string | undefined): text is string => text !== undefined && text.trim() !== '';

const stepOf = ({ id, after = [] }: DraftStep): Step => ({
  id: id ?? '',
  after: after.flatMap(({ step }) => (said(step) ? [{ step }] : [])),
});

const relations = (list: readonly { earlier?: string | undefined; later?: string | undefined }[] = []) =>
  list.flatMap(({ earlier, later }) => (said(earlier) && said(later) ? [{ earlier, later }] : []));

export type OrderTrouble = AssemblyError | { readonly code: 'too-early'; readonly step: string };

/** The assembly in an order that works, derived from the stripping and its exceptions. */
export function assemblyOfDraft({
  steps = [],
  assembly,
}: DraftSequence): Result<readonly string[], OrderTrouble> {
  const strip = checkPrecedence(steps.map(stepOf));
  if (!strip.ok) return strip;
  const order = steps.map(({ id }) => id ?? '');
  const worked = checkOrder(strip.value, order);
  if (!worked.ok)
    return fail({ code: 'too-early', step: 'step' in worked.error ? worked.error.step : (order[0] ?? '') });
  const made = assemblyOf(strip.value, {
    leftOut: (assembly?.leftOut ?? []).flatMap(({ step }) => (said(step) ? [step] : [])),
    added: (assembly?.added ?? []).map(stepOf),
    lifted: relations(assembly?.lifted),
    imposed: relations(assembly?.imposed),
  });
  return made.ok ? pass(assemblyOrder(made.value, order)) : made;
}
