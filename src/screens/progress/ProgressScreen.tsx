/** Where a learner stands: the course to class, topic by topic, and how far such forecasts can be trusted. */
import { Link } from 'wouter';
import type { Assignment } from '../../core/assign/assignment.ts';
import type { Ledger } from '../../core/ledger/ledger.ts';
import { dayOfDate } from '../../core/memory/day.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Practice } from '../../storage/rows.ts';
import { CourseChart, minutesByDay } from '../../ui/charts/CourseChart.tsx';
import { Sheet, titleBlockOf } from '../../ui/Sheet.tsx';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';
import { WayToClass } from '../today/WayToClass.tsx';
import { type Outlook, useOutlook } from '../use-outlook.ts';
import { usePractisedFacts } from '../use-practised-facts.ts';
import { Foreseen } from './Foreseen.tsx';
import { Topics } from './Topics.tsx';

/** A plan that leaves more than this share of the minutes unused has more than it needs. */
const SPARE = 0.1;

interface CourseProps {
  readonly forecast: NonNullable<Outlook['forecast']>;
  readonly minutes: number;
  readonly say: Say;
}

function CourseSection({ forecast, minutes, say }: CourseProps) {
  const { course, skipped } = forecast;
  if (course.seconds.length === 0) return null;
  const byDay = minutesByDay(course);
  const used = byDay.reduce((sum, each) => sum + each, 0) / byDay.length;
  return (
    <section className="unit-part">
      <h2>{say(phrase('progress.course'))}</h2>
      <CourseChart course={course} skipped={skipped} say={say} />
      <p>
        {used < (1 - SPARE) * minutes
          ? say(phrase('progress.minutes-spare', { used: Math.round(used), minutes }))
          : say(phrase('progress.minutes', { minutes }))}
      </p>
    </section>
  );
}

interface Props {
  readonly unit: Unit;
  readonly say: Say;
  readonly ledger: Ledger;
  readonly assignment: Assignment | undefined;
  readonly practice: Practice;
}

export function ProgressScreen({ unit, say, ledger, assignment, practice }: Props) {
  const { now } = useServices();
  const { day } = now();
  const facts = usePractisedFacts(unit, assignment);
  const outlook = useOutlook({ unit, facts, assignment, ledger, practice, day }, true);
  const { forecast, scale } = outlook;
  const classDay = practice.classDate === null ? null : dayOfDate(practice.classDate);
  const ahead = classDay !== null && classDay >= day;
  return (
    <Sheet
      top={
        <>
          <h1>{say(phrase('progress.title'))}</h1>
          <Link href="/">{say(phrase('app.back'))}</Link>
        </>
      }
      titleBlock={titleBlockOf(unit, say)}
    >
      {ahead ? (
        <section className="unit-part">
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
      ) : (
        <p className="note">{say(phrase('progress.no-class'))}</p>
      )}
      {forecast && <CourseSection forecast={forecast} minutes={practice.minutes} say={say} />}
      <section className="unit-part">
        <h2>{say(phrase('progress.topics'))}</h2>
        <Topics unit={unit} facts={facts} memory={ledger.memory} day={day} forecast={forecast} say={say} />
      </section>
      <Foreseen deck={unit.deck.id} ledger={ledger} personal={scale} ended={outlook.ended} say={say} />
    </Sheet>
  );
}
