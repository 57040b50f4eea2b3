/** The search box: what answers to it is listed with the part of the page it stands on. Enter jumps to the first. */
import { type Phrase, say as phrase, type ThingKind, thing } from '../../core/questions/phrase.ts';
import type { Found } from '../../core/unit/find.ts';
import type { RefKind } from '../../core/unit/refs.ts';
import type { Say } from '../../words/words.ts';
import { kindOf, partOf } from './found.ts';

/** More would not be read on a phone; the page below has them all. */
const LISTED = 8;

/** Kinds whose name is the shop's name of a thing; the others are called as the deck says. */
const NAMED: Readonly<Partial<Record<RefKind, ThingKind>>> = {
  seat: 'seat',
  element: 'element',
  solenoid: 'solenoid',
  winding: 'solenoid',
  stack: 'stack',
  fit: 'fit',
  part: 'part',
  gearset: 'gearset',
  range: 'range',
  neutral: 'range',
  position: 'position',
  sensor: 'sensor',
  pickup: 'sensor',
  thermistor: 'thermistor',
  connector: 'connector',
  supply: 'supply',
  sequence: 'sequence',
};

function calledAs({ ref, id, name }: Found): Phrase {
  const kind = NAMED[kindOf(ref)];
  return kind ? thing(kind, id) : phrase('text', { text: name });
}

interface Props {
  readonly text: string;
  readonly onText: (text: string) => void;
  /** What the page shows of it; null while nothing is looked for. */
  readonly found: readonly Found[] | null;
  readonly onPick: (found: Found) => void;
  readonly say: Say;
}

export function LookFor({ text, onText, found, onPick, say }: Props) {
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
      {found && found.length > 0 && (
        <ul className="contents">
          {found.slice(0, LISTED).map((each) => (
            <li key={each.ref}>
              <button type="button" className="button plain" onClick={() => onPick(each)}>
                {say(
                  phrase('unit.hit', {
                    part: phrase(`unit.${partOf(each.ref)}`),
                    what: calledAs(each),
                    alias: each.alias ?? 'none',
                  }),
                )}
              </button>
            </li>
          ))}
        </ul>
      )}
    </form>
  );
}
