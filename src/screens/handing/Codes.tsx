/** QR codes of a message: one at a time on the screen, all of them on paper. */
import { useEffect, useState } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import { linkTo } from '../../exchange/link.ts';
import { makeCode } from '../../exchange/qr.ts';
import type { Say } from '../../words/words.ts';
import { useLoaded } from '../use-loaded.ts';

interface Props {
  /** The words of the codes, in their order. */
  readonly words: readonly string[];
  /** Address of the app: a code is a link, so that a phone's own camera opens it. */
  readonly page: string;
  readonly title: string;
  readonly say: Say;
}

function CodePicture({ word, page, label }: { word: string; page: string; label: string }) {
  const code = useLoaded(() => makeCode(linkTo(page, word)), word);
  if (!code) return <div className="code-picture" />;
  return (
    <svg
      className="code-picture"
      viewBox={`0 0 ${code.size} ${code.size}`}
      shapeRendering="crispEdges"
      role="img"
      aria-label={label}
    >
      <rect width={code.size} height={code.size} fill="#fff" />
      <path d={code.path} fill="#000" />
    </svg>
  );
}

/** Seconds each code is shown when they change by themselves. */
const SHOWN_S = 3;

export function Codes({ words, page, title, say }: Props) {
  const [place, setPlace] = useState(0);
  const [running, setRunning] = useState(false);
  const [onPaper, setOnPaper] = useState(false);
  const count = words.length;
  const label = (index: number) => say(phrase('handing.code', { number: index + 1, of: count }));
  useEffect(() => {
    if (!running) return;
    const timer = setInterval(() => setPlace((before) => (before + 1) % count), SHOWN_S * 1000);
    return () => clearInterval(timer);
  }, [running, count]);
  const turn = (by: number) => {
    setRunning(false);
    setPlace((place + by + count) % count);
  };
  return (
    <>
      {count > 1 && <p>{say(phrase('handing.chain', { count }))}</p>}
      <figure className="code">
        <CodePicture word={words[place]!} page={page} label={label(place)} />
        {count > 1 && <figcaption>{label(place)}</figcaption>}
      </figure>
      <div className="row-of-buttons">
        {count > 1 && (
          <>
            <button type="button" className="button" onClick={() => turn(-1)}>
              {say(phrase('handing.code-back'))}
            </button>
            <button type="button" className="button" onClick={() => turn(1)}>
              {say(phrase('handing.code-next'))}
            </button>
            <button
              type="button"
              className="button plain"
              aria-pressed={running}
              onClick={() => setRunning(!running)}
            >
              {say(phrase('handing.codes-run', { seconds: SHOWN_S }))}
            </button>
          </>
        )}
        <button type="button" className="button plain" onClick={() => setOnPaper(!onPaper)}>
          {say(phrase(onPaper ? 'handing.codes-off-paper' : 'handing.codes-on-paper'))}
        </button>
      </div>
      {onPaper && (
        <section className="paper codes-on-paper">
          <h2>{title}</h2>
          <p>{say(phrase('handing.paper-how', { count }))}</p>
          <div className="codes">
            {words.map((word, index) => (
              <figure key={word} className="code">
                <CodePicture word={word} page={page} label={label(index)} />
                <figcaption>{label(index)}</figcaption>
              </figure>
            ))}
          </div>
          <button type="button" className="button no-print" onClick={() => window.print()}>
            {say(phrase('handing.print'))}
          </button>
        </section>
      )}
    </>
  );
}
