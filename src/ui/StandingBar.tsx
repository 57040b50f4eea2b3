/** How many facts stand how, as one hatched bar and in words. */
import type { Standing } from '../core/memory/standing.ts';
import { say as phrase } from '../core/questions/phrase.ts';
import type { Say } from '../words/words.ts';

interface Props {
  readonly standings: readonly { readonly standing: Standing; readonly count: number }[];
  readonly say: Say;
}

export function StandingBar({ standings, say }: Props) {
  const shown = standings.filter(({ count }) => count > 0).toReversed();
  return (
    <>
      <div className="standing-bar" aria-hidden="true">
        {shown.map(({ standing, count }) => (
          <span key={standing} className={`standing-part ${standing}`} style={{ flexGrow: count }} />
        ))}
      </div>
      <ul className="standing-key">
        {shown.map(({ standing, count }) => (
          <li key={standing}>
            <span className={`standing-part ${standing}`} aria-hidden="true" />
            {count} {say(phrase(`standing.${standing}`))}
          </li>
        ))}
      </ul>
    </>
  );
}
