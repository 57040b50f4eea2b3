/** Steps of work as safety questions need them. */
import type { Hazard } from '../../../unit/cautions.ts';
import type { DeckStep } from '../../../unit/sequences.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { perUnit } from '../per-unit.ts';

export interface HazardStep {
  readonly ref: Ref;
  readonly sequence: string;
  readonly step: DeckStep;
  readonly hazards: readonly Hazard[];
}

/** Verified steps of all sequences, in their order, with the hazards they carry. */
export const stepsWithHazards = perUnit((unit: Unit): HazardStep[] =>
  (unit.deck.sequences ?? []).flatMap((sequence) =>
    sequence.steps.flatMap((step): HazardStep[] => {
      const ref: Ref = `step:${sequence.id}/${step.id}`;
      return unit.sure(ref) && unit.sure(`sequence:${sequence.id}`)
        ? [{ ref, sequence: sequence.id, step, hazards: step.hazards ?? [] }]
        : [];
    }),
  ),
);
