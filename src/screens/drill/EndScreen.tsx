/** What a drill came to: right of asked, minutes, and what got mixed up. Calm, whatever it was. */
import { useEffect, useRef } from 'react';
import { addToDays } from '../../core/ledger/days.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { mixedUp } from '../today/mixed-up.ts';
import { useLoaded } from '../use-loaded.ts';

interface Props {
  readonly unit: Unit;
  readonly say: Say;
  /** Id of the drill that ended. */
  readonly drill: string;
  readonly onClose: () => void;
}

export function EndScreen({ unit, say, drill, onClose }: Props) {
  const { store } = useServices();
  const heading = useRef<HTMLHeadingElement>(null);
  const told = useLoaded(() => store.attemptsIn(drill), drill);
  const loaded = told !== undefined;
  useEffect(() => {
    if (loaded) heading.current?.focus();
  }, [loaded]);
  if (!told) return null;
  if (!told.ok)
    return (
      <Sheet top={<strong>{unit.deck.unit}</strong>}>
        <TroubleNote trouble={told.error} say={say} />
      </Sheet>
    );
  const attempts = told.value;
  const right = attempts.filter((attempt) => attempt.right).length;
  const minutes = Math.max(1, Math.round(attempts.reduce((sum, { seconds }) => sum + seconds, 0) / 60));
  const mixed = mixedUp(addToDays(new Map(), attempts), attempts[0]?.day ?? 0);
  return (
    <Sheet top={<strong>{unit.deck.unit}</strong>} titleBlock={titleBlockOf(unit, say)}>
      <section className="frame">
        <h1 ref={heading} tabIndex={-1}>
          {say(phrase('end.title'))}
        </h1>
        <dl className="stat two">
          <div>
            <dt>{say(phrase('end.right-of', { asked: attempts.length }))}</dt>
            <dd>{right}</dd>
          </div>
          <div>
            <dt>{say(phrase('end.minutes', { minutes }))}</dt>
            <dd>{minutes}</dd>
          </div>
        </dl>
        <h2>{say(phrase('end.mixed-up'))}</h2>
        {mixed.length === 0 ? (
          <p>{say(phrase('end.none'))}</p>
        ) : (
          <ul className="steps">
            {mixed.map(({ slipUp, times }) => (
              <li key={slipUp}>
                {say(phrase(`slip-up.${slipUp}`))}{' '}
                <span className="aside">({say(phrase('today.mixed-up-times', { times }))})</span>
              </li>
            ))}
          </ul>
        )}
        <p className="aside">{say(phrase('end.tomorrow'))}</p>
        <button type="button" className="button key" onClick={onClose}>
          {say(phrase('end.close'))}
        </button>
      </section>
    </Sheet>
  );
}
