/** Steps of a sequence by id, worded for stripping or for putting together. */
import type { Deck } from '../../unit/deck.ts';
import type { DeckSequence, DeckStep } from '../../unit/sequences.ts';
import type { StepsDrawing } from '../drawing.ts';

export interface ShownStep {
  readonly step: DeckStep;
  readonly text: string;
  readonly isDone: boolean;
  readonly isLit: boolean;
}

/** The sequence with this id; an unknown id is a mistake of the caller and throws. */
export function sequenceOf(deck: Deck, id: string): DeckSequence {
  const sequence = deck.sequences?.find((candidate) => candidate.id === id);
  if (!sequence) throw new Error(`no sequence "${id}"`);
  return sequence;
}

/** What is done: in an assembly the step turned round, where it has words of its own for that. */
export function stepsShown(deck: Deck, drawing: StepsDrawing): ShownStep[] {
  const sequence = sequenceOf(deck, drawing.sequence);
  const added = sequence.assembly?.added ?? [];
  return drawing.steps.map((id) => {
    const extra = drawing.work === 'assembly' ? added.find((step) => step.id === id) : undefined;
    const step = extra ?? sequence.steps.find((candidate) => candidate.id === id);
    if (!step) throw new Error(`no step "${id}" in sequence "${sequence.id}"`);
    return {
      step,
      text: drawing.work === 'assembly' && !extra ? (step.turned ?? step.text) : step.text,
      isDone: drawing.done?.includes(id) ?? false,
      isLit: drawing.lit?.includes(id) ?? false,
    };
  });
}
