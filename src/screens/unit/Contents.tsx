/** What the page holds, to jump to: the address names the screen, so these are buttons and no links. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';

/** The element that a part of the page starts with. */
export const placeOf = (part: string): string => `unit-${part}`;

/** Brings a part into view and the keyboard with it. */
export function jumpTo(part: string) {
  const place = document.getElementById(placeOf(part));
  place?.scrollIntoView();
  place?.focus({ preventScroll: true });
}

export function Contents({ parts, say }: { parts: readonly string[]; say: Say }) {
  return (
    <nav aria-label={say(phrase('unit.contents'))}>
      <ul className="contents">
        {parts.map((part) => (
          <li key={part}>
            <button type="button" className="button plain" onClick={() => jumpTo(part)}>
              {say(phrase(`unit.${part}`))}
            </button>
          </li>
        ))}
      </ul>
    </nav>
  );
}
