/** One file with everything of one's own, and codes for a new phone where it is small enough. */
import { useState } from 'react';
import { dateOfDay } from '../../core/memory/day.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { backupFile, writeBackup } from '../../exchange/backup.ts';
import { cutPacket } from '../../exchange/chain.ts';
import { packText } from '../../exchange/packet.ts';
import { troublePhrase } from '../../exchange/trouble.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Say } from '../../words/words.ts';
import { Codes } from '../handing/Codes.tsx';
import { saveFile } from '../handing/save-file.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import '../handing/handing.css';

function BackupCodes({ text, say }: { text: string; say: Say }) {
  const words = useLoaded(async () => cutPacket(await packText(text)), text);
  if (!words) return <p className="aside">{say(phrase('device.reading'))}</p>;
  if (!words.ok) return <p role="status">{say(troublePhrase(words.error))}</p>;
  return (
    <Codes
      words={words.value}
      page={window.location.href}
      title={say(phrase('device.codes-title'))}
      say={say}
    />
  );
}

export function BackupPart({ say }: { say: Say }) {
  const { store, now } = useServices();
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const [saved, setSaved] = useState<string | null>(null);
  const [codes, setCodes] = useState<string | null>(null);
  const [withDecks, setWithDecks] = useState(true);

  const textOf = async (decks: boolean) => {
    const { at } = now();
    const contents = await store.backup();
    setTrouble(contents.ok ? null : contents.error);
    if (!contents.ok) return null;
    return writeBackup(decks ? contents.value : { ...contents.value, decks: [], revisions: [] }, at);
  };
  const save = async () => {
    const text = await textOf(true);
    if (text === null) return;
    const name = `detent-${dateOfDay(now().day)}.json.gz`;
    saveFile(name, await backupFile(text), 'application/gzip');
    setSaved(name);
  };
  return (
    <>
      <section className="frame">
        <h2>{say(phrase('device.backup'))}</h2>
        <p>{say(phrase('device.backup-how'))}</p>
        <button type="button" className="button key" onClick={() => void save()}>
          {say(phrase('device.backup-save'))}
        </button>
        {saved !== null && <p role="status">{say(phrase('device.backup-saved', { file: saved }))}</p>}
        {trouble && <TroubleNote trouble={trouble} say={say} />}
        <p className="aside">{say(phrase('device.backup-without'))}</p>
      </section>
      <section className="frame">
        <h2>{say(phrase('device.new-phone'))}</h2>
        <p>{say(phrase('device.new-phone-how'))}</p>
        <label className="choice">
          <input
            type="checkbox"
            checked={withDecks}
            onChange={(event) => {
              setWithDecks(event.target.checked);
              setCodes(null);
            }}
          />
          <span>{say(phrase('device.codes-decks'))}</span>
        </label>
        <button type="button" className="button" onClick={() => void textOf(withDecks).then(setCodes)}>
          {say(phrase('device.codes'))}
        </button>
        {codes !== null && <BackupCodes text={codes} say={say} />}
      </section>
    </>
  );
}
