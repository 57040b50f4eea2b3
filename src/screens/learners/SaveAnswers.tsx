/** Offers one learner's answers as a file. */
import { useState } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Result } from '../../core/result.ts';
import type { Store } from '../../storage/store.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Say } from '../../words/words.ts';
import { fileName, saveFile } from '../handing/save-file.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { answersFile } from './answers-file.ts';

interface Props {
  readonly label: Phrase;
  readonly name: string;
  /** Null when he is no longer on the device. */
  readonly storeOf: () => Promise<Result<Store | null, StoreTrouble>>;
  readonly say: Say;
}

export function SaveAnswers({ label, name, storeOf, say }: Props) {
  const [saved, setSaved] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const save = async () => {
    const store = await storeOf();
    const text = store.ok ? store.value && (await answersFile(store.value, name)) : store;
    if (text === null) return;
    setTrouble(text.ok ? null : text.error);
    if (!text.ok) return;
    const file = `${fileName('detent', name)}.json`;
    saveFile(file, text.value, 'application/json');
    setSaved(file);
  };
  return (
    <div className="unit-part">
      <button type="button" className="button" onClick={() => void save()}>
        {say(label)}
      </button>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      <p role="status">{saved !== null && say(phrase('own.data-saved', { file: saved }))}</p>
    </div>
  );
}
