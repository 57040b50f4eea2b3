/** One learner: what the answers show, what gets mixed up, the devices behind the reports, and the make-up drill. */
import { useState } from 'react';
import { Link } from 'wouter';
import { whomToTell } from '../../core/assign/merge-reports.ts';
import type { Person } from '../../core/group/board.ts';
import { dateOfDay } from '../../core/memory/day.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { joinPile } from '../../exchange/pile.ts';
import { fingerprint } from '../../exchange/seal.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import type { OpenedGroup } from './open-group.ts';
import { makeUpAddress } from './sheets.ts';
import { confusionPhrase, percent } from './told.ts';

interface Props {
  readonly person: Person;
  readonly group: OpenedGroup;
  readonly say: Say;
  /** Called when the learner was removed. */
  readonly onChange: () => void;
}

/** What the reports themselves hold: read only for a learner that is looked at. */
function Reports({ person, group, say }: Omit<Props, 'onChange'>) {
  const { store } = useServices();
  const { assignment, corrections } = group;
  const read = useLoaded(async () => {
    const reports = await store.classroom.reportsOf(assignment.id, person.learner);
    if (!reports.ok) return reports;
    const pile = await joinPile(reports.value.reports);
    const log = pile.joined.learners.find(({ learner }) => learner === person.learner);
    const keys = await Promise.all((log?.keys ?? []).map((key) => (key === null ? null : fingerprint(key))));
    const changed = pile.joined.disputed.filter(({ kind }) => kind === 'changed').length;
    const untold = log
      ? corrections.filter((correction) => whomToTell(correction, [log]).some(({ told }) => !told))
      : [];
    const lost = pile.broken + pile.unreadable + reports.value.unreadable;
    return { ok: true as const, value: { log, keys, changed, untold, lost } };
  }, `${assignment.id}/${person.learner}/${corrections.length}`);
  if (!read) return null;
  if (!read.ok) return <TroubleNote trouble={read.error} say={say} />;
  const { log, keys, changed, untold, lost } = read.value;
  const sealed = keys.filter((key) => key !== null);
  return (
    <>
      <h3>{say(phrase('group.devices'))}</h3>
      <ul className="steps">
        {sealed.length > 0 && <li>{say(phrase('group.keys', { count: sealed.length, keys: sealed }))}</li>}
        {sealed.length > 1 && <li>{say(phrase('proof.other-device'))}</li>}
        {keys.includes(null) && <li>{say(phrase('proof.none'))}</li>}
        {changed > 0 && <li>{say(phrase('group.changed', { count: changed }))}</li>}
        {lost > 0 && <li>{say(phrase('group.lost', { count: lost }))}</li>}
      </ul>
      {untold.length > 0 && (
        <>
          <h3>{say(phrase('group.untold'))}</h3>
          <ul className="steps">
            {untold.map(({ id, note }) => (
              <li key={id}>{note}</li>
            ))}
          </ul>
        </>
      )}
      {log && log.flags.length > 0 && (
        <>
          <h3>{say(phrase('group.flags-of'))}</h3>
          <ul className="steps">
            {log.flags.map(({ id, note, fact }) => (
              <li key={id}>
                {note} <span className="provenance">{fact}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

function RemoveLearner({ person, say, onChange }: Pick<Props, 'person' | 'say' | 'onChange'>) {
  const { store } = useServices();
  const [sure, setSure] = useState(false);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const remove = async () => {
    const removed = await store.classroom.removeLearner(person.learner);
    setTrouble(removed.ok ? null : removed.error);
    if (removed.ok) onChange();
  };
  return (
    <>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      <div className="row-of-buttons">
        {sure ? (
          <>
            <button type="button" className="button" onClick={() => void remove()}>
              {say(phrase('group.remove-sure', { name: person.name }))}
            </button>
            <button type="button" className="button plain" onClick={() => setSure(false)}>
              {say(phrase('group.remove-not'))}
            </button>
          </>
        ) : (
          <button type="button" className="button plain" onClick={() => setSure(true)}>
            {say(phrase('group.remove'))}
          </button>
        )}
      </div>
    </>
  );
}

export function PersonDetails({ person, group, say, onChange }: Props) {
  const { slipUps, confusions, makeUp } = person;
  return (
    <div className="person-details">
      <ul className="steps">
        <li>
          {say(
            phrase('group.activity', {
              answers: person.answers,
              days: person.days,
              last: person.lastDay === null ? '' : dateOfDay(person.lastDay),
              voided: person.voided,
            }),
          )}
        </li>
        <li>{say(phrase('group.kept', { share: percent(person.kept) }))}</li>
        {person.readiness.cautionedOf > 0 && (
          <li>
            {say(
              phrase('group.cautioned', {
                right: person.readiness.cautionedRight,
                of: person.readiness.cautionedOf,
              }),
            )}
          </li>
        )}
      </ul>
      {makeUp && (
        <>
          <p>{say(phrase(`group.make-up.${makeUp.reason}`))}</p>
          <Link href={makeUpAddress(group.assignment.id, person.learner)} className="button">
            {say(phrase('group.make-up-sheet', { count: makeUp.facts.length }))}
          </Link>
        </>
      )}
      {slipUps.length + confusions.length > 0 && (
        <>
          <h3>{say(phrase('group.mixed-up'))}</h3>
          <ul className="steps">
            {confusions.slice(0, 5).map(({ confusion, times }) => (
              <li key={JSON.stringify(confusion)}>
                {say(confusionPhrase(confusion))}{' '}
                <span className="aside">({say(phrase('today.mixed-up-times', { times }))})</span>
              </li>
            ))}
            {slipUps.slice(0, 5).map(({ slipUp, times }) => (
              <li key={slipUp}>
                {say(phrase(`slip-up.${slipUp}`))}{' '}
                <span className="aside">({say(phrase('today.mixed-up-times', { times }))})</span>
              </li>
            ))}
          </ul>
        </>
      )}
      <Reports person={person} group={group} say={say} />
      <RemoveLearner person={person} say={say} onChange={onChange} />
    </div>
  );
}
