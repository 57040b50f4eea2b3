/** Offers a new version where no drill is under way; nothing at all as long as there is none. */
import { useState, useSyncExternalStore } from 'react';
import { say as phrase } from '../core/questions/phrase.ts';
import type { Say } from '../words/words.ts';
import { useServices } from './services.ts';

export function VersionNote({ say }: { say: Say }) {
  const { newVersion } = useServices();
  const waits = useSyncExternalStore(newVersion.subscribe, newVersion.isWaiting);
  const [held, setHeld] = useState(false);
  if (!waits) return null;
  const take = async () => setHeld(!(await newVersion.take()));
  return (
    <section className="note" role="status">
      <p>{say(phrase(held ? 'version.held' : 'version.waits'))}</p>
      <button type="button" className="button" onClick={() => void take()}>
        {say(phrase('version.take'))}
      </button>
    </section>
  );
}
