/**
 * Everything that can be handed over comes in here: files, pictures of codes, the camera, a pasted link, and the
 * word behind the "#/take/" of the page's own address. Each thing is told apart by what is in it.
 */
import { type ChangeEvent, useCallback, useEffect, useRef, useState } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Result } from '../../core/result.ts';
import { MAX_BACKUP } from '../../exchange/backup.ts';
import { type Chain, missingPieces } from '../../exchange/chain.ts';

import type { Received } from '../../exchange/message.ts';
import { readCode } from '../../exchange/qr.ts';
import { type ExchangeTrouble, trouble, troublePhrase } from '../../exchange/trouble.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { Camera } from './Camera.tsx';
import { takeIn } from './intake.ts';
import { pixelsOfFile } from './picture.ts';
import './handing.css';

interface Props {
  readonly say: Say;
  /** What to do, in a sentence. */
  readonly how: Phrase;
  /** The word of a link that the page was opened with. */
  readonly word?: string | undefined;
  readonly onReceived: (received: Received) => void | Promise<void>;
}

interface Refused {
  readonly from: string;
  readonly why: ExchangeTrouble;
}

const isPicture = (file: File) => file.type.startsWith('image/');

/** The text of the code in a picture, or the bytes of any other file. */
async function contentOf(file: File): Promise<Result<string | Uint8Array<ArrayBuffer>, ExchangeTrouble>> {
  if (isPicture(file)) {
    const pixels = await pixelsOfFile(file);
    return pixels.ok ? readCode(pixels.value) : pixels;
  }
  // Nothing of it is read that would be refused for its size.
  if (file.size > MAX_BACKUP) return { ok: false, error: trouble('too-large') };
  return { ok: true, value: new Uint8Array(await file.arrayBuffer()) };
}

export function Receive({ say, how, word, onReceived }: Props) {
  const { store } = useServices();
  const [chain, setChain] = useState<Chain | null>(null);
  const [refused, setRefused] = useState<readonly Refused[]>([]);
  const [pasted, setPasted] = useState('');
  const [looking, setLooking] = useState(false);
  // Things come one after the other, however quickly they are given: each needs the chain the last one left.
  const queue = useRef<Promise<unknown>>(Promise.resolve());
  const current = useRef<Chain | null>(null);
  const seen = useRef('');
  const receive = useRef(onReceived);
  receive.current = onReceived;

  const take = useCallback(
    (from: string, content: () => Promise<Result<string | Uint8Array<ArrayBuffer>, ExchangeTrouble>>) => {
      queue.current = queue.current.then(async () => {
        const given = await content();
        const taken = given.ok ? await takeIn(given.value, current.current) : given;
        if (!taken.ok) return setRefused((before) => [...before, { from, why: taken.error }]);
        if (taken.value.chain !== current.current) {
          current.current = taken.value.chain;
          setChain(taken.value.chain);
          await store.classroom.keepChain(taken.value.chain);
        }
        if (!taken.value.received) return;
        setLooking(false);
        await receive.current(taken.value.received);
      });
    },
    [store],
  );
  const takeText = useCallback(
    (from: string, text: string) => take(from, async () => ({ ok: true, value: text })),
    [take],
  );

  useEffect(() => {
    let wanted = true;
    queue.current = store.classroom.pendingChain().then((kept) => {
      if (!wanted) return;
      current.current = (kept.ok && kept.value) || null;
      setChain(current.current);
    });
    if (word) takeText('', word);
    return () => {
      wanted = false;
    };
  }, [store, word, takeText]);

  const files = (event: ChangeEvent<HTMLInputElement>) => {
    setRefused([]);
    for (const file of event.target.files ?? []) take(file.name, () => contentOf(file));
    event.target.value = '';
  };
  const code = (text: string) => {
    if (text === seen.current) return;
    seen.current = text;
    setRefused([]);
    takeText('', text);
  };
  const startOver = () => {
    current.current = null;
    seen.current = '';
    setChain(null);
    setRefused([]);
    void store.classroom.keepChain(null);
  };
  const missing = chain ? missingPieces(chain) : [];
  return (
    <section className="frame">
      <p>{say(how)}</p>
      <div className="row-of-buttons">
        <label className="button file-button">
          {say(phrase('handing.files'))}
          <input
            type="file"
            multiple
            accept=".json,.gz,.txt,application/json,application/gzip,text/plain,image/*"
            className="unseen"
            onChange={files}
          />
        </label>
        {!looking && (
          <button type="button" className="button" onClick={() => setLooking(true)}>
            {say(phrase('handing.camera'))}
          </button>
        )}
      </div>
      {looking && <Camera say={say} onText={code} onClose={() => setLooking(false)} />}
      {chain && (
        <div className="note" role="status">
          <p>
            {say(
              phrase('handing.codes-read', {
                read: chain.of - missing.length,
                of: chain.of,
                missing: missing.map(String),
              }),
            )}
          </p>
          <button type="button" className="button plain" onClick={startOver}>
            {say(phrase('handing.start-over'))}
          </button>
        </div>
      )}
      {refused.length > 0 && (
        <div className="note" role="alert">
          <ul className="steps">
            {refused.map(({ from, why }, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: entries are only ever added at the end
              <li key={index}>
                {from && <strong>{from}: </strong>}
                {say(troublePhrase(why))}
              </li>
            ))}
          </ul>
        </div>
      )}
      <form
        className="field"
        onSubmit={(event) => {
          event.preventDefault();
          setRefused([]);
          takeText('', pasted);
          setPasted('');
        }}
      >
        <label className="field">
          <span>{say(phrase('handing.paste'))}</span>
          <textarea rows={2} value={pasted} onChange={(event) => setPasted(event.target.value)} />
        </label>
        <button type="submit" className="button">
          {say(phrase('handing.read'))}
        </button>
      </form>
    </section>
  );
}
