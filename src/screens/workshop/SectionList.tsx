/** The way through the sections: a column beside the desk where there is room, folded away on a phone. */
import { useState } from 'react';
import { Link } from 'wouter';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import { SECTION_IDS, type SectionId } from './sections.ts';

interface Props {
  readonly draftId: string;
  readonly section: SectionId;
  readonly say: Say;
}

const called = (say: Say, section: SectionId) => say(phrase(`workshop.section.${section}`));

export function SectionList({ draftId, section, say }: Props) {
  const [open, setOpen] = useState(false);
  const number = SECTION_IDS.indexOf(section) + 1;
  return (
    <nav className="sections" aria-label={say(phrase('workshop.sections'))}>
      <button
        type="button"
        className="button sections-key"
        aria-expanded={open}
        onClick={() => setOpen((before) => !before)}
      >
        {say(
          phrase('workshop.section-no', {
            section: called(say, section),
            number,
            count: SECTION_IDS.length,
          }),
        )}
      </button>
      <ul className={open ? 'section-links' : 'section-links folded'}>
        {SECTION_IDS.map((one) => (
          <li key={one}>
            <Link
              href={`/workshop/${draftId}/${one}`}
              className={one === section ? 'section-link here' : 'section-link'}
              aria-current={one === section ? 'page' : undefined}
              onClick={() => setOpen(false)}
            >
              {called(say, one)}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** At the foot of a section: on to the next, without going back up. */
export function NextSection({ draftId, section, say }: Props) {
  const next = SECTION_IDS[SECTION_IDS.indexOf(section) + 1];
  if (!next) return null;
  return (
    <Link href={`/workshop/${draftId}/${next}`} className="button" onClick={() => window.scrollTo?.(0, 0)}>
      {say(phrase('workshop.next-section', { section: called(say, next) }))}
    </Link>
  );
}
