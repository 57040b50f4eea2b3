/** "The data is wrong": a note on one question, kept on the device until it goes along with a report. */
import { useState } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Question } from '../../core/questions/question.ts';
import { makeReference } from '../../core/questions/reference.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';

/** Letters a note may have: what a report can carry. */
const LONGEST = 2000;

export function FlagForm({ question, say }: { question: Question; say: Say }) {
  const { store, now, newId } = useServices();
  const [note, setNote] = useState('');
  const [raised, setRaised] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const raise = async () => {
    const id = newId();
    const { deck, family, fact, seed } = question;
    const kept = await store.classroom.raiseFlag({
      id,
      deck: deck.id,
      revision: deck.revision,
      family,
      fact,
      seed,
      note: note.trim().slice(0, LONGEST),
      at: now().at,
    });
    setTrouble(kept.ok ? null : kept.error);
    if (kept.ok) setRaised(id);
  };
  const takeBack = async () => {
    const back = await store.classroom.takeFlagBack(raised!);
    setTrouble(back.ok ? null : back.error);
    if (back.ok) setRaised(null);
  };
  return (
    <>
      <p>{say(phrase('flag.trust'))}</p>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      {raised === null ? (
        <form
          className="field"
          onSubmit={(event) => {
            event.preventDefault();
            if (note.trim() !== '') void raise();
          }}
        >
          <label className="field">
            <span>{say(phrase('flag.note'))}</span>
            <textarea
              rows={3}
              maxLength={LONGEST}
              value={note}
              onChange={(event) => setNote(event.target.value)}
            />
          </label>
          <button type="submit" className="button" aria-disabled={note.trim() === ''}>
            {say(phrase('flag.raise'))}
          </button>
        </form>
      ) : (
        <div className="note" role="status">
          <p>{say(phrase('flag.raised'))}</p>
          <button type="button" className="button plain" onClick={() => void takeBack()}>
            {say(phrase('flag.take-back'))}
          </button>
        </div>
      )}
      <p className="aside">{say(phrase('flag.reference', { reference: makeReference(question) }))}</p>
    </>
  );
}
