/** Sets, changes or takes off a PIN. What is there now is asked for first. */
import { type FormEvent, useState } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Result } from '../../core/result.ts';
import { canKeepPins, isPin } from '../../storage/learners/pin.ts';
import type { PinTry } from '../../storage/learners/registry.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Say } from '../../words/words.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { pinPhrase } from './pin-phrase.ts';

interface Props {
  readonly say: Say;
  readonly has: boolean;
  readonly words: {
    readonly set: Phrase;
    readonly off: Phrase;
    readonly isSet: Phrase;
    readonly isOff: Phrase;
  };
  readonly tryPin: (pin: string) => Promise<Result<PinTry, StoreTrouble>>;
  readonly setPin: (pin: string | null) => Promise<Result<void, StoreTrouble>>;
}

const EMPTY = { now: '', fresh: '', repeated: '' };

export function SetPin({ say, has, words, tryPin, setPin }: Props) {
  const [fields, setFields] = useState(EMPTY);
  const [said, setSaid] = useState<Phrase | null>(null);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  if (!canKeepPins()) return <p>{say(phrase('pin.no-crypto'))}</p>;

  const put = async (pin: string | null) => {
    setBusy(true);
    setSaid(phrase(pin === null ? 'pin.checking' : 'own.pin-saving'));
    const tried = has ? await tryPin(fields.now) : null;
    const right = tried === null || (tried.ok && tried.value.kind === 'right');
    const done = right ? await setPin(pin) : null;
    setBusy(false);
    const failed = tried && !tried.ok ? tried : done && !done.ok ? done : null;
    setTrouble(failed?.error ?? null);
    if (failed) return setSaid(null);
    if (tried?.ok && tried.value.kind !== 'right') return setSaid(pinPhrase(tried.value));
    setFields(EMPTY);
    setSaid(pin === null ? words.isOff : words.isSet);
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (busy) return;
    if (!isPin(fields.fresh)) return setSaid(phrase('pin.empty'));
    if (fields.fresh !== fields.repeated) return setSaid(phrase('own.pin-differ'));
    void put(fields.fresh);
  };
  const field = (name: keyof typeof EMPTY, label: Phrase) => (
    <label className="field">
      <span>{say(label)}</span>
      <input
        type="password"
        inputMode="numeric"
        autoComplete="off"
        maxLength={8}
        value={fields[name]}
        onChange={(event) => setFields({ ...fields, [name]: event.target.value.replace(/\D/g, '') })}
      />
    </label>
  );
  return (
    <form className="unit-part" onSubmit={submit}>
      <div className="fields">
        {has && field('now', phrase('own.pin-now'))}
        {field('fresh', phrase('own.pin-new'))}
        {field('repeated', phrase('own.pin-again'))}
      </div>
      <div className="row-of-buttons">
        <button type="submit" className="button" aria-disabled={busy}>
          {say(has ? phrase('own.pin-change') : words.set)}
        </button>
        {has && (
          <button
            type="button"
            className="button plain"
            aria-disabled={busy}
            onClick={() => {
              if (!busy) void put(null);
            }}
          >
            {say(words.off)}
          </button>
        )}
      </div>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      <p role="status">{said && say(said)}</p>
    </form>
  );
}
