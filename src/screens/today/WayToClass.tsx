/** The way to class at a glance: what will be known, the most the minutes allow, what finds no time. */
import { areaOf } from '../../core/assign/assignment.ts';
import type { Fact } from '../../core/questions/facts.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { FactId } from '../../core/questions/question.ts';
import type { Practice } from '../../storage/rows.ts';
import type { Say } from '../../words/words.ts';
import type { Outlook } from '../use-outlook.ts';

const percent = (share: number) => Math.round(100 * share);

/** What the most is worth telling of; nothing where a learner is likely to be above what is usual. */
function ceilingPhrase(expected: number, ceilings: NonNullable<Outlook['ceilings']>): Phrase | null {
  const [now, twice] = ceilings;
  if (!now || !twice) return null;
  const values = {
    minutes: now.minutes,
    most: percent(now.atMost),
    more: twice.minutes,
    moreMost: percent(twice.atMost),
  };
  if (values.moreMost < percent(expected)) return null;
  if (values.most < percent(expected)) return phrase('plan.ceiling-more', values);
  return phrase(values.moreMost > values.most ? 'plan.ceiling' : 'plan.ceiling-flat', values);
}

function LeftOut({ facts, leftOut, say }: { facts: readonly Fact[]; leftOut: readonly FactId[]; say: Say }) {
  const out = new Set(leftOut);
  const counts = new Map<string, number>();
  for (const fact of facts) {
    const area = areaOf(fact);
    if (area && out.has(fact.id)) counts.set(area, (counts.get(area) ?? 0) + 1);
  }
  return (
    <details>
      <summary>{say(phrase('plan.left-out', { count: leftOut.length, all: facts.length }))}</summary>
      <p>{say(phrase('plan.which-out'))}</p>
      <ul className="steps">
        {[...counts]
          .sort((a, b) => b[1] - a[1])
          .map(([area, count]) => (
            <li key={area}>{say(phrase('plan.left-out-area', { area: phrase(`area.${area}`), count }))}</li>
          ))}
      </ul>
      <p>{say(phrase('plan.make-room'))}</p>
    </details>
  );
}

interface Props {
  readonly outlook: Outlook;
  readonly facts: readonly Fact[];
  readonly practice: Practice;
  readonly assigned: boolean;
  /** Class is today. */
  readonly today: boolean;
  readonly say: Say;
}

export function WayToClass({ outlook, facts, practice, assigned, today, say }: Props) {
  const { forecast, ceilings, ended } = outlook;
  if (!forecast) return <p className="aside">{say(phrase(ended ? 'plan.not-here' : 'plan.waiting'))}</p>;
  const { expected, low, high } = forecast.readiness.all;
  const range = { share: percent(expected), low: percent(low), high: percent(high) };
  if (today) return <p>{say(phrase('plan.forecast-today', range))}</p>;
  const ceiling = ceilings && ceilingPhrase(expected, ceilings);
  const { course, skipped } = forecast;
  const worth = Math.round(facts.length * (course.recalled.at(-1)! - skipped.recalled.at(-1)!));
  const { minutes, daysAWeek } = practice;
  return (
    <>
      <p className="key-line">{say(phrase('plan.forecast', range))}</p>
      {ceiling && <p>{say(ceiling)}</p>}
      {worth > 0 && <p>{say(phrase('plan.worth', { facts: worth }))}</p>}
      <p className="aside">
        {say(phrase('plan.meaning', { assigned: assigned ? 'yes' : 'no', minutes, days: daysAWeek }))}
      </p>
      {forecast.leftOut.length > 0 && <LeftOut facts={facts} leftOut={forecast.leftOut} say={say} />}
    </>
  );
}
