/** What is said about a try at a PIN that was not right. */
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { PinTry } from '../../storage/learners/registry.ts';

export function pinPhrase(tried: PinTry): Phrase | null {
  if (tried.kind === 'right') return null;
  const seconds = Math.ceil(tried.waitMs / 1000);
  if (seconds === 0) return phrase('pin.wrong');
  return seconds > 90
    ? phrase('pin.wait-minutes', { minutes: Math.ceil(seconds / 60) })
    : phrase('pin.wait', { seconds });
}
