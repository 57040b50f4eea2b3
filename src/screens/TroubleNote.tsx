/** What went wrong with storage, in plain words, announced at once. */
import { say as phrase } from '../core/questions/phrase.ts';
import type { StoreTrouble } from '../storage/trouble.ts';
import type { Say } from '../words/words.ts';

export function TroubleNote({ trouble, say }: { trouble: StoreTrouble; say: Say }) {
  return (
    <p className="note" role="alert">
      {say(phrase(`storage.${trouble.code}`, { detail: trouble.detail }))}
    </p>
  );
}
