/** Every revision that was handed out, and what is different now: in sentences, field by field. */
import { useState } from 'react';
import { differencePhrase, differencesBetween } from '../../core/deck-merge/differences.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Deck } from '../../core/unit/deck.ts';
import type { DeckDraft } from '../../core/workshop/draft.ts';
import { finishDraft } from '../../core/workshop/finish.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import type { SectionProps } from './desk.ts';
import { deckIn, knownRevisions } from './publish.ts';
import { Variant } from './Variant.tsx';

export function RevisionSection({ desk }: SectionProps) {
  return (
    <>
      {desk.draft.variantOf && (
        <>
          <h3>{desk.say(phrase('variant.heading'))}</h3>
          <Variant desk={desk} />
        </>
      )}
      <Revisions desk={desk} />
    </>
  );
}

function Revisions({ desk }: SectionProps) {
  const services = useServices();
  const { settled, say } = desk;
  const now = finishDraft(settled) as unknown as Deck;
  const known = useLoaded(() => knownRevisions(services, String(settled.id ?? '')), String(settled.id ?? ''));
  const [against, setAgainst] = useState<number | null>(null);
  if (!known) return null;
  if (!known.ok) return <TroubleNote trouble={known.error} say={say} />;
  const revisions = known.value.toSorted((a, b) => b.revision - a.revision);
  const shown = revisions.find(({ revision }) => revision === against) ?? revisions[0];
  if (!shown) return <p>{say(phrase('workshop.no-revision'))}</p>;
  const differences = differencesBetween(deckIn(shown.text), now);
  return (
    <>
      <fieldset className="answer">
        <legend>{say(phrase('workshop.compare-with'))}</legend>
        <div className="choices short">
          {revisions.map(({ revision }) => (
            <label key={revision} className="choice slim">
              <input
                type="radio"
                name="revision"
                checked={revision === shown.revision}
                onChange={() => setAgainst(revision)}
              />
              <span>{say(phrase('workshop.revision', { revision }))}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <p role="status">{say(phrase('workshop.differences', { count: differences.length }))}</p>
      <ul className="steps">
        {differences.map((difference) => {
          const words = say(differencePhrase(difference));
          return <li key={words}>{words}</li>;
        })}
      </ul>
      <button
        type="button"
        className="button plain"
        aria-disabled={differences.length === 0}
        onClick={() =>
          differences.length > 0 &&
          desk.replace({ ...deckIn(shown.text), revision: settled.revision } as DeckDraft)
        }
      >
        {say(phrase('workshop.back-to', { revision: shown.revision }))}
      </button>
    </>
  );
}
