/** The names: add one, change one, take off a forgotten PIN, take a learner off the device. */
import { type FormEvent, useState } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Result } from '../../core/result.ts';
import { readName } from '../../storage/learners/name.ts';
import type { KnownLearner, Listing, Registry } from '../../storage/learners/registry.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { nameFault } from './name-fault.ts';
import { SaveAnswers } from './SaveAnswers.tsx';

interface Props {
  readonly listing: Listing;
  readonly registry: Registry;
  /** The one who is in. */
  readonly here: string | undefined;
  readonly say: Say;
}

interface OneProps {
  readonly learner: KnownLearner;
  readonly isHere: boolean;
  readonly registry: Registry;
  readonly say: Say;
  readonly tell: (result: Result<unknown, StoreTrouble>, said: Phrase) => void;
}

function OneLearner({ learner, isHere, registry, say, tell }: OneProps) {
  const { now } = useServices();
  const { id, name } = learner;
  const [typed, setTyped] = useState(name);
  const [sure, setSure] = useState(false);
  const hints = [...(isHere ? ['shop.here-now'] : []), ...(learner.hasPin ? ['names.with-pin'] : [])];
  const rename = async (event: FormEvent) => {
    event.preventDefault();
    const read = readName(typed);
    if (read === null) return tell({ ok: true, value: undefined }, nameFault(typed));
    const renamed = await registry.rename(id, read);
    const taken = renamed.ok && !renamed.value;
    tell(renamed, taken ? phrase('shop.fault.taken') : phrase('shop.renamed', { name: read }));
  };
  const remove = async () => {
    const removed = await registry.remove(id);
    tell(removed, removed.ok && !removed.value ? phrase('shop.held-up') : phrase('shop.removed', { name }));
  };
  return (
    <details className="name-fold">
      <summary>
        {name} <span className="aside">{hints.map((hint) => say(phrase(hint))).join(', ')}</span>
      </summary>
      <div className="unit-part">
        <form className="name-form" onSubmit={(event) => void rename(event)}>
          <label className="field">
            <span>{say(phrase('shop.rename'))}</span>
            <input
              type="text"
              autoComplete="off"
              value={typed}
              onChange={(event) => setTyped(event.target.value)}
            />
          </label>
          <button type="submit" className="button">
            {say(phrase('shop.rename-save'))}
          </button>
        </form>
        {learner.hasPin && (
          <>
            <p>{say(phrase('shop.pin-off-note', { name }))}</p>
            <button
              type="button"
              className="button"
              onClick={async () =>
                tell(await registry.takePinOff(id, now().at), phrase('shop.pin-is-off', { name }))
              }
            >
              {say(phrase('shop.pin-off', { name }))}
            </button>
          </>
        )}
        {sure ? (
          <div className="note unit-part">
            <p>{say(phrase('shop.remove-note'))}</p>
            <SaveAnswers
              label={phrase('shop.save-of', { name })}
              name={name}
              storeOf={() => registry.storeOf(id)}
              say={say}
            />
            <div className="row-of-buttons">
              <button type="button" className="button" onClick={() => void remove()}>
                {say(phrase('shop.remove-sure', { name }))}
              </button>
              <button type="button" className="button plain" onClick={() => setSure(false)}>
                {say(phrase('shop.remove-not', { name }))}
              </button>
            </div>
          </div>
        ) : (
          <button type="button" className="button plain" onClick={() => setSure(true)}>
            {say(phrase('shop.remove', { name }))}
          </button>
        )}
      </div>
    </details>
  );
}

export function NamesSection({ listing, registry, here, say }: Props) {
  const { now } = useServices();
  const [typed, setTyped] = useState('');
  const [said, setSaid] = useState<Phrase | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const tell = (result: Result<unknown, StoreTrouble>, then: Phrase) => {
    setTrouble(result.ok ? null : result.error);
    setSaid(result.ok ? then : null);
  };
  const add = async (event: FormEvent) => {
    event.preventDefault();
    const name = readName(typed);
    if (name === null) return tell({ ok: true, value: undefined }, nameFault(typed));
    const added = await registry.add(name, now().at);
    const taken = added.ok && added.value === null;
    if (added.ok && !taken) setTyped('');
    tell(added, taken ? phrase('shop.fault.taken') : phrase('shop.added', { name }));
  };
  return (
    <section className="unit-part learner-part">
      <h3>{say(phrase('shop.names'))}</h3>
      <div className="name-folds">
        {listing.learners.map((learner) => (
          <OneLearner
            key={learner.id}
            learner={learner}
            isHere={learner.id === here}
            registry={registry}
            say={say}
            tell={tell}
          />
        ))}
      </div>
      {listing.unreadable > 0 && <p>{say(phrase('names.unreadable', { count: listing.unreadable }))}</p>}
      <form className="name-form" onSubmit={(event) => void add(event)}>
        <label className="field">
          <span>{say(phrase('shop.new'))}</span>
          <input
            type="text"
            autoComplete="off"
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
          />
        </label>
        <button type="submit" className="button">
          {say(phrase('shop.add'))}
        </button>
      </form>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      <p role="status">{said && say(said)}</p>
    </section>
  );
}
