/**
 * An assignment: what an instructor hands out. Plain JSON. It names a deck (or areas or facts of it), the class
 * and the minutes a day; corrections of the deck travel with it. docs/spec/assign.md.
 */
import type { Fact } from '../questions/facts.ts';
import type { FactId } from '../questions/question.ts';
import { AREA_OF, type Area } from '../self-check/areas.ts';
import type { Correction } from './corrections.ts';
import type { ClassTime } from './due.ts';

/** What is assigned: the whole deck, its facts in some areas, or facts by name. */
export type Scope =
  | { readonly kind: 'deck' }
  | { readonly kind: 'areas'; readonly areas: readonly Area[] }
  | { readonly kind: 'facts'; readonly facts: readonly FactId[] };

/** How much the facts of an area count in the plan, beside the usual 1. */
export const COUNTING = { double: 2, half: 0.5 } as const;
export type Counting = keyof typeof COUNTING;

export interface Threshold {
  /** Readiness from which somebody counts as likely ready, 0 to 1. */
  readonly share: number;
  /** Facts that carry a caution must all have been answered right the last time. */
  readonly cautioned: boolean;
}

export interface Assignment {
  readonly id: string;
  /** Counts up from 1 each time it is handed out changed; the highest one counts. */
  readonly issue: number;
  readonly deck: { readonly id: string; readonly revision: number };
  readonly scope: Scope;
  /** Areas whose facts count more or less than the usual; left out where all count alike. */
  readonly counting?: Readonly<Partial<Record<Area, Counting>>>;
  readonly group: string;
  readonly classAt: ClassTime;
  readonly minutes: number;
  readonly threshold: Threshold;
  /** What the instructor says to the learners; null when nothing. */
  readonly note: string | null;
  readonly corrections: readonly Correction[];
  /** Milliseconds since 1970 by the instructor's clock. */
  readonly madeAt: number;
}

export const USUAL_THRESHOLD: Threshold = { share: 0.85, cautioned: true };

/** The issue that counts of two with one id: the higher number, then the later made. Throws on two ids. */
export function laterIssue(a: Assignment, b: Assignment): Assignment {
  if (a.id !== b.id) throw new RangeError(`assignments "${a.id}" and "${b.id}" are not one`);
  if (a.issue !== b.issue) return a.issue > b.issue ? a : b;
  if (a.madeAt !== b.madeAt) return a.madeAt > b.madeAt ? a : b;
  return JSON.stringify(a) >= JSON.stringify(b) ? a : b;
}

/** The area of a fact: that of the first family that can ask about it. */
export const areaOf = (fact: Fact): Area | undefined => AREA_OF[fact.families[0] ?? ''];

export interface AssignedFacts {
  /** Facts of the deck, in the deck's own order. */
  readonly facts: readonly Fact[];
  /** Named in the assignment, but not (or no longer) to be asked from this deck. */
  readonly missing: readonly FactId[];
}

/** Which of the unit's facts (`factsOf`) an assignment asks. */
export function assignedFacts({ scope }: Pick<Assignment, 'scope'>, facts: readonly Fact[]): AssignedFacts {
  switch (scope.kind) {
    case 'deck':
      return { facts, missing: [] };
    case 'areas':
      return {
        facts: facts.filter((fact) => {
          const area = areaOf(fact);
          return area !== undefined && scope.areas.includes(area);
        }),
        missing: [],
      };
    case 'facts': {
      const known = new Set(facts.map(({ id }) => id));
      return {
        facts: facts.filter(({ id }) => scope.facts.includes(id)),
        missing: [...new Set(scope.facts)].filter((id) => !known.has(id)),
      };
    }
  }
}

/** What each fact counts in a plan, where that is not 1. */
export function weightsOf(
  { counting = {} }: Pick<Assignment, 'counting'>,
  facts: readonly Fact[],
): ReadonlyMap<FactId, number> {
  return new Map(
    facts.flatMap((fact) => {
      const area = areaOf(fact);
      const counts = area && counting[area];
      return counts ? [[fact.id, COUNTING[counts]] as const] : [];
    }),
  );
}
