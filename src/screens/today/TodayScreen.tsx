/** Opens on the next drill, ready to start: minutes, how many, days to the class. */
import { type FormEvent, useMemo, useState } from 'react';
import { Link } from 'wouter';
import { type Assignment, assignedFacts } from '../../core/assign/assignment.ts';
import type { Attempt } from '../../core/memory/attempt.ts';
import { dayOfDate } from '../../core/memory/day.ts';
import type { Drill, DrillItem } from '../../core/memory/drill.ts';
import { foldAttempts } from '../../core/memory/fold.ts';
import { paceOf } from '../../core/memory/pace.ts';
import { planDrill } from '../../core/memory/plan-drill.ts';
import { STANDINGS, standingOf } from '../../core/memory/standing.ts';
import { factsOf } from '../../core/questions/facts.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { seedOf } from '../../core/random.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Practice } from '../../storage/rows.ts';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import { StandingBar } from '../../ui/StandingBar.tsx';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { mixedUp } from './mixed-up.ts';

interface Props {
  readonly unit: Unit;
  readonly say: Say;
  readonly attempts: readonly Attempt[];
  /** The assignment that is practised for; its facts are the ones asked. */
  readonly assignment: Assignment | undefined;
  readonly practice: Practice;
  /** The drill under way, when it is of this deck. */
  readonly waiting: Drill | undefined;
  readonly onStart: (items: readonly DrillItem[]) => void;
  readonly onResume: () => void;
  readonly onPractice: (practice: Practice) => void;
}

function PracticeForm({ practice, say, onPractice }: Pick<Props, 'practice' | 'say' | 'onPractice'>) {
  const [minutes, setMinutes] = useState(String(practice.minutes));
  const read = (text: string) => Math.min(120, Math.max(1, Math.round(Number(text)) || practice.minutes));
  const keep = (event: FormEvent) => event.preventDefault();
  return (
    <details>
      <summary>{say(phrase('today.change'))}</summary>
      <form className="fields" onSubmit={keep}>
        <label className="field">
          <span>{say(phrase('today.minutes-field'))}</span>
          <input
            type="number"
            inputMode="numeric"
            min={1}
            max={120}
            value={minutes}
            onChange={(event) => {
              setMinutes(event.target.value);
              if (event.target.value !== '') onPractice({ ...practice, minutes: read(event.target.value) });
            }}
          />
        </label>
        <label className="field">
          <span>{say(phrase('today.class-field'))}</span>
          <input
            type="date"
            value={practice.classDate ?? ''}
            onChange={(event) => onPractice({ ...practice, classDate: event.target.value || null })}
          />
        </label>
      </form>
    </details>
  );
}

function daysPhrase(classDay: number | null, day: number) {
  if (classDay === null) return { figure: '\u2013', words: phrase('today.no-class') };
  if (classDay < day) return { figure: '\u2013', words: phrase('today.class-past') };
  if (classDay === day) return { figure: '0', words: phrase('today.class-today') };
  return { figure: String(classDay - day), words: phrase('today.days', { days: classDay - day }) };
}

export function TodayScreen(props: Props) {
  const { unit, say, attempts, assignment, practice, waiting } = props;
  const { now } = useServices();
  const { day } = now();
  const memory = useMemo(() => foldAttempts(attempts), [attempts]);
  const facts = useMemo(() => {
    const all = factsOf(unit);
    return assignment ? assignedFacts(assignment, all).facts : all;
  }, [unit, assignment]);
  const classDay = practice.classDate === null ? null : dayOfDate(practice.classDate);
  const items = useMemo(() => {
    const seed = seedOf(unit.deck.id, attempts.at(-1)?.drill ?? 'first', attempts.length);
    const secondsPerForm = paceOf(attempts);
    return planDrill({ unit, facts, memory, day, classDay, minutes: practice.minutes, seed, secondsPerForm });
  }, [unit, facts, memory, day, classDay, practice.minutes, attempts]);
  const standings = STANDINGS.map((standing) => ({
    standing,
    count: facts.filter((fact) => standingOf(memory.get(fact.id), day) === standing).length,
  }));
  const mixed = mixedUp(attempts, day);
  const days = daysPhrase(classDay, day);
  const figures = waiting
    ? []
    : [
        { figure: String(practice.minutes), words: phrase('today.minutes', { minutes: practice.minutes }) },
        { figure: String(items.length), words: phrase('today.questions', { count: items.length }) },
        days,
      ];
  return (
    <Sheet
      top={
        <>
          <strong>Detent</strong>
          <nav aria-label={say(phrase('app.menu'))} className="top-links">
            <Link href="/unit">{say(phrase('today.unit', { unit: unit.deck.unit }))}</Link>
            <Link href="/decks">{say(phrase('today.decks'))}</Link>
          </nav>
        </>
      }
      titleBlock={titleBlockOf(unit, say)}
    >
      <section className="frame">
        <h1>{say(phrase(waiting ? 'today.resume-title' : 'today.title'))}</h1>
        {waiting ? (
          <p>{say(phrase('today.resume-note', { place: waiting.index + 1, count: waiting.items.length }))}</p>
        ) : (
          <dl className="stat">
            {figures.map(({ figure, words }) => (
              <div key={words.key}>
                <dt>{say(words)}</dt>
                <dd>{figure}</dd>
              </div>
            ))}
          </dl>
        )}
        {waiting ? (
          <div className="row-of-buttons">
            <button type="button" className="button key" onClick={props.onResume}>
              {say(phrase('today.resume'))}
            </button>
            <button type="button" className="button plain" onClick={() => props.onStart(items)}>
              {say(phrase('today.start-new', { count: items.length }))}
            </button>
          </div>
        ) : items.length > 0 ? (
          <button type="button" className="button key" onClick={() => props.onStart(items)}>
            {say(phrase('today.start'))}
          </button>
        ) : (
          <p>{say(phrase('today.nothing'))}</p>
        )}
        {assignment && (
          <p>
            {say(phrase('today.assigned', { group: assignment.group, count: facts.length }))}{' '}
            <Link href="/report">{say(phrase('report.link'))}</Link>
          </p>
        )}
        <PracticeForm practice={practice} say={say} onPractice={props.onPractice} />
      </section>
      <section>
        <h2>{say(phrase('today.memory'))}</h2>
        <StandingBar standings={standings} say={say} />
      </section>
      {mixed.length > 0 && (
        <section>
          <h2>{say(phrase('today.mixed-up'))}</h2>
          <ul className="steps">
            {mixed.map(({ slipUp, times }) => (
              <li key={slipUp}>
                {say(phrase(`slip-up.${slipUp}`))}{' '}
                <span className="aside">({say(phrase('today.mixed-up-times', { times }))})</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      <nav aria-label={say(phrase('today.more'))} className="row-of-buttons">
        <Link href="/case" className="button">
          {say(phrase('case.link'))}
        </Link>
        <Link href="/self-check" className="button">
          {say(phrase('self-check.link'))}
        </Link>
        <Link href="/take" className="button">
          {say(phrase('take.link'))}
        </Link>
        <Link href="/assign" className="button">
          {say(phrase('assign.link'))}
        </Link>
      </nav>
      <section className="aside">
        <p>{say(phrase('today.stored'))}</p>
        <details>
          <summary>{say(phrase('today.safety'))}</summary>
          <p>{say(phrase('app.standing-line'))}</p>
        </details>
      </section>
    </Sheet>
  );
}
