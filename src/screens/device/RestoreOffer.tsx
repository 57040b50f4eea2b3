/** A backup that came in: what is in it, and on a press it is put in. */
import { useState } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { ReceivedBackup } from '../../exchange/backup.ts';
import { troublePhrase } from '../../exchange/trouble.ts';
import type { Added } from '../../storage/backup.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { LOCALES } from '../../words/figures.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { offerOf } from './restoring.ts';

interface Props {
  readonly received: ReceivedBackup;
  /** Called when it was put in. */
  readonly onChange: () => void;
}

export function RestoreOffer({ received, onChange }: Props) {
  const { store, sayFor, language } = useServices();
  const say = sayFor(null);
  const [added, setAdded] = useState<Added | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const [busy, setBusy] = useState(false);
  const key = `${received.madeAt} ${JSON.stringify(received.contents.learner ?? null)}`;
  const offer = useLoaded(() => offerOf(received), key);
  const own = useLoaded(() => store.classroom.learner(), key);
  if (!offer || !own) return <p className="aside">{say(phrase('device.reading'))}</p>;
  if (!offer.ok)
    return (
      <p className="note" role="alert">
        {say(troublePhrase(offer.error))}
      </p>
    );
  const { contents, madeAt, leftOut } = offer.value;
  const { learner } = contents;
  const here = own.ok ? own.value : undefined;
  const another = learner && here && learner.id !== here.id;
  const putIn = async () => {
    setBusy(true);
    const told = await store.restore(contents);
    setBusy(false);
    setTrouble(told.ok ? null : told.error);
    if (!told.ok) return;
    setAdded(told.value);
    onChange();
  };
  if (added)
    return (
      <section className="note" role="status">
        <p>{say(phrase('device.restored', { ...added }))}</p>
      </section>
    );
  return (
    <section className="frame" aria-label={say(phrase('device.offer-title'))}>
      <h2>{say(phrase('device.offer-title'))}</h2>
      <p>
        {say(
          phrase('device.offer', {
            made: new Date(madeAt).toLocaleString(LOCALES[language], {
              dateStyle: 'long',
              timeStyle: 'short',
            }),
            named: learner ? 'yes' : 'no',
            name: learner?.name ?? '',
            answers: contents.attempts.length,
            decks: contents.decks.length,
          }),
        )}
      </p>
      {leftOut.length > 0 && <p className="note">{say(phrase('device.left-out', { decks: leftOut }))}</p>}
      {another && (
        <p className="note" role="alert">
          {say(phrase('device.another-person', { theirs: learner.name, own: here.name }))}
        </p>
      )}
      <p className="aside">{say(phrase('device.offer-joins'))}</p>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      <button type="button" className="button key" aria-busy={busy || undefined} onClick={() => void putIn()}>
        {say(phrase('device.put-in'))}
      </button>
    </section>
  );
}
