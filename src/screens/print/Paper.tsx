/** One document for paper: what it is, of which unit and revision, printed when, and whose word comes first. */
import type { ReactNode } from 'react';
import { dateOfDay } from '../../core/memory/day.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import './print.css';

export const PAPERS = ['a4', 'letter'] as const;
export type PaperSize = (typeof PAPERS)[number];

interface Props {
  readonly title: string;
  /** Under the title: for whom, the sheet's number. */
  readonly line?: string;
  readonly size: PaperSize;
  readonly unit: Unit;
  readonly say: Say;
  /** Bench sheets are set larger: they are read from where the hands are. */
  readonly kind: 'bench' | 'work' | 'key';
  readonly children: ReactNode;
}

export function Paper({ title, line, size, unit, say, kind, children }: Props) {
  const { now } = useServices();
  const { deck } = unit;
  return (
    <article className={`paper paper-${size} paper-${kind}`} aria-label={line ? `${title}, ${line}` : title}>
      <header className="paper-head">
        <h2>{title}</h2>
        {line && <p>{line}</p>}
        <p className="provenance">
          {say(
            phrase('print.head', {
              unit: deck.unit,
              deck: deck.title,
              revision: deck.revision,
              on: dateOfDay(now().day),
            }),
          )}
        </p>
      </header>
      {children}
      <p className="paper-foot">{say(phrase('app.standing-line'))}</p>
    </article>
  );
}

/** The choice between the two sizes, and the button that prints. */
export function PrintBar({
  size,
  onSize,
  say,
}: {
  size: PaperSize;
  onSize: (size: PaperSize) => void;
  say: Say;
}) {
  return (
    <>
      <fieldset className="answer">
        <legend>{say(phrase('print.size'))}</legend>
        <div className="choices">
          {PAPERS.map((one) => (
            <label key={one} className="choice">
              <input type="radio" name="paper" checked={size === one} onChange={() => onSize(one)} />
              <span>{say(phrase(`print.size.${one}`))}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <button type="button" className="button key" onClick={() => window.print()}>
        {say(phrase('handing.print'))}
      </button>
    </>
  );
}
