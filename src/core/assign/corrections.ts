/**
 * A correction: a value of the deck was wrong, and is right from some revision on. Attempts given before that on
 * facts that rest on it are voided in every fold, on every device alike, since the correction names the facts.
 */
import { changedRefs } from '../deck-merge/differences.ts';
import type { Attempt } from '../memory/attempt.ts';
import type { FactId } from '../questions/question.ts';
import { changedFacts } from '../questions/resting.ts';
import type { Ref, Unit } from '../unit/unit.ts';

export interface Correction {
  readonly id: string;
  /** Id of the deck. */
  readonly deck: string;
  /** The first revision with the right value. */
  readonly revision: number;
  /** References of the values that were wrong. */
  readonly refs: readonly Ref[];
  /** Facts that came out otherwise; attempts on them from earlier revisions count no more. */
  readonly facts: readonly FactId[];
  /** What was wrong, in the instructor's words. */
  readonly note: string;
  /** Milliseconds since 1970. */
  readonly at: number;
}

/** The correction between two revisions of a deck. Its `facts` are empty where only names or notes changed. */
export function correctionBetween(
  before: Unit,
  after: Unit,
  said: Pick<Correction, 'id' | 'note' | 'at'>,
): Correction {
  if (before.deck.id !== after.deck.id || before.deck.revision >= after.deck.revision)
    throw new RangeError('a correction leads to a later revision of the same deck');
  const refs = changedRefs(before.deck, after.deck);
  return {
    ...said,
    deck: after.deck.id,
    revision: after.deck.revision,
    refs,
    facts: refs.length === 0 ? [] : changedFacts(before, after, refs),
  };
}

/** Corrections by id, later ones in place of none: union of lists that travelled apart, in order of revision. */
export function joinCorrections(...lists: readonly (readonly Correction[])[]): Correction[] {
  const joined = new Map<string, Correction>();
  for (const correction of lists.flat())
    if (!joined.has(correction.id)) joined.set(correction.id, correction);
  return [...joined.values()].sort(
    (a, b) => a.revision - b.revision || a.at - b.at || (a.id < b.id ? -1 : 1),
  );
}

/** Whether an attempt was asked before the correction on something it corrects. */
export const isVoidedBy = (
  correction: Correction,
  attempt: Pick<Attempt, 'deck' | 'revision' | 'facts'>,
): boolean =>
  attempt.deck === correction.deck &&
  attempt.revision < correction.revision &&
  attempt.facts.some((fact) => correction.facts.includes(fact));

/** Ids of attempts that no longer count: the `voids` of `foldAttempts`. */
export function voidsOf(attempts: Iterable<Attempt>, corrections: readonly Correction[]): Set<string> {
  const byDeck = new Map<string, { revision: number; facts: ReadonlySet<FactId> }[]>();
  for (const { deck, revision, facts } of corrections)
    byDeck.set(deck, [...(byDeck.get(deck) ?? []), { revision, facts: new Set(facts) }]);
  const voids = new Set<string>();
  for (const attempt of attempts) {
    const own = byDeck.get(attempt.deck);
    if (
      own?.some(
        ({ revision, facts }) => attempt.revision < revision && attempt.facts.some((f) => facts.has(f)),
      )
    )
      voids.add(attempt.id);
  }
  return voids;
}

/** What a learner is told: a correction, and which of its facts he had answered how often before it. */
export interface Notice {
  readonly correction: Correction;
  readonly facts: readonly { readonly fact: FactId; readonly answers: number }[];
}

/** Corrections that touch something in these attempts; those that touch nothing need not be told. */
export function noticesFor(attempts: readonly Attempt[], corrections: readonly Correction[]): Notice[] {
  return corrections.flatMap((correction) => {
    const voided = attempts.filter((attempt) => isVoidedBy(correction, attempt));
    const facts = correction.facts
      .map((fact) => ({ fact, answers: voided.filter((attempt) => attempt.facts.includes(fact)).length }))
      .filter(({ answers }) => answers > 0);
    return facts.length > 0 ? [{ correction, facts }] : [];
  });
}
