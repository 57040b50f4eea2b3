/** Opens on the next drill, ready to start: minutes, how many, days to the class. */
import { useEffect, useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { Assignment } from '../../core/assign/assignment.ts';
import type { Ledger } from '../../core/ledger/ledger.ts';
import { dayOfDate } from '../../core/memory/day.ts';
import type { Drill, DrillItem } from '../../core/memory/drill.ts';
import { paceOfTimes } from '../../core/memory/pace.ts';
import { planDrill } from '../../core/memory/plan-drill.ts';
import { STANDINGS, standingOf } from '../../core/memory/standing.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Practice } from '../../storage/rows.ts';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import { StandingBar } from '../../ui/StandingBar.tsx';
import type { Say } from '../../words/words.ts';
import { useSharing } from '../learners/sharing.ts';
import { useServices } from '../services.ts';
import { planSeed, useOutlook } from '../use-outlook.ts';
import { usePractisedFacts } from '../use-practised-facts.ts';
import { VersionNote } from '../VersionNote.tsx';
import { ClockNote } from './ClockNote.tsx';
import { mixedUp } from './mixed-up.ts';
import { PracticeForm } from './PracticeForm.tsx';
import { WayToClass } from './WayToClass.tsx';

interface Props {
  readonly unit: Unit;
  readonly say: Say;
  readonly ledger: Ledger;
  /** The assignment that is practised for; its facts are the ones asked. */
  readonly assignment: Assignment | undefined;
  readonly practice: Practice;
  /** The drill under way, when it is of this deck. */
  readonly waiting: Drill | undefined;
  readonly onStart: (items: readonly DrillItem[]) => void;
  readonly onResume: () => void;
  readonly onPractice: (practice: Practice) => void;
}

function daysPhrase(classDay: number | null, day: number) {
  if (classDay === null) return { figure: '\u2013', words: phrase('today.no-class') };
  if (classDay < day) return { figure: '\u2013', words: phrase('today.class-past') };
  if (classDay === day) return { figure: '0', words: phrase('today.class-today') };
  return { figure: String(classDay - day), words: phrase('today.days', { days: classDay - day }) };
}

export function TodayScreen(props: Props) {
  const { unit, say, ledger, assignment, practice, waiting } = props;
  const { memory } = ledger;
  const { now } = useServices();
  const sharing = useSharing();
  const moment = now();
  const { day } = moment;
  const facts = usePractisedFacts(unit, assignment);
  const classDay = practice.classDate === null ? null : dayOfDate(practice.classDate);
  const outlook = useOutlook({ unit, facts, assignment, ledger, practice, day });
  const { order } = outlook;
  const items = useMemo(() => {
    if (order === undefined) return null;
    return planDrill({
      unit,
      facts,
      memory: ledger.memory,
      day,
      classDay,
      minutes: practice.minutes,
      seed: planSeed(unit, ledger),
      secondsPerForm: paceOfTimes(ledger.times),
      ...(order && { order }),
    });
  }, [unit, facts, ledger, day, classDay, practice.minutes, order]);
  // Pressed before the plan was there: the drill starts as soon as it is.
  const [pressed, setPressed] = useState(false);
  const { onStart } = props;
  useEffect(() => {
    if (!pressed || !items) return;
    setPressed(false);
    if (items.length > 0) onStart(items);
  }, [pressed, items, onStart]);
  const standings = STANDINGS.map((standing) => ({
    standing,
    count: facts.filter((fact) => standingOf(memory.get(fact.id), day) === standing).length,
  }));
  const mixed = mixedUp(ledger.days, day);
  const days = daysPhrase(classDay, day);
  const figures = waiting
    ? []
    : [
        { figure: String(practice.minutes), words: phrase('today.minutes', { minutes: practice.minutes }) },
        {
          figure: items ? String(items.length) : '\u2026',
          words: phrase('today.questions', { count: items?.length ?? 0 }),
        },
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
      {ledger.latest && <ClockNote latest={ledger.latest} now={moment} say={say} />}
      <VersionNote say={say} />
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
            <button type="button" className="button plain" onClick={() => setPressed(true)}>
              {say(phrase('today.start-new'))}
            </button>
          </div>
        ) : !items || items.length > 0 ? (
          <button
            type="button"
            className="button key"
            aria-busy={pressed || undefined}
            onClick={() => setPressed(true)}
          >
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
      {classDay !== null && classDay >= day && (
        <section className="unit-part" aria-live="polite">
          <h2>{say(phrase('plan.title'))}</h2>
          <WayToClass
            outlook={outlook}
            facts={facts}
            practice={practice}
            assigned={assignment !== undefined}
            today={classDay === day}
            say={say}
          />
        </section>
      )}
      <section className="unit-part">
        <h2>{say(phrase('today.memory'))}</h2>
        <StandingBar standings={standings} say={say} />
        <Link href="/progress" className="button plain">
          {say(phrase('plan.more'))}
        </Link>
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
      <section className="aside unit-part">
        <p>{say(phrase('today.stored'))}</p>
        <p className="row-of-buttons">
          <Link href="/device" className="button plain">
            {say(phrase('device.link'))}
          </Link>
          {sharing && (
            <Link href="/learners" className="button plain">
              {say(phrase('learners.link'))}
            </Link>
          )}
        </p>
        <details>
          <summary>{say(phrase('today.safety'))}</summary>
          <p>{say(phrase('app.standing-line'))}</p>
        </details>
      </section>
    </Sheet>
  );
}
