/** The facts that are practised: those of the assignment that was taken in, else all of the deck's. */
import { useMemo } from 'react';
import { type Assignment, assignedFacts } from '../core/assign/assignment.ts';
import { type Fact, factsOf } from '../core/questions/facts.ts';
import type { Unit } from '../core/unit/unit.ts';

export function usePractisedFacts(unit: Unit, assignment: Assignment | undefined): readonly Fact[] {
  return useMemo(() => {
    const all = factsOf(unit);
    return assignment ? assignedFacts(assignment, all).facts : all;
  }, [unit, assignment]);
}
