/** One learner has the device alone: his name and a second one make it a shared one. Nothing that is stored moves. */
import { type FormEvent, useState } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import { readName } from '../../storage/learners/name.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { nameFault } from './name-fault.ts';
import type { Sharing } from './sharing.ts';

function Fields({ sharing, known, say }: { sharing: Sharing; known: string; say: Say }) {
  const { now } = useServices();
  const [first, setFirst] = useState(known);
  const [second, setSecond] = useState('');
  const [said, setSaid] = useState<Phrase | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const found = async (event: FormEvent) => {
    event.preventDefault();
    for (const typed of [first, second]) if (readName(typed) === null) return setSaid(nameFault(typed));
    const registry = await sharing.registry();
    const founded = await registry.found(readName(first)!, readName(second)!, now().at);
    setTrouble(founded.ok ? null : founded.error);
    if (!founded.ok) return setSaid(null);
    if (founded.value === null) return setSaid(phrase('shop.fault.taken'));
    // What this page shows is the first one's: he stays in.
    sharing.enter(founded.value.first);
  };
  const field = (label: Phrase, value: string, onType: (typed: string) => void) => (
    <label className="field">
      <span>{say(label)}</span>
      <input type="text" autoComplete="off" value={value} onChange={(event) => onType(event.target.value)} />
    </label>
  );
  return (
    <form className="frame" onSubmit={(event) => void found(event)}>
      <p>{say(phrase('shop.about-one'))}</p>
      <div className="fields">
        {field(phrase('shop.first'), first, setFirst)}
        {field(phrase('shop.second'), second, setSecond)}
      </div>
      <button type="submit" className="button key">
        {say(phrase('shop.share'))}
      </button>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      <p role="status">{said && say(said)}</p>
    </form>
  );
}

export function FoundForm({ sharing, say }: { sharing: Sharing; say: Say }) {
  const { store } = useServices();
  const known = useLoaded(() => store.classroom.learner(), 'learner');
  if (!known) return null;
  return <Fields sharing={sharing} known={(known.ok && known.value?.name) || ''} say={say} />;
}
