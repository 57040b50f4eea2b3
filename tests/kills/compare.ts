/**
 * What a person was shown against what the store holds after a restart. Shown: the verdict on screen, told to the
 * test from the page before the learner goes on. So at most the last answer before a kill may be stored without
 * having been shown; none may be shown without being stored, and none may be there twice.
 */
import type { Attempt } from '../../src/core/memory/attempt.ts';
import { type Drill, stepOf } from '../../src/core/memory/drill.ts';

/** A verdict that stood on the screen. */
export interface Shown {
  /** Number of the question in its drill, from 1. */
  readonly place: number;
  readonly right: boolean;
}

export interface Stored {
  readonly attempts: readonly Attempt[];
  /** The drill under way. */
  readonly drill: Drill | undefined;
}

/**
 * What is wrong with the store after a kill, given what it held before and what was shown since; empty when
 * nothing is. `shown`: verdicts seen for the first time. `unseen`: whether the last answer stored had not been shown.
 */
export function compare(
  before: Stored,
  seen: readonly Shown[],
  after: Stored,
): { readonly faults: readonly string[]; readonly shown: number; readonly unseen: boolean } {
  const faults: string[] = [];
  const log = after.attempts.toSorted((a, b) => a.sequence - b.sequence);
  const old = before.attempts.toSorted((a, b) => a.sequence - b.sequence);

  for (const [index, attempt] of old.entries())
    if (JSON.stringify(log[index]) !== JSON.stringify(attempt))
      faults.push(`answer ${attempt.sequence} of an earlier run is lost or changed`);
  const fresh = log.slice(old.length);
  // A verdict that stood when the browser was killed stands again.
  const { index, verdict } = before.drill ?? {};
  const standing = verdict && seen[0]?.place === index! + 1 ? seen[0] : null;
  if (standing && standing.right !== verdict?.right) faults.push('the verdict that stood is another one');
  const shown = standing ? seen.slice(1) : seen;
  if (fresh.length < shown.length) faults.push(`${shown.length} answers shown, ${fresh.length} stored`);
  if (fresh.length > shown.length + 1) faults.push(`${shown.length} answers shown, ${fresh.length} stored`);
  for (const [index, { place, right }] of shown.entries())
    if (fresh[index] && fresh[index].right !== right)
      faults.push(`question ${place} was shown ${right ? 'right' : 'wrong'} and stored otherwise`);

  if (log.some(({ sequence }, index) => sequence !== index + 1))
    faults.push('the numbers have a gap or repeat');
  if (new Set(log.map(({ id }) => id)).size < log.length) faults.push('an id is there twice');

  const { drill } = after;
  if (drill) {
    const own = log.filter((attempt) => attempt.drill === drill.id);
    if (own.length !== drill.answered)
      faults.push(`the drill counts ${drill.answered}, the log ${own.length}`);
    if (own.length !== Math.ceil(stepOf(drill) / 2))
      faults.push(`the drill is at step ${stepOf(drill)} with ${own.length} answers in the log`);
    for (const [index, { fact, family, seed }] of own.entries()) {
      const item = drill.items[index];
      if (item?.fact !== fact || item.family !== family || item.seed !== seed)
        faults.push(`answer ${index + 1} of the drill is not to its question ${index + 1}`);
    }
  }
  return { faults, shown: shown.length, unseen: fresh.length === shown.length + 1 };
}
