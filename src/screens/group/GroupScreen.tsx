/** The board of an assignment: reports come in at the top, and what they show stands below. */
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { daysToClass } from '../../core/assign/due.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Received } from '../../exchange/message.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { classTimePhrase } from '../handing/assignments.ts';
import { Receive } from '../handing/Receive.tsx';
import { useServices } from '../services.ts';
import { TroubleNote } from '../TroubleNote.tsx';
import { useLoaded } from '../use-loaded.ts';
import { NotHeardFrom, SheetList } from './Absent.tsx';
import { CollectedNote } from './CollectedNote.tsx';
import { type Collected, collectReport } from './collect.ts';
import { BeforeAfter, BenchGroups, FlagList, MixedUp, NobodyHolds } from './GroupSections.tsx';
import './group.css';
import { type OpenedGroup, openGroups } from './open-group.ts';
import { People } from './People.tsx';
import { QualitySection } from './QualitySection.tsx';

function Figures({ group, say }: { group: OpenedGroup; say: Say }) {
  const { board, assignment, roster } = group;
  const { now } = useServices();
  const days = daysToClass(assignment.classAt, now());
  const expected = board.people.length + board.notHeardFrom.length;
  const figures = [
    { figure: board.started, words: phrase('group.started', { of: expected }) },
    { figure: board.likely.likely, words: phrase('group.likely-ready') },
    {
      figure: board.people.filter(({ makeUp }) => makeUp !== null).length,
      words: phrase('group.make-ups'),
    },
  ];
  return (
    <section className="frame">
      <h2>{assignment.group}</h2>
      <p>
        {say(phrase('assign.class', { when: classTimePhrase(assignment.classAt) }))}
        {'. '}
        {say(phrase('group.days', { days, when: days < 0 ? 'past' : days === 0 ? 'today' : 'ahead' }))}
      </p>
      <dl className="stat">
        {figures.map(({ figure, words }) => (
          <div key={words.key}>
            <dt>{say(words)}</dt>
            <dd>{figure}</dd>
          </div>
        ))}
      </dl>
      <NotHeardFrom group={group} say={say} />
      {roster.length === 0 && <p className="aside">{say(phrase('group.no-roster'))}</p>}
    </section>
  );
}

export function GroupScreen({ wanted }: { wanted: string | undefined }) {
  const services = useServices();
  const [, go] = useLocation();
  const [version, setVersion] = useState(0);
  const [collected, setCollected] = useState<readonly Collected[]>([]);
  const [trouble, setTrouble] = useState<StoreTrouble | null>(null);
  const fresh = useLoaded(() => openGroups(services, wanted), `${wanted ?? ''}/${version}`);
  // The board stays on the page while it is made anew.
  const [kept, setKept] = useState(fresh);
  if (fresh && fresh !== kept) setKept(fresh);
  const opened = fresh ?? kept;
  const value = opened?.ok ? opened.value : undefined;
  const group = value?.group;
  const say = services.sayFor(group?.unit ?? null);
  const again = () => setVersion((before) => before + 1);
  const receive = async (received: Received) => {
    if (received.kind !== 'report') {
      go('/take');
      return;
    }
    const result = await collectReport(services, received);
    setTrouble(result.ok ? null : result.error);
    if (!result.ok) return;
    setCollected((before) => [...before, result.value]);
    if (result.value.kind === 'kept') again();
  };
  const sections = group && [
    { id: 'people', content: <People group={group} say={say} onChange={again} /> },
    { id: 'mixed-up', content: <MixedUp group={group} say={say} /> },
    { id: 'nobody-holds', content: <NobodyHolds group={group} say={say} /> },
    { id: 'bench-groups', content: <BenchGroups group={group} say={say} /> },
    { id: 'before-after', content: <BeforeAfter group={group} say={say} /> },
    { id: 'flags', content: <FlagList group={group} say={say} /> },
    { id: 'quality', content: <QualitySection assignment={group.assignment.id} say={say} /> },
  ];
  return (
    <Sheet
      top={
        <>
          <h1>{say(phrase('group.title'))}</h1>
          <Link href="/assign">{say(phrase('group.assignments'))}</Link>
        </>
      }
      {...(group ? { titleBlock: titleBlockOf(group.unit, say) } : {})}
    >
      {trouble && <TroubleNote trouble={trouble} say={say} />}
      {opened && !opened.ok && <TroubleNote trouble={opened.error} say={say} />}
      {value && !value.chosen && (
        <section className="frame">
          <p>{say(phrase('group.none'))}</p>
          <Link href="/assign" className="button key">
            {say(phrase('assign.link'))}
          </Link>
        </section>
      )}
      {value && value.made.length > 1 && (
        <label className="field">
          <span>{say(phrase('group.which'))}</span>
          <select
            value={value.chosen?.stored.id}
            onChange={(event) => {
              setCollected([]);
              go(`/group/${event.target.value}`);
            }}
          >
            {value.made.map(({ stored, assignment }) => (
              <option key={stored.id} value={stored.id}>
                {`${assignment.group}, ${assignment.classAt.date}`}
              </option>
            ))}
          </select>
        </label>
      )}
      {value?.chosen && !group && <p className="note">{say(phrase('group.no-deck'))}</p>}
      {group && <Figures group={group} say={say} />}
      {value?.chosen && (
        <>
          <CollectedNote collected={collected} say={say} />
          <details open={group ? group.board.people.length === 0 : false}>
            <summary>{say(phrase('group.collect'))}</summary>
            <Receive say={say} how={phrase('group.collect-how')} onReceived={receive} />
          </details>
        </>
      )}
      {group &&
        group.board.people.length > 0 &&
        sections?.map(({ id, content }) => (
          <section key={id} className="unit-part">
            <h2>{say(phrase(`group.part.${id}`))}</h2>
            {content}
          </section>
        ))}
      {group && (
        <section className="unit-part">
          <h2>{say(phrase('group.part.sheets'))}</h2>
          <SheetList group={group} say={say} />
        </section>
      )}
      {group && <p className="aside">{say(phrase('proof.limits'))}</p>}
    </Sheet>
  );
}
