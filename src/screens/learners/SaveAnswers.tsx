/** Offers all of one learner as a backup file: what it holds can be put in on another device. */
import { useState } from 'react';
import { dateOfDay } from '../../core/memory/day.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Result } from '../../core/result.ts';
import { backupFile, writeBackup } from '../../exchange/backup.ts';
import type { Store } from '../../storage/store.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Say } from '../../words/words.ts';
import { fileName, saveFile } from '../handing/save-file.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';

interface Props {
  readonly label: Phrase;
  readonly name: string;
  /** Null when he is no longer on the device. */
  readonly storeOf: () => Promise<Result<Store | null, StoreTrouble>>;
  readonly say: Say;
}

export function SaveAnswers({ label, name, storeOf, say }: Props) {
  const { now } = useServices();
  const [saved, setSaved] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const save = async () => {
    const { at, day } = now();
    const store = await storeOf();
    const contents = store.ok ? store.value && (await store.value.backup()) : store;
    if (contents === null) return;
    setTrouble(contents.ok ? null : contents.error);
    if (!contents.ok) return;
    const file = `${fileName('detent', name, dateOfDay(day))}.json.gz`;
    saveFile(file, await backupFile(writeBackup(contents.value, at)), 'application/gzip');
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
