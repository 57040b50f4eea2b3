/** What the self-check is to hold: questions, time, aim, and how much of each area. */
import { useState } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import { AREAS, type Area } from '../../core/self-check/areas.ts';
import { type Blueprint, checkBlueprint } from '../../core/self-check/blueprint.ts';
import type { Say } from '../../words/words.ts';

interface Props {
  readonly blueprint: Blueprint;
  /** Areas in which this unit has something to ask. */
  readonly able: ReadonlySet<Area>;
  readonly say: Say;
  readonly onStart: (blueprint: Blueprint) => void;
}

/** The fields as typed; numbers are read when it starts. */
interface Fields {
  readonly questions: string;
  readonly minutes: string;
  readonly threshold: string;
  readonly unseen: string;
  readonly pauses: boolean;
  readonly weights: Readonly<Record<Area, string>>;
}

const fieldsOf = (blueprint: Blueprint): Fields => ({
  questions: String(blueprint.questions),
  minutes: blueprint.minutes === null ? '' : String(blueprint.minutes),
  threshold: String(Math.round(blueprint.threshold * 100)),
  unseen: String(Math.round(blueprint.unseenShare * 100)),
  pauses: blueprint.pauses,
  weights: Object.fromEntries(AREAS.map((area) => [area, String(blueprint.weights[area])])) as Record<
    Area,
    string
  >,
});

const blueprintOf = (fields: Fields): Blueprint => ({
  questions: Number(fields.questions),
  minutes: fields.minutes.trim() === '' ? null : Number(fields.minutes),
  threshold: Number(fields.threshold) / 100,
  unseenShare: Math.min(1, Math.max(0, Number(fields.unseen) / 100 || 0)),
  pauses: fields.pauses,
  weights: Object.fromEntries(AREAS.map((area) => [area, Number(fields.weights[area])])) as Record<
    Area,
    number
  >,
});

export function SetupForm({ blueprint, able, say, onStart }: Props) {
  const [fields, setFields] = useState(() => fieldsOf(blueprint));
  const [faults, setFaults] = useState<readonly string[]>([]);
  const change = (changed: Partial<Fields>) => setFields({ ...fields, ...changed });
  const start = () => {
    const checked = checkBlueprint(blueprintOf(fields));
    setFaults(checked.ok ? [] : checked.error);
    if (checked.ok) onStart(checked.value);
  };
  const number = (label: string, value: string, onChange: (value: string) => void) => (
    <label className="field">
      <span>{label}</span>
      <input
        type="text"
        inputMode="numeric"
        value={value}
        onChange={(event) => onChange(event.target.value)}
      />
    </label>
  );
  return (
    <form
      className="frame"
      onSubmit={(event) => {
        event.preventDefault();
        start();
      }}
    >
      <p>{say(phrase('self-check.about'))}</p>
      <div className="fields">
        {number(say(phrase('self-check.questions-field')), fields.questions, (questions) =>
          change({ questions }),
        )}
        {number(say(phrase('self-check.minutes-field')), fields.minutes, (minutes) => change({ minutes }))}
        {number(say(phrase('self-check.threshold-field')), fields.threshold, (threshold) =>
          change({ threshold }),
        )}
        {number(say(phrase('self-check.unseen-field')), fields.unseen, (unseen) => change({ unseen }))}
      </div>
      <fieldset className="answer">
        <legend>{say(phrase('self-check.pocket'))}</legend>
        <div className="choices">
          {[true, false].map((pauses) => (
            <label key={String(pauses)} className="choice">
              <input
                type="radio"
                name="pauses"
                checked={fields.pauses === pauses}
                onChange={() => change({ pauses })}
              />
              <span>{say(phrase(pauses ? 'self-check.pocket-stops' : 'self-check.pocket-runs'))}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <details>
        <summary>{say(phrase('self-check.weights'))}</summary>
        <p className="aside">{say(phrase('self-check.weights-note'))}</p>
        <div className="fields">
          {AREAS.filter((area) => able.has(area)).map((area) => (
            <div key={area}>
              {number(say(phrase(`area.${area}`)), fields.weights[area], (weight) =>
                change({ weights: { ...fields.weights, [area]: weight } }),
              )}
            </div>
          ))}
        </div>
      </details>
      {faults.length > 0 && (
        <ul className="note steps" role="alert">
          {faults.map((fault) => (
            <li key={fault}>{say(phrase(`self-check.fault.${fault}`))}</li>
          ))}
        </ul>
      )}
      <button type="submit" className="button key">
        {say(phrase('today.start'))}
      </button>
    </form>
  );
}
