/** Told when the clock cannot be right, or when another time zone holds than at the last answer. */
import type { Latest } from '../../core/ledger/ledger.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import type { Moment } from '../services.ts';

/** Clocks that differ by less put no day in the wrong place that matters. */
const BEHIND_MS = 3_600_000;

export function ClockNote({ latest, now, say }: { latest: Latest; now: Moment; say: Say }) {
  if (now.at < latest.at - BEHIND_MS)
    return (
      <p className="note" role="status">
        {say(phrase('clock.behind'))}
      </p>
    );
  if (now.zone !== latest.zone)
    return (
      <p className="note" role="status">
        {say(phrase('clock.moved', { before: latest.zone, now: now.zone }))}
      </p>
    );
  return null;
}
