/** One page as a drawing sheet: a line at the top, the body, the title block at the foot. */
import type { ReactNode } from 'react';
import { say as phrase } from '../core/questions/phrase.ts';
import type { Unit } from '../core/unit/unit.ts';
import type { Say } from '../words/words.ts';

interface Props {
  readonly top: ReactNode;
  readonly children: ReactNode;
  readonly titleBlock?: readonly { readonly head: string; readonly value: string }[];
  readonly className?: string;
}

export function Sheet({ top, children, titleBlock, className = '' }: Props) {
  return (
    <div className={`sheet ${className}`}>
      <header className="sheet-top">{top}</header>
      <main className="sheet-main">{children}</main>
      {titleBlock && (
        <footer>
          <dl className="title-block">
            {titleBlock.map(({ head, value }) => (
              <div key={head}>
                <dt>{head}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
        </footer>
      )}
    </div>
  );
}

/** Unit, deck and revision: what a drawing sheet says of itself. */
export function titleBlockOf({ deck }: Unit, say: Say) {
  return [
    { head: say(phrase('block.unit')), value: deck.unit },
    { head: say(phrase('block.deck')), value: deck.title },
    { head: say(phrase('block.revision')), value: String(deck.revision) },
  ];
}
