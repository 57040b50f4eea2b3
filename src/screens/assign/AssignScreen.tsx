/** Assignments made here: make one, hand it out, change it and hand it out again. */
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { factsOf } from '../../core/questions/facts.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import {
  classTimePhrase,
  type OpenedAssignment,
  openAssignments,
  scopePhrase,
} from '../handing/assignments.ts';
import { HandOver } from '../handing/HandOver.tsx';
import { fileName } from '../handing/save-file.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { AssignForm } from './AssignForm.tsx';
import { type AssignFields, emptyFields, fieldsOf, readFields } from './fields.ts';
import { makeAssignment } from './make-assignment.ts';

interface Props {
  readonly unit: Unit;
  readonly say: Say;
}

interface CardProps {
  readonly opened: OpenedAssignment;
  readonly say: Say;
  /** It is on the deck in use, so it can be changed here. */
  readonly own: boolean;
  readonly onHandOut: () => void;
  readonly onChange: () => void;
  readonly onRemove: () => void;
}

function AssignmentCard({ opened: { assignment }, say, own, onHandOut, onChange, onRemove }: CardProps) {
  const [sure, setSure] = useState(false);
  const { group, deck, scope, classAt, issue } = assignment;
  const button = (words: string, act: () => void, className = 'button plain') => (
    <button type="button" className={className} onClick={act}>
      {say(phrase(words))}
    </button>
  );
  return (
    <section className="frame" aria-label={group}>
      <h3>{group}</h3>
      <p>
        {say(phrase('assign.line', { unit: deck.id, revision: deck.revision, scope: scopePhrase(scope) }))}
        {', '}
        {say(phrase('assign.issue', { issue }))}
      </p>
      <p>{say(phrase('assign.class', { when: classTimePhrase(classAt) }))}</p>
      {sure ? (
        <div className="row-of-buttons">
          {button('assign.remove-sure', onRemove, 'button')}
          {button('assign.remove-not', () => setSure(false))}
        </div>
      ) : (
        <div className="row-of-buttons">
          {button('assign.hand-out', onHandOut, 'button')}
          <Link href={`/group/${assignment.id}`} className="button">
            {say(phrase('group.link'))}
          </Link>
          {own && button('assign.change', onChange)}
          {button('assign.remove', () => setSure(true))}
        </div>
      )}
    </section>
  );
}

export function AssignScreen({ unit, say }: Props) {
  const services = useServices();
  const { store, now } = services;
  const [version, setVersion] = useState(0);
  const [changing, setChanging] = useState<OpenedAssignment | null>(null);
  const [handing, setHanding] = useState<{ text: string; group: string; issue: number } | null>(null);
  const [told, setTold] = useState<Phrase | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const facts = useMemo(() => factsOf(unit), [unit]);
  const loaded = useLoaded(async () => {
    const [made, decks] = await Promise.all([openAssignments(store, 'made'), store.decks()]);
    if (!made.ok) return made;
    return decks.ok ? { ok: true as const, value: { made: made.value, decks: decks.value } } : decks;
  }, String(version));
  const value = loaded?.ok ? loaded.value : undefined;
  const again = () => setVersion((before) => before + 1);

  const make = async (fields: AssignFields) => {
    const read = readFields(fields);
    const deckText = value?.decks.find(({ id }) => id === unit.deck.id)?.text;
    if (!read.ok || deckText === undefined) return;
    const last = changing?.assignment ?? null;
    const made = await makeAssignment({ services, unit, deckText, fields, read: read.value, last });
    setTrouble(made.ok ? null : made.error);
    if (!made.ok) return;
    if (made.value.kind === 'other-text')
      return setTold(phrase('assign.other-text', { revision: unit.deck.revision }));
    const { assignment, text, correction, compared } = made.value;
    setTold(compared ? phrase('assign.corrected', { facts: correction?.facts.length ?? 0 }) : null);
    setHanding({ text, group: assignment.group, issue: assignment.issue });
    setChanging(null);
    window.scrollTo?.(0, 0);
    again();
  };
  const remove = async (id: string) => {
    const removed = await store.classroom.removeAssignment(id);
    setTrouble(removed.ok ? null : removed.error);
    setHanding(null);
    again();
  };
  const before = changing && changing.assignment.deck.revision < unit.deck.revision ? changing : null;
  return (
    <Sheet
      top={
        <>
          <h1>{say(phrase('assign.title'))}</h1>
          <Link href="/">{say(phrase('app.back'))}</Link>
        </>
      }
      titleBlock={titleBlockOf(unit, say)}
    >
      <nav aria-label={say(phrase('today.more'))}>
        <Link href="/print" className="button plain">
          {say(phrase('print.link'))}
        </Link>
      </nav>
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      {loaded && !loaded.ok && <TroubleNote trouble={loaded.error} say={say} />}
      {told && (
        <p className="note" role="status">
          {say(told)}
        </p>
      )}
      {handing && (
        <HandOver
          key={`${handing.group}/${handing.issue}`}
          text={handing.text}
          file={fileName('assignment', unit.deck.id, handing.group, `${handing.issue}`)}
          title={say(phrase('assign.ready', { group: handing.group }))}
          say={say}
        />
      )}
      {value && value.made.length > 0 && !changing && (
        <>
          <h2>{say(phrase('assign.made'))}</h2>
          {value.made.map((opened) => (
            <AssignmentCard
              key={opened.stored.id}
              opened={opened}
              say={say}
              own={opened.stored.deck === unit.deck.id}
              onHandOut={() => {
                const { group, issue } = opened.assignment;
                setTold(null);
                setHanding({ text: opened.stored.text, group, issue });
                window.scrollTo?.(0, 0);
              }}
              onChange={() => {
                setHanding(null);
                setTold(null);
                setChanging(opened);
              }}
              onRemove={() => void remove(opened.stored.id)}
            />
          ))}
        </>
      )}
      {value && (
        <>
          <h2>
            {say(
              changing
                ? phrase('assign.changing', { group: changing.assignment.group })
                : phrase('assign.new', { unit: unit.deck.unit }),
            )}
          </h2>
          <AssignForm
            key={changing ? changing.stored.id : `new-${version}`}
            start={changing ? fieldsOf(changing.assignment, changing.stored.roster) : emptyFields(now().zone)}
            facts={facts}
            issue={(changing?.assignment.issue ?? 0) + 1}
            before={before?.assignment.deck.revision ?? null}
            revision={unit.deck.revision}
            say={say}
            onMake={(fields) => void make(fields)}
          />
        </>
      )}
    </Sheet>
  );
}
