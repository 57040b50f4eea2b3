/** A message ready to be handed over: as a file, as a link, as codes. Nothing leaves the device by itself. */
import { useState } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import { cutPacket } from '../../exchange/chain.ts';
import { makeLink, SURE_LINK } from '../../exchange/link.ts';
import { packText } from '../../exchange/packet.ts';
import { troublePhrase } from '../../exchange/trouble.ts';
import type { Say } from '../../words/words.ts';
import { useLoaded } from '../use-loaded.ts';
import { Codes } from './Codes.tsx';
import { saveFile } from './save-file.ts';
import './handing.css';

interface Props {
  /** The message. */
  readonly text: string;
  /** Without its ending. */
  readonly file: string;
  readonly title: string;
  readonly say: Say;
}

function LinkPart({ link, say }: { link: string; say: Say }) {
  const [copied, setCopied] = useState<'no' | 'yes' | 'refused'>('no');
  const copy = () => {
    // Without a clipboard (a page over plain http) the link is still there to be selected.
    const copying = navigator.clipboard?.writeText(link) ?? Promise.reject(new Error('no clipboard'));
    copying.then(
      () => setCopied('yes'),
      () => setCopied('refused'),
    );
  };
  return (
    <>
      <label className="field">
        <span>{say(phrase('handing.link', { letters: link.length }))}</span>
        <input type="text" readOnly value={link} onFocus={(event) => event.target.select()} />
      </label>
      <button type="button" className="button" onClick={copy}>
        {say(phrase('handing.copy'))}
      </button>
      {copied !== 'no' && <p role="status">{say(phrase(`handing.copied-${copied}`))}</p>}
      {link.length > SURE_LINK && <p className="aside">{say(phrase('handing.link-long'))}</p>}
    </>
  );
}

export function HandOver({ text, file, title, say }: Props) {
  const page = window.location.href;
  const packet = useLoaded(() => packText(text), text);
  const link = packet === undefined ? undefined : makeLink(page, packet);
  const words = packet === undefined ? undefined : cutPacket(packet);
  return (
    <section className="frame" aria-label={title}>
      <h2>{title}</h2>
      <p className="aside">{say(phrase('handing.how'))}</p>
      <h3>{say(phrase('handing.as-file'))}</h3>
      <button
        type="button"
        className="button key"
        onClick={() => saveFile(`${file}.json`, text, 'application/json')}
      >
        {say(phrase('handing.save', { kilobytes: Math.max(1, Math.round(text.length / 1000)) }))}
      </button>
      <h3>{say(phrase('handing.as-link'))}</h3>
      {link && (link.ok ? <LinkPart link={link.value} say={say} /> : <p>{say(troublePhrase(link.error))}</p>)}
      <h3>{say(phrase('handing.as-codes'))}</h3>
      {words &&
        (words.ok ? (
          <Codes words={words.value} page={page} title={title} say={say} />
        ) : (
          <p>{say(troublePhrase(words.error))}</p>
        ))}
    </section>
  );
}
