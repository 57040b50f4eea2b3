/** All answers of one learner as JSON, deck by deck, in the shape of the log (docs/exchange.md has its fields). */
import type { Attempt } from '../../core/memory/attempt.ts';
import { pass, type Result } from '../../core/result.ts';
import type { Store } from '../../storage/store.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';

export async function answersFile(store: Store, name: string): Promise<Result<string, StoreTrouble>> {
  const decks = await store.decks();
  if (!decks.ok) return decks;
  const logs: { deck: string; attempts: readonly Attempt[] }[] = [];
  for (const { id } of decks.value) {
    const log = await store.attemptsOf(id);
    if (!log.ok) return log;
    if (log.value.attempts.length > 0) logs.push({ deck: id, attempts: log.value.attempts });
  }
  return pass(JSON.stringify({ kind: 'detent-answers', format: 1, name, logs }, null, 1));
}
