/** Every step of a deck with its place and reference, those of assemblies included. */
import type { Deck } from '../../core/unit/deck.ts';
import type { Ref } from '../../core/unit/refs.ts';
import type { DeckStep } from '../../core/unit/sequences.ts';
import type { Path } from '../finding.ts';

export interface PlacedStep {
  readonly at: Path;
  readonly ref: Ref;
  readonly step: DeckStep;
}

export const everyStep = (deck: Deck): PlacedStep[] =>
  (deck.sequences ?? []).flatMap(({ id, steps, assembly }, s) => {
    const placed = (at: Path, list: readonly DeckStep[] = []): PlacedStep[] =>
      list.map((step, index) => ({ at: [...at, index], ref: `step:${id}/${step.id}`, step }));
    return [
      ...placed(['sequences', s, 'steps'], steps),
      ...placed(['sequences', s, 'assembly', 'added'], assembly?.added),
    ];
  });
