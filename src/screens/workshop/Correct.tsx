/** After a deck was put right: who still has it wrong, what was wrong, and the correction to hand to them. */
import { useId, useState } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { HandOver } from '../handing/HandOver.tsx';
import { fileName } from '../handing/save-file.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { assignmentsBehind, type Corrected, handOutCorrection } from './correct.ts';
import type { SectionProps } from './desk.ts';

export function Correct({ desk, deckId }: SectionProps & { readonly deckId: string }) {
  const services = useServices();
  const { say } = desk;
  const field = useId();
  const [note, setNote] = useState('');
  const [done, setDone] = useState<Corrected | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const behind = useLoaded(() => assignmentsBehind(services, deckId), deckId);
  const hand = async () => {
    if (!behind?.ok || !behind.value) return;
    const handed = await handOutCorrection(services, behind.value, note.trim());
    setTrouble(handed.ok ? null : handed.error);
    if (handed.ok) setDone(handed.value);
  };
  if (!behind) return null;
  if (!behind.ok) return <TroubleNote trouble={behind.error} say={say} />;
  if (!behind.value || (behind.value.assignments.length === 0 && !done)) return null;
  const { assignments, revision } = behind.value;
  return (
    <section className="frame">
      <h3>{say(phrase('fix.correction'))}</h3>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      {!done && (
        <>
          <p>
            {say(
              phrase('fix.behind', {
                groups: assignments.map(({ assignment }) => assignment.group),
                count: assignments.length,
                revision,
              }),
            )}
          </p>
          <div className="field">
            <label htmlFor={field}>{say(phrase('fix.wrong'))}</label>
            <textarea
              id={field}
              rows={2}
              maxLength={2000}
              value={note}
              onChange={({ target }) => setNote(target.value)}
            />
          </div>
          <button
            type="button"
            className="button key"
            aria-disabled={note.trim() === ''}
            onClick={() => note.trim() !== '' && void hand()}
          >
            {say(phrase('fix.hand-out'))}
          </button>
        </>
      )}
      {done && (
        <>
          <p role="status">
            {say(
              phrase('fix.done', {
                facts: new Set(done.corrections.flatMap(({ facts }) => facts)).size,
                count: done.reissued.length,
              }),
            )}
          </p>
          {done.reissued.map(({ group, issue, text }) => (
            <HandOver
              key={`${group}/${issue}`}
              text={text}
              file={fileName('assignment', deckId, group, `${issue}`)}
              title={say(phrase('fix.for-group', { group }))}
              say={say}
            />
          ))}
        </>
      )}
    </section>
  );
}
