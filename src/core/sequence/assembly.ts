/**
 * Putting together is stripping turned round, except where it is not: steps done one way only, relations that do
 * not turn round, and new ones (measure before the ring goes in). The exceptions are data; reversing blindly is
 * the mistake they guard against.
 */
import { fail, pass, type Result } from '../result.ts';
import { beforeOf, checkPrecedence, type Precedence, type PrecedenceError, type Step } from './precedence.ts';

/** Both named as in the assembly: `earlier` comes before `later`. */
export interface Relation {
  readonly earlier: string;
  readonly later: string;
}

export interface AssemblyExceptions {
  /** Steps done only when stripping. What they kept apart stays apart. */
  readonly leftOut?: readonly string[] | undefined;
  /** Steps done only when assembling. */
  readonly added?: readonly Step[] | undefined;
  /** Relations that stripping has and assembly, turned round, does not. */
  readonly lifted?: readonly Relation[] | undefined;
  /** Relations that only assembly has. */
  readonly imposed?: readonly Relation[] | undefined;
}

export type AssemblyError =
  | PrecedenceError
  | { readonly code: 'left-out-unknown'; readonly step: string }
  /** No direct relation of the stripping turns round to this one. */
  | { readonly code: 'lifted-unknown'; readonly relation: Relation }
  /** Lifted, but other relations still ask for it. */
  | { readonly code: 'lifted-still-implied'; readonly relation: Relation };

/** The strip's relations turned round, lifted ones left out, as `later -> all earlier` among the kept steps. */
function turned(strip: Precedence, exceptions: AssemblyExceptions): Result<Step[], AssemblyError> {
  const { leftOut = [], lifted = [] } = exceptions;
  const unknown = leftOut.find((id) => !strip.before.has(id));
  if (unknown !== undefined) return fail({ code: 'left-out-unknown', step: unknown });
  const isLifted = (earlier: string, later: string) =>
    lifted.some((relation) => relation.earlier === earlier && relation.later === later);
  const missing = lifted.find(({ earlier, later }) => !strip.direct.get(earlier)?.has(later));
  if (missing) return fail({ code: 'lifted-unknown', relation: missing });
  const reversed = checkPrecedence(
    strip.ids.map((id) => ({
      id,
      after: strip.ids
        .filter((other) => strip.direct.get(other)!.has(id) && !isLifted(other, id))
        .map((step) => ({ step })),
    })),
  );
  if (!reversed.ok) return reversed;
  const implied = lifted.find(({ earlier, later }) => beforeOf(reversed.value, later).has(earlier));
  if (implied) return fail({ code: 'lifted-still-implied', relation: implied });
  const kept = strip.ids.filter((id) => !leftOut.includes(id)).reverse();
  return pass(
    kept.map((id) => ({
      id,
      after: [...beforeOf(reversed.value, id)]
        .filter((earlier) => kept.includes(earlier))
        .map((step) => ({ step })),
    })),
  );
}

/** The precedence of the assembly. Its steps are listed last stripped first, added ones at the end. */
export function assemblyOf(
  strip: Precedence,
  exceptions: AssemblyExceptions = {},
): Result<Precedence, AssemblyError> {
  const steps = turned(strip, exceptions);
  if (!steps.ok) return steps;
  const all = [...steps.value, ...(exceptions.added ?? [])];
  for (const { earlier, later } of exceptions.imposed ?? [])
    if (!all.some(({ id }) => id === later))
      return fail({ code: 'step-unknown', step: later, after: earlier });
  return checkPrecedence(
    all.map((step) => ({
      id: step.id,
      after: [
        ...(step.after ?? []),
        ...(exceptions.imposed ?? [])
          .filter(({ later }) => later === step.id)
          .map(({ earlier }) => ({ step: earlier })),
      ],
    })),
  );
}

/**
 * One legal order of the assembly that stays as close as it can to a stripping order turned round: of the steps
 * that may come next, an added one as soon as it may, else the one that was stripped last.
 */
export function assemblyOrder(assembly: Precedence, stripOrder: readonly string[]): string[] {
  const done = new Set<string>();
  const left = new Set(assembly.ids);
  const rank = (id: string) => {
    const place = stripOrder.indexOf(id);
    return place < 0 ? stripOrder.length : place;
  };
  while (left.size > 0) {
    const ready = [...left].filter((id) => [...beforeOf(assembly, id)].every((earlier) => done.has(earlier)));
    const next = ready.reduce((best, id) => (rank(id) > rank(best) ? id : best));
    done.add(next);
    left.delete(next);
  }
  return [...done];
}
