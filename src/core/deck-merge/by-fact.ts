/** Conflicts of a merge by the facts that learners hold on them: what is in doubt until somebody chooses. */
import type { FactId } from '../questions/question.ts';
import { factsApart } from '../questions/resting.ts';
import type { Unit } from '../unit/unit.ts';
import type { Conflict } from './merge.ts';

export interface FactConflicts {
  readonly fact: FactId;
  readonly conflicts: readonly Conflict[];
}

export interface ConflictsByFact {
  readonly facts: readonly FactConflicts[];
  /** Conflicts that no question rests on: names, notes, sources. */
  readonly others: readonly Conflict[];
}

/** `mine` and `theirs` are the two sides, solved. Facts that come out otherwise there, sorted by id. */
export function conflictsByFact(conflicts: readonly Conflict[], mine: Unit, theirs: Unit): ConflictsByFact {
  const facts = [...factsApart(mine, theirs)]
    .map(([fact, refs]) => ({
      fact,
      conflicts: conflicts.filter((conflict) => conflict.refs.some((ref) => refs.has(ref))),
    }))
    .filter((entry) => entry.conflicts.length > 0)
    .sort((a, b) => (a.fact < b.fact ? -1 : 1));
  const placed = new Set(facts.flatMap((entry) => entry.conflicts));
  return { facts, others: conflicts.filter((conflict) => !placed.has(conflict)) };
}
