/** The search box: what answers to it is listed with the part of the page it stands on. Enter jumps to the first. */
import { Link } from 'wouter';
import { say as phrase, thing } from '../../core/questions/phrase.ts';
import type { Found } from '../../core/unit/find.ts';
import type { Say } from '../../words/words.ts';
import { calledAs } from './called.ts';
import { partOf } from './found.ts';

/** More would not be read on a phone; the page below has them all. */
const LISTED = 8;

/** A code is told by its number as well as by its meaning, a plate with its pack. */
function hitText(found: Found, say: Say): string {
  const { ref, id, name, alias } = found;
  const [kind, rest] = ref.split(':');
  const own = kind === 'code' ? `${id}: ${name}` : name;
  const what = say(calledAs(ref, own));
  return say(
    phrase('unit.hit', {
      part: phrase(`unit.${partOf(ref)}`),
      what: kind === 'plate' ? `${what}, ${say(thing('stack', rest!.split('/')[0]!))}` : what,
      alias: alias ?? 'none',
    }),
  );
}

interface Props {
  readonly text: string;
  readonly onText: (text: string) => void;
  /** What the page shows of it; null while nothing is looked for. */
  readonly found: readonly Found[] | null;
  readonly onPick: (found: Found) => void;
  readonly say: Say;
  /** Id of the deck, where it can be put right. */
  readonly deck: string;
}

/** With fewer answers than this somebody has found what he looked for. */
const FEW = 3;

export function LookFor({ text, onText, found, onPick, say, deck }: Props) {
  // Plates that nobody can tell apart are one entry.
  const hits = new Map<string, Found>();
  for (const each of found ?? []) {
    const told = hitText(each, say);
    if (!hits.has(told)) hits.set(told, each);
  }
  return (
    <form
      className="unit-part"
      onSubmit={(event) => {
        event.preventDefault();
        if (found?.[0]) onPick(found[0]);
      }}
    >
      <label className="field">
        <span>{say(phrase('unit.look-for'))}</span>
        <input
          type="search"
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          enterKeyHint="search"
          value={text}
          onChange={(event) => onText(event.target.value)}
        />
      </label>
      <p className="aside" aria-live="polite">
        {found && say(phrase('unit.found', { count: found.length }))}
      </p>
      {hits.size > 0 && (
        <ul className="contents">
          {[...hits].slice(0, LISTED).map(([told, each]) => (
            <li key={told}>
              <button type="button" className="button plain" onClick={() => onPick(each)}>
                {told}
              </button>
            </li>
          ))}
        </ul>
      )}
      {hits.size > 0 &&
        hits.size <= FEW &&
        [...hits].map(([told, { ref }]) => (
          <Link key={told} href={`/workshop/fix/${deck}/${encodeURIComponent(ref)}`}>
            {say(phrase('fix.look-up', { what: told }))}
          </Link>
        ))}
    </form>
  );
}
