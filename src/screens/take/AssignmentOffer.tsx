/** An assignment that came in: what it asks, by when, who will see what; taken only by a tap. */
import { useState } from 'react';
import { Link } from 'wouter';
import type { Counting } from '../../core/assign/assignment.ts';
import { dueDay } from '../../core/assign/due.ts';
import { dateOfDay } from '../../core/memory/day.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import { AREAS } from '../../core/self-check/areas.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { classMomentIn, classTimePhrase, scopePhrase } from '../handing/assignments.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { type Offer, offerOf, type ReceivedAssignment, type Taken, takeOffer } from './taking.ts';

const COUNTINGS = ['double', 'half'] as const satisfies readonly Counting[];

interface Props {
  readonly received: ReceivedAssignment;
  /** Called when decks, settings or assignments have changed. */
  readonly onChange: () => void;
}

function Offered({ offer, onChange }: { offer: Offer; onChange: () => void }) {
  const services = useServices();
  const { zone } = services.now();
  const say = services.sayFor(offer.unit);
  const [taken, setTaken] = useState<Taken | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const { assignment, days, laterHere } = offer;
  const { classAt, minutes } = assignment;
  const take = async () => {
    const result = await takeOffer(services, offer);
    setTrouble(result.ok ? null : result.error);
    if (!result.ok) return;
    setTaken(result.value);
    onChange();
  };
  const lines: (Phrase | null)[] = [
    phrase('take.class-here', { when: classMomentIn(classAt, zone, services.language) }),
    classAt.zone === zone ? null : phrase('take.class-there', { when: classTimePhrase(classAt) }),
    days < 0
      ? phrase('take.past', { date: dateOfDay(dueDay(classAt, zone)) })
      : phrase('take.days', { days, minutes }),
    phrase('take.asks', { scope: scopePhrase(assignment.scope), count: offer.asked }),
    ...COUNTINGS.map((counts) => {
      const areas = AREAS.filter((area) => assignment.counting?.[area] === counts);
      return areas.length > 0
        ? phrase(`take.${counts}`, { areas: areas.map((area) => phrase(`area.${area}`)) })
        : null;
    }),
    offer.missing > 0 ? phrase('take.missing', { count: offer.missing }) : null,
    laterHere === null
      ? null
      : phrase('take.newer-deck', { here: laterHere, revision: assignment.deck.revision }),
  ];
  return (
    <section className="frame" aria-label={say(phrase('take.from', { group: assignment.group }))}>
      <h2>{say(phrase('take.from', { group: assignment.group }))}</h2>
      <p>
        <strong>{offer.unit.deck.title}</strong>
      </p>
      <ul className="steps">
        {lines
          .filter((line) => line !== null)
          .map((line) => (
            <li key={line.key}>{say(line)}</li>
          ))}
      </ul>
      {assignment.note !== null && <p>{say(phrase('take.note', { note: assignment.note }))}</p>}
      <h3>{say(phrase('take.who-title'))}</h3>
      <p>{say(phrase('take.who'))}</p>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      {!taken ? (
        <button type="button" className="button key" onClick={() => void take()}>
          {say(phrase('take.it'))}
        </button>
      ) : (
        <>
          <p role="status">{say(phrase(taken.laterIssue ? 'take.done-later' : 'take.done'))}</p>
          {taken.notices.length > 0 && (
            <div className="note">
              <h3>{say(phrase('take.corrections'))}</h3>
              <ul className="steps">
                {taken.notices.map(({ correction, facts }) => (
                  <li key={correction.id}>
                    {say(
                      phrase('take.correction', {
                        note: correction.note,
                        answers: facts.reduce((sum, { answers }) => sum + answers, 0),
                      }),
                    )}
                  </li>
                ))}
              </ul>
            </div>
          )}
          <Link href="/" className="button key">
            {say(phrase('take.drill'))}
          </Link>
        </>
      )}
    </section>
  );
}

export function AssignmentOffer({ received, onChange }: Props) {
  const services = useServices();
  const { id, issue, madeAt } = received.assignment;
  const offer = useLoaded(() => offerOf(services, received), `${id}/${issue}/${madeAt}`);
  if (!offer) return null;
  if (offer.ok) return <Offered offer={offer.value} onChange={onChange} />;
  const say = services.sayFor(null);
  return (
    <section className="note" role="alert">
      <p>{say(offer.error.why)}</p>
      {offer.error.findings.length > 0 && (
        <ul className="steps">
          {offer.error.findings
            .map((finding) => say(finding))
            .map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
        </ul>
      )}
    </section>
  );
}
