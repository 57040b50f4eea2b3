/** The decks on this device: use one, add one from a file, take one off. A faulty file changes nothing. */
import { type ChangeEvent, useState } from 'react';
import { Link } from 'wouter';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Deck } from '../../core/unit/deck.ts';
import type { StoredDeck } from '../../storage/rows.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';

interface Props {
  readonly inUse: string | undefined;
  /** Called when the decks or the choice of one have changed. */
  readonly onChange: () => void;
}

interface Told {
  readonly heading: Phrase;
  readonly findings: readonly Phrase[];
  readonly refused: boolean;
}

const titleOf = (stored: StoredDeck) => JSON.parse(stored.text) as Pick<Deck, 'title' | 'unit'>;

export function DecksScreen({ inUse, onChange }: Props) {
  const { store, now, sayFor } = useServices();
  const say = sayFor(null);
  const [version, setVersion] = useState(0);
  const [told, setTold] = useState<Told | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const decks = useLoaded(() => store.decks(), String(version));

  const after = (result: { ok: true } | { ok: false; error: StoreTrouble }) => {
    setTrouble(result.ok ? null : result.error);
    setVersion((before) => before + 1);
    onChange();
  };

  const add = async (event: ChangeEvent<HTMLInputElement>) => {
    const input = event.target;
    const [file] = input.files ?? [];
    if (!file) return;
    // Checking a file is rare on a phone, so its code is only loaded here.
    const { loadDeck, sentenceOf, textOfFile } = await import('../../content/index.ts');
    const text = await textOfFile(file);
    input.value = '';
    const loaded = loadDeck(text);
    if (!loaded.ok) {
      const count = loaded.error.length;
      setTold({
        heading: phrase('decks.refused', { count }),
        findings: loaded.error.map(sentenceOf),
        refused: true,
      });
      return;
    }
    const { deck, warnings } = loaded.value;
    const saved = await store.saveDeck({ id: deck.id, revision: deck.revision, text, loadedAt: now().at });
    if (saved.ok) {
      await store.chooseDeck(deck.id);
      setTold({
        heading: phrase('decks.added', { title: deck.title, revision: deck.revision }),
        findings: warnings.map(sentenceOf),
        refused: false,
      });
    }
    after(saved);
  };

  return (
    <Sheet
      top={
        <>
          <h1>{say(phrase('decks.title'))}</h1>
          <Link href="/">{say(phrase('app.back'))}</Link>
        </>
      }
    >
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      {decks && !decks.ok && <TroubleNote trouble={decks.error} say={say} />}
      {decks?.ok && decks.value.length === 0 && <p>{say(phrase('decks.none'))}</p>}
      {decks?.ok &&
        decks.value.map((stored) => {
          const { title, unit } = titleOf(stored);
          return (
            <section key={stored.id} className="frame">
              <h2>{title}</h2>
              <p className="aside">
                {unit}, {say(phrase('decks.revision', { revision: stored.revision }))}
                {stored.id === inUse && `, ${say(phrase('decks.in-use'))}`}
              </p>
              <div className="row-of-buttons">
                {stored.id !== inUse && (
                  <button
                    type="button"
                    className="button"
                    onClick={() => void store.chooseDeck(stored.id).then(after)}
                  >
                    {say(phrase('decks.use', { title: unit }))}
                  </button>
                )}
                <button
                  type="button"
                  className="button plain"
                  onClick={() => void store.removeDeck(stored.id).then(after)}
                >
                  {say(phrase('decks.remove', { title: unit }))}
                </button>
              </div>
            </section>
          );
        })}
      <section>
        <label className="button file-button">
          {say(phrase('decks.add'))}
          <input
            type="file"
            accept=".json,application/json"
            className="unseen"
            onChange={(event) => void add(event)}
          />
        </label>
        <p>
          <Link href="/workshop">{say(phrase('workshop.link'))}</Link>
        </p>
      </section>
      {told && (
        <section className="note" role="status">
          <h2>{say(told.heading)}</h2>
          {told.findings.length > 0 && (
            <>
              {!told.refused && <p>{say(phrase('decks.warnings'))}</p>}
              <ul className="steps">
                {told.findings
                  .map((finding) => say(finding))
                  .map((sentence) => (
                    <li key={sentence}>{sentence}</li>
                  ))}
              </ul>
            </>
          )}
        </section>
      )}
    </Sheet>
  );
}
