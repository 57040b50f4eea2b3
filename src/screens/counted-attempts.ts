/** The whole log of a deck without what counts nowhere: rarely needed, since the ledger says what practice asks. */
import { voidsOf } from '../core/assign/corrections.ts';
import type { Attempt } from '../core/memory/attempt.ts';
import { pass, type Result } from '../core/result.ts';
import type { Store } from '../storage/store.ts';
import type { StoreTrouble } from '../storage/trouble.ts';

export async function countedAttempts(
  store: Store,
  deck: string,
): Promise<Result<readonly Attempt[], StoreTrouble>> {
  const [log, corrections] = await Promise.all([store.attemptsOf(deck), store.classroom.correctionsOf(deck)]);
  if (!log.ok) return log;
  if (!corrections.ok) return corrections;
  const voids = voidsOf(log.value.attempts, corrections.value);
  return pass(log.value.attempts.filter(({ id }) => !voids.has(id)));
}
