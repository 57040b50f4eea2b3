/** Everybody on the board in the order of names; what stands behind each verdict is beside it. */
import { useState } from 'react';
import type { Person } from '../../core/group/board.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';
import type { OpenedGroup } from './open-group.ts';
import { PersonDetails } from './PersonDetails.tsx';
import { percent, readinessPhrase } from './told.ts';

interface Props {
  readonly group: OpenedGroup;
  readonly say: Say;
  readonly onChange: () => void;
}

const SHOWN = ['all', 'make-up', 'likely', 'open', 'unlikely'] as const;
type Shown = (typeof SHOWN)[number];

const isShown = (shown: Shown) => (person: Person) =>
  shown === 'all' || (shown === 'make-up' ? person.makeUp !== null : person.likely === shown);

/** The interval on a line from 0 to 100 %, the threshold as a stroke; the words beside it say the same. */
function IntervalBar({ low, high, threshold }: { low: number; high: number; threshold: number }) {
  return (
    <div className="interval-bar" aria-hidden="true">
      <span style={{ left: `${percent(low)}%`, right: `${100 - percent(high)}%` }} />
      <i style={{ left: `${percent(threshold)}%` }} />
    </div>
  );
}

function PersonRow({ person, group, say, onChange }: Props & { person: Person }) {
  const [open, setOpen] = useState(false);
  const { readiness } = person;
  return (
    <li className="person">
      <details onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          <span className="person-name">{person.name}</span>
          <span className="person-likely">
            {say(phrase(person.started ? `group.likely.${person.likely}` : 'group.not-started'))}
            {person.makeUp && `, ${say(phrase('group.needs-make-up'))}`}
          </span>
        </summary>
        {open && <PersonDetails person={person} group={group} say={say} onChange={onChange} />}
      </details>
      <IntervalBar low={readiness.low} high={readiness.high} threshold={group.assignment.threshold.share} />
      <p className="aside">{say(readinessPhrase(readiness))}</p>
    </li>
  );
}

export function People({ group, say, onChange }: Props) {
  const [shown, setShown] = useState<Shown>('all');
  const people = group.board.people.filter(isShown(shown));
  return (
    <>
      <label className="field">
        <span>{say(phrase('group.show'))}</span>
        <select value={shown} onChange={(event) => setShown(event.target.value as Shown)}>
          {SHOWN.map((one) => (
            <option key={one} value={one}>
              {say(phrase(`group.show.${one}`, { count: group.board.people.filter(isShown(one)).length }))}
            </option>
          ))}
        </select>
      </label>
      <ul className="people">
        {people.map((person) => (
          <PersonRow key={person.learner} person={person} group={group} say={say} onChange={onChange} />
        ))}
      </ul>
    </>
  );
}
