/** A learner hands in: under which name, what goes in, who will see it; then as a file, a link or codes. */
import { useState } from 'react';
import { Link } from 'wouter';
import type { Assignment } from '../../core/assign/assignment.ts';
import type { Flag } from '../../core/assign/report.ts';
import { dateOfDay, localDay } from '../../core/memory/day.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { writeReport } from '../../exchange/message.ts';
import { fingerprint } from '../../exchange/seal.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { classTimePhrase, openAssignments } from '../handing/assignments.ts';
import { HandOver } from '../handing/HandOver.tsx';
import { fileName } from '../handing/save-file.ts';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { contentsFor, sealedReportOf } from './report-of.ts';

interface Props {
  readonly unit: Unit;
  readonly say: Say;
  /** Called when an assignment was put away. */
  readonly onChange: () => void;
}

interface Ready {
  readonly text: string;
  readonly name: string;
  /** The device's key as people read it to each other; null where there is no seal. */
  readonly digits: string | null;
}

const WEEK_MS = 7 * 86_400_000;

function Flags({
  flags,
  say,
  onTakeBack,
}: {
  flags: readonly Flag[];
  say: Say;
  onTakeBack: (id: string) => void;
}) {
  return (
    <>
      <h3>{say(phrase('report.flags'))}</h3>
      <ul className="steps">
        {flags.map(({ id, fact, family, note }) => (
          <li key={id}>
            {note} <span className="provenance">{`${say(phrase(`family.${family}`))}, ${fact}`}</span>
            <button type="button" className="button plain" onClick={() => onTakeBack(id)}>
              {say(phrase('report.flag-take-back'))}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function PutAway({ say, onPutAway }: { say: Say; onPutAway: () => void }) {
  const [sure, setSure] = useState(false);
  if (!sure)
    return (
      <button type="button" className="button plain" onClick={() => setSure(true)}>
        {say(phrase('report.put-away'))}
      </button>
    );
  return (
    <div className="note">
      <p>{say(phrase('report.put-away-note'))}</p>
      <div className="row-of-buttons">
        <button type="button" className="button" onClick={onPutAway}>
          {say(phrase('report.put-away-sure'))}
        </button>
        <button type="button" className="button plain" onClick={() => setSure(false)}>
          {say(phrase('report.put-away-not'))}
        </button>
      </div>
    </div>
  );
}

interface FormProps {
  readonly unit: Unit;
  readonly say: Say;
  readonly assignment: Assignment;
  readonly knownName: string;
  readonly onPutAway: () => void;
}

function ReportForm({ unit, say, assignment, knownName, onPutAway }: FormProps) {
  const services = useServices();
  const { store, now } = services;
  const [name, setName] = useState(knownName);
  const [nameless, setNameless] = useState(false);
  const [week, setWeek] = useState(false);
  const [version, setVersion] = useState(0);
  const [ready, setReady] = useState<Ready | null>(null);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const { at, zone } = now();
  const contents = useLoaded(
    () => contentsFor(services, unit, assignment, week ? at - WEEK_MS : undefined),
    `${assignment.id}/${week}/${version}`,
  );
  const value = contents?.ok ? contents.value : undefined;
  const make = async () => {
    const typed = name.trim();
    const unusable = typed === '' || typed.length > 200;
    setNameless(unusable);
    if (unusable || !value) return;
    const sealed = await sealedReportOf(services, assignment, value, typed);
    setTrouble(sealed.ok ? null : sealed.error);
    if (!sealed.ok) return;
    const { seal } = sealed.value;
    setReady({
      text: writeReport(sealed.value),
      name: typed,
      digits: seal === null ? null : await fingerprint(seal.key),
    });
  };
  const takeBack = async (id: string) => {
    const done = await store.classroom.takeFlagBack(id);
    setTrouble(done.ok ? null : done.error);
    setReady(null);
    setVersion((before) => before + 1);
  };
  return (
    <>
      <form
        className="frame"
        onSubmit={(event) => {
          event.preventDefault();
          void make();
        }}
      >
        <p>{say(phrase('assign.class', { when: classTimePhrase(assignment.classAt) }))}</p>
        <label className="field">
          <span>{say(phrase('report.name'))}</span>
          <input
            type="text"
            autoComplete="name"
            value={name}
            onChange={(event) => setName(event.target.value)}
          />
        </label>
        {nameless && (
          <p className="note" role="alert">
            {say(phrase('report.name-missing'))}
          </p>
        )}
        <fieldset className="answer">
          <legend>{say(phrase('report.since'))}</legend>
          <div className="choices">
            {[false, true].map((short) => (
              <label key={String(short)} className="choice">
                <input
                  type="radio"
                  name="since"
                  checked={week === short}
                  onChange={() => {
                    setWeek(short);
                    setReady(null);
                  }}
                />
                <span>{say(phrase(short ? 'report.since-week' : 'report.since-all'))}</span>
              </label>
            ))}
          </div>
        </fieldset>
        {contents && !contents.ok && <TroubleNote trouble={contents.error} say={say} />}
        {value && (
          <p role="status">
            {say(phrase('report.holds', { answers: value.attempts.length, flags: value.flags.length }))}
          </p>
        )}
        {value && value.flags.length > 0 && (
          <Flags flags={value.flags} say={say} onTakeBack={(id) => void takeBack(id)} />
        )}
        <h3>{say(phrase('take.who-title'))}</h3>
        <p>{say(phrase('report.who'))}</p>
        {trouble && <TroubleNote trouble={trouble} say={say} />}
        <button type="submit" className="button key">
          {say(phrase('report.make'))}
        </button>
      </form>
      {ready && (
        <>
          <HandOver
            key={ready.text}
            text={ready.text}
            file={fileName('report', unit.deck.id, ready.name, dateOfDay(localDay(at, zone)))}
            title={say(phrase('report.ready', { name: ready.name }))}
            say={say}
          />
          <section className="aside">
            <p>
              {say(
                ready.digits === null
                  ? phrase('report.no-key')
                  : phrase('report.key', { digits: ready.digits }),
              )}
            </p>
            <p>{say(phrase('proof.limits'))}</p>
          </section>
        </>
      )}
      <PutAway say={say} onPutAway={onPutAway} />
    </>
  );
}

export function ReportScreen({ unit, say, onChange }: Props) {
  const { store } = useServices();
  const [version, setVersion] = useState(0);
  const [chosen, setChosen] = useState('');
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const loaded = useLoaded(async () => {
    const [taken, learner] = await Promise.all([openAssignments(store, 'taken'), store.classroom.learner()]);
    if (!taken.ok) return taken;
    if (!learner.ok) return learner;
    const own = taken.value.filter(({ stored }) => stored.deck === unit.deck.id);
    return { ok: true as const, value: { own, name: learner.value?.name ?? '' } };
  }, `${unit.deck.id}/${version}`);
  const value = loaded?.ok ? loaded.value : undefined;
  const opened = value?.own.find(({ stored }) => stored.id === chosen) ?? value?.own[0];
  const putAway = async (id: string) => {
    const removed = await store.classroom.removeAssignment(id);
    setTrouble(removed.ok ? null : removed.error);
    setVersion((before) => before + 1);
    onChange();
  };
  return (
    <Sheet
      top={
        <>
          <h1>{say(phrase('report.title'))}</h1>
          <Link href="/">{say(phrase('app.back'))}</Link>
        </>
      }
      titleBlock={titleBlockOf(unit, say)}
    >
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      {loaded && !loaded.ok && <TroubleNote trouble={loaded.error} say={say} />}
      {value && !opened && (
        <section className="frame">
          <p>{say(phrase('report.none', { unit: unit.deck.unit }))}</p>
          <Link href="/take" className="button">
            {say(phrase('take.link'))}
          </Link>
        </section>
      )}
      {value && value.own.length > 1 && (
        <label className="field">
          <span>{say(phrase('report.for'))}</span>
          <select value={opened?.stored.id} onChange={(event) => setChosen(event.target.value)}>
            {value.own.map(({ stored, assignment }) => (
              <option key={stored.id} value={stored.id}>
                {`${assignment.group}, ${assignment.classAt.date}`}
              </option>
            ))}
          </select>
        </label>
      )}
      {value && opened && (
        <>
          {value.own.length === 1 && <h2>{opened.assignment.group}</h2>}
          <ReportForm
            key={opened.stored.id}
            unit={unit}
            say={say}
            assignment={opened.assignment}
            knownName={value.name}
            onPutAway={() => void putAway(opened.stored.id)}
          />
        </>
      )}
    </Sheet>
  );
}
