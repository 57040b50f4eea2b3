/** What became of reports that came in, and what their seals show. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import type { Collected } from './collect.ts';

export function CollectedNote({ collected, say }: { collected: readonly Collected[]; say: Say }) {
  if (collected.length === 0) return null;
  return (
    <div className="note" role="status">
      <ul className="steps">
        {collected.map(({ kind, name, answers, flags, proof }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: entries are only ever added at the end
          <li key={index}>
            {say(phrase(`group.collected.${kind}`, { name, answers, flags }))}
            {(kind === 'kept' || kind === 'known') && ` ${say(phrase(`proof.${proof}`))}`}
          </li>
        ))}
      </ul>
    </div>
  );
}
