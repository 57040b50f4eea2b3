/**
 * A report: what a learner hands back for one assignment. It holds attempts and flags, no memories and no marks:
 * whoever receives it folds the attempts himself. Plain JSON; the seal proves that nothing was changed on the
 * way (docs/exchange.md says what it does not prove).
 */
import type { Attempt } from '../memory/attempt.ts';
import type { FactId } from '../questions/question.ts';
import type { Assignment } from './assignment.ts';

/** "The data is wrong": said by a learner about one question, which can be opened again. */
export interface Flag {
  readonly id: string;
  readonly deck: string;
  readonly revision: number;
  readonly family: string;
  readonly fact: FactId;
  readonly seed: number;
  readonly note: string;
  /** Milliseconds since 1970. */
  readonly at: number;
}

export interface Learner {
  /** Random id, made on the learner's device; it goes along to a new phone. */
  readonly id: string;
  /** Name or alias, as the learner wants to be shown to the instructor. */
  readonly name: string;
}

export interface Report {
  readonly id: string;
  /** Id of the assignment. */
  readonly assignment: string;
  readonly deck: string;
  readonly learner: Learner;
  /** Milliseconds since 1970. */
  readonly madeAt: number;
  readonly attempts: readonly Attempt[];
  readonly flags: readonly Flag[];
  /** Ids of the corrections this device has taken in. */
  readonly corrections: readonly string[];
}

export interface Seal {
  /** The device's public key: a P-256 point in base64url, x and y, 32 bytes each. */
  readonly key: string;
  /** ECDSA with SHA-256 over the report's canonical JSON, r and s in base64url. */
  readonly signature: string;
}

export interface SealedReport {
  readonly report: Report;
  /** Null where the browser gives no keys. */
  readonly seal: Seal | null;
}

/**
 * The report of everything answered on the assigned facts, or with `after` of what came later than that moment:
 * reports are joined by the receiver, so a short one adds to the long one before it.
 */
export function makeReport(given: {
  readonly id: string;
  readonly assignment: Pick<Assignment, 'id' | 'deck'>;
  /** Ids of the assigned facts. */
  readonly facts: ReadonlySet<FactId>;
  readonly learner: Learner;
  readonly attempts: readonly Attempt[];
  readonly flags: readonly Flag[];
  readonly corrections: readonly string[];
  readonly madeAt: number;
  readonly after?: number;
}): Report {
  const { assignment, facts, after = Number.NEGATIVE_INFINITY } = given;
  const deck = assignment.deck.id;
  return {
    id: given.id,
    assignment: assignment.id,
    deck,
    learner: given.learner,
    madeAt: given.madeAt,
    attempts: given.attempts.filter(
      (attempt) =>
        attempt.deck === deck && attempt.at > after && attempt.facts.some((fact) => facts.has(fact)),
    ),
    flags: given.flags.filter((flag) => flag.deck === deck),
    corrections: [...given.corrections],
  };
}
