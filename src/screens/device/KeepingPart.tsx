/** Whether the browser promised to keep what is stored, told plainly, and how much room there is. */
import { useState } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { StorageState } from '../../storage/persistence.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';

const megabytes = (bytes: number) => Math.max(0.1, Math.round(bytes / 100_000) / 10);
const gigabytes = (bytes: number) => Math.max(0.1, Math.floor(bytes / 100_000_000) / 10);

const toldOf = ({ keeping, asked }: StorageState) =>
  keeping === 'not-promised' && !asked ? 'not-asked' : keeping;

export function KeepingPart({ say }: { say: Say }) {
  const { store } = useServices();
  const [version, setVersion] = useState(0);
  const state = useLoaded(() => store.storageState(), String(version));
  const ask = () => void store.askPersistence(true).then(() => setVersion((before) => before + 1));
  return (
    <section className="frame" aria-live="polite">
      <h2>{say(phrase('device.keeping'))}</h2>
      {state && !state.ok && <TroubleNote trouble={state.error} say={say} />}
      {state?.ok && (
        <>
          <p>{say(phrase(`device.keeping.${toldOf(state.value)}`))}</p>
          {state.value.used !== null && state.value.room !== null && (
            <p className="aside">
              {say(
                phrase('device.room', {
                  used: megabytes(state.value.used),
                  room: gigabytes(state.value.room),
                }),
              )}
            </p>
          )}
          {state.value.keeping === 'not-promised' && (
            <button type="button" className="button" onClick={ask}>
              {say(phrase('device.ask'))}
            </button>
          )}
        </>
      )}
      <p className="aside">{say(phrase('device.where'))}</p>
    </section>
  );
}
