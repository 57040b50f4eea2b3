/** Minutes, class date and days a week: what the plan counts on. Each change is kept at once. */
import { type FormEvent, useState } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Practice } from '../../storage/rows.ts';
import type { Say } from '../../words/words.ts';

const DAYS_A_WEEK = [1, 2, 3, 4, 5, 6, 7];

interface Props {
  readonly practice: Practice;
  readonly say: Say;
  readonly onPractice: (practice: Practice) => void;
}

export function PracticeForm({ practice, say, onPractice }: Props) {
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
        <label className="field">
          <span>{say(phrase('plan.days-field'))}</span>
          <select
            value={practice.daysAWeek}
            onChange={(event) => onPractice({ ...practice, daysAWeek: Number(event.target.value) })}
          >
            {DAYS_A_WEEK.map((days) => (
              <option key={days} value={days}>
                {days}
              </option>
            ))}
          </select>
        </label>
      </form>
    </details>
  );
}
