/** End of term: everybody's answers offered as files first, then a word to be typed, then nothing is left. */
import { type FormEvent, useState } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Listing, Registry } from '../../storage/learners/registry.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Say } from '../../words/words.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { SaveAnswers } from './SaveAnswers.tsx';

interface Props {
  readonly listing: Listing;
  readonly registry: Registry;
  readonly say: Say;
}

export function WipeSection({ listing, registry, say }: Props) {
  const [typed, setTyped] = useState('');
  const [said, setSaid] = useState<Phrase | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const [busy, setBusy] = useState(false);
  const word = say(phrase('shop.wipe-word'));
  const wipe = async (event: FormEvent) => {
    event.preventDefault();
    if (busy) return;
    if (typed.trim().toLocaleUpperCase() !== word) return setSaid(phrase('shop.wipe-mistyped', { word }));
    setBusy(true);
    const wiped = await registry.wipe();
    setBusy(false);
    setTrouble(wiped.ok ? null : wiped.error);
    // Once all is gone the page starts afresh and this one is no longer there.
    setSaid(wiped.ok && !wiped.value ? phrase('shop.held-up') : null);
  };
  return (
    <details className="name-fold learner-part">
      <summary>{say(phrase('shop.wipe'))}</summary>
      <form className="unit-part" onSubmit={(event) => void wipe(event)}>
        <p>{say(phrase('shop.wipe-note'))}</p>
        <p>{say(phrase('shop.wipe-first'))}</p>
        {listing.learners.map(({ id, name }) => (
          <SaveAnswers
            key={id}
            label={phrase('shop.save-of', { name })}
            name={name}
            storeOf={() => registry.storeOf(id)}
            say={say}
          />
        ))}
        <label className="field">
          <span>{say(phrase('shop.wipe-type', { word }))}</span>
          <input
            type="text"
            autoComplete="off"
            autoCapitalize="characters"
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
          />
        </label>
        <button type="submit" className="button" aria-disabled={busy}>
          {say(phrase('shop.wipe-now', { count: listing.learners.length }))}
        </button>
        {trouble && <TroubleNote trouble={trouble} say={say} />}
        <p role="status">{said && say(said)}</p>
      </form>
    </details>
  );
}
