/** The names of this device, one to be picked; with a PIN where one was set. */
import { useEffect, useId, useRef, useState } from 'react';
import { Link } from 'wouter';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { KnownLearner, Listing, Registry } from '../../storage/learners/registry.ts';
import { Sheet } from '../../ui/Sheet.tsx';
import { useServices } from '../services.ts';
import { PinForm } from './PinForm.tsx';
import './learners.css';

interface Props {
  readonly listing: Listing;
  readonly registry: Registry;
  /** Why it came back to the names, where that was not somebody's wish. */
  readonly reason: 'idle' | 'gone' | null;
  readonly onPick: (id: string) => void;
  readonly onAgain: () => void;
}

export function NamePick({ listing, registry, reason, onPick, onAgain }: Props) {
  const { now, sayFor } = useServices();
  const say = sayFor(null);
  const [asked, setAsked] = useState<KnownLearner | null>(null);
  const why = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (!asked) heading.current?.focus();
  }, [asked]);
  const byName = listing.learners.toSorted((a, b) => a.name.localeCompare(b.name));
  const note = (told: Phrase) => (
    <p className="note" role="status">
      {say(told)}
    </p>
  );
  return (
    <Sheet top={<strong>Detent</strong>}>
      <h1 ref={heading} tabIndex={-1} aria-describedby={reason && !asked ? why : undefined}>
        {say(phrase('names.title'))}
      </h1>
      {reason && !asked && (
        <p id={why} className="note" role="status">
          {say(phrase(`names.${reason}`))}
        </p>
      )}
      {asked ? (
        <PinForm
          key={asked.id}
          title={phrase('pin.of', { name: asked.name })}
          say={say}
          tryPin={(pin) => registry.tryPin(asked.id, pin, now().at)}
          onRight={() => onPick(asked.id)}
          onBack={() => setAsked(null)}
        />
      ) : (
        <ul className="name-keys">
          {byName.map((learner) => (
            <li key={learner.id}>
              <button
                type="button"
                className="button"
                onClick={() => (learner.hasPin ? setAsked(learner) : onPick(learner.id))}
              >
                {learner.name}{' '}
                {learner.hasPin && <span className="aside">{say(phrase('names.with-pin'))}</span>}
              </button>
            </li>
          ))}
        </ul>
      )}
      {asked && <p className="aside">{say(phrase('pin.forgotten'))}</p>}
      {listing.learners.length === 0 && listing.leaving === 0 && <p>{say(phrase('names.none'))}</p>}
      {listing.unreadable > 0 && note(phrase('names.unreadable', { count: listing.unreadable }))}
      {listing.leaving > 0 && (
        <>
          {note(phrase('names.leaving', { count: listing.leaving }))}
          <button type="button" className="button" onClick={onAgain}>
            {say(phrase('names.again'))}
          </button>
        </>
      )}
      <p>
        <Link href="/learners" className="button plain">
          {say(phrase('learners.link'))}
        </Link>
      </p>
    </Sheet>
  );
}
