/** Asks for a PIN, tells a wrong one, and makes the next try wait where it has to. */
import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Result } from '../../core/result.ts';
import type { PinTry } from '../../storage/learners/registry.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Say } from '../../words/words.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { pinPhrase } from './pin-phrase.ts';

interface Props {
  readonly title: Phrase;
  readonly say: Say;
  readonly tryPin: (pin: string) => Promise<Result<PinTry, StoreTrouble>>;
  readonly onRight: () => void;
  readonly onBack?: (() => void) | undefined;
}

export function PinForm({ title, say, tryPin, onRight, onBack }: Props) {
  const [pin, setPin] = useState('');
  const [looking, setLooking] = useState(false);
  const [said, setSaid] = useState<Phrase | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const field = useRef<HTMLInputElement>(null);
  const note = useId();
  const waking = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(waking.current), []);
  useEffect(() => field.current?.focus(), []);

  const enter = async (event: FormEvent) => {
    event.preventDefault();
    if (looking) return;
    if (pin === '') return setSaid(phrase('pin.empty'));
    setLooking(true);
    setSaid(null);
    const tried = await tryPin(pin);
    setLooking(false);
    setPin('');
    field.current?.focus();
    setTrouble(tried.ok ? null : tried.error);
    if (!tried.ok) return;
    if (tried.value.kind === 'right') return onRight();
    setSaid(pinPhrase(tried.value));
    clearTimeout(waking.current);
    if (tried.value.waitMs > 0)
      waking.current = setTimeout(() => setSaid(phrase('pin.may-try')), tried.value.waitMs);
  };
  return (
    <form className="frame pin-form" onSubmit={(event) => void enter(event)}>
      <h2>{say(title)}</h2>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      <label className="field">
        <span>{say(phrase('pin.field'))}</span>
        <input
          ref={field}
          type="password"
          inputMode="numeric"
          autoComplete="off"
          maxLength={8}
          value={pin}
          aria-describedby={note}
          onChange={(event) => setPin(event.target.value.replace(/\D/g, ''))}
        />
      </label>
      <p id={note} role="status">
        {looking ? say(phrase('pin.checking')) : said && say(said)}
      </p>
      <div className="row-of-buttons">
        <button type="submit" className="button key" aria-disabled={looking}>
          {say(phrase('pin.enter'))}
        </button>
        {onBack && (
          <button type="button" className="button plain" onClick={onBack}>
            {say(phrase('pin.back'))}
          </button>
        )}
      </div>
    </form>
  );
}
