/** What is asked, of whom, until when. */
import { useId, useMemo, useState } from 'react';
import { areaOf, assignedFacts } from '../../core/assign/assignment.ts';
import type { Fact } from '../../core/questions/facts.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { AREAS } from '../../core/self-check/areas.ts';
import type { Say } from '../../words/words.ts';
import { scopePhrase } from '../handing/assignments.ts';
import { CountingFields } from './CountingFields.tsx';
import { type AssignFault, type AssignFields, readFields, scopeOf } from './fields.ts';

interface Props {
  readonly start: AssignFields;
  /** Facts of the deck. */
  readonly facts: readonly Fact[];
  /** Number of the issue it will be. */
  readonly issue: number;
  /** The revision it was handed out with before, where the deck has a later one now. */
  readonly before: number | null;
  readonly revision: number;
  readonly say: Say;
  readonly onMake: (fields: AssignFields) => void;
}

export function AssignForm({ start, facts, issue, before, revision, say, onMake }: Props) {
  const [fields, setFields] = useState(start);
  const [faults, setFaults] = useState<readonly AssignFault[]>([]);
  const zoneList = useId();
  const [zones, setZones] = useState<readonly string[]>([]);
  const change = (changed: Partial<AssignFields>) => setFields({ ...fields, ...changed });
  const { kind, areas, facts: named } = fields;
  const asked = useMemo(
    () => assignedFacts({ scope: scopeOf({ kind, areas, facts: named }) }, facts).facts.length,
    [kind, areas, named, facts],
  );
  const able = useMemo(() => new Set(facts.map(areaOf)), [facts]);
  const field = (key: keyof AssignFields & string, type: string, more: object = {}) => (
    <label className="field">
      <span>{say(phrase(`assign.${key}`))}</span>
      <input
        type={type}
        value={String(fields[key])}
        onChange={(event) => change({ [key]: event.target.value })}
        {...more}
      />
    </label>
  );
  const tick = (key: 'cautioned' | 'withDeck', words: string) => (
    <label className="choice">
      <input
        type="checkbox"
        checked={fields[key]}
        onChange={(event) => change({ [key]: event.target.checked })}
      />
      <span>{say(phrase(words))}</span>
    </label>
  );
  const make = () => {
    const read = readFields(fields);
    const found = read.ok ? (asked === 0 ? (['areas'] as const) : []) : read.error;
    setFaults(found);
    if (found.length === 0) onMake(fields);
  };
  return (
    <form
      className="frame"
      onSubmit={(event) => {
        event.preventDefault();
        make();
      }}
    >
      {field('group', 'text', { autoComplete: 'off' })}
      <fieldset className="answer">
        <legend>{say(phrase('assign.what'))}</legend>
        <div className="choices">
          {(fields.kind === 'facts'
            ? (['deck', 'areas', 'facts'] as const)
            : (['deck', 'areas'] as const)
          ).map((kind) => (
            <label key={kind} className="choice">
              <input
                type="radio"
                name="scope"
                checked={fields.kind === kind}
                onChange={() => change({ kind })}
              />
              <span>
                {say(kind === 'areas' ? phrase('assign.areas') : scopePhrase(scopeOf({ ...fields, kind })))}
              </span>
            </label>
          ))}
        </div>
      </fieldset>
      {fields.kind === 'areas' && (
        <fieldset className="answer">
          <legend>{say(phrase('assign.which-areas'))}</legend>
          <div className="choices">
            {AREAS.filter((area) => able.has(area)).map((area) => (
              <label key={area} className="choice">
                <input
                  type="checkbox"
                  checked={fields.areas.includes(area)}
                  onChange={({ target }) =>
                    change({
                      areas: AREAS.filter((one) =>
                        one === area ? target.checked : fields.areas.includes(one),
                      ),
                    })
                  }
                />
                <span>{say(phrase(`area.${area}`))}</span>
              </label>
            ))}
          </div>
        </fieldset>
      )}
      <p className="aside" role="status">
        {say(phrase('assign.facts', { count: asked }))}
      </p>
      <CountingFields
        areas={AREAS.filter((area) => able.has(area) && (kind !== 'areas' || areas.includes(area)))}
        counting={fields.counting}
        say={say}
        onChange={(counting) => change({ counting })}
      />
      <div className="fields">
        {field('date', 'date')}
        {field('time', 'time')}
        {field('zone', 'text', {
          list: zoneList,
          autoComplete: 'off',
          spellCheck: false,
          // Some four hundred names, made only when somebody means to change his own.
          onFocus: () => setZones(Intl.supportedValuesOf('timeZone')),
        })}
        {field('minutes', 'number', { inputMode: 'numeric', min: 1, max: 120 })}
        {field('share', 'number', { inputMode: 'numeric', min: 1, max: 100 })}
      </div>
      <datalist id={zoneList}>
        {zones.map((zone) => (
          <option key={zone} value={zone} />
        ))}
      </datalist>
      <div className="choices wide">{tick('cautioned', 'assign.cautioned')}</div>
      <label className="field">
        <span>{say(phrase('assign.note'))}</span>
        <textarea rows={2} value={fields.note} onChange={(event) => change({ note: event.target.value })} />
      </label>
      <label className="field">
        <span>{say(phrase('assign.roster'))}</span>
        <textarea
          rows={3}
          value={fields.roster}
          onChange={(event) => change({ roster: event.target.value })}
        />
      </label>
      {before !== null && (
        <>
          <p>{say(phrase('assign.wrong-note', { before, after: revision }))}</p>
          <label className="field">
            <span>{say(phrase('assign.wrong'))}</span>
            <textarea
              rows={2}
              value={fields.wrong}
              onChange={(event) => change({ wrong: event.target.value })}
            />
          </label>
        </>
      )}
      <div className="choices wide">{tick('withDeck', 'assign.with-deck')}</div>
      <p className="aside">{say(phrase('assign.with-deck-note'))}</p>
      {faults.length > 0 && (
        <div className="note" role="alert">
          <ul className="steps">
            {faults.map((fault) => (
              <li key={fault}>{say(phrase(`assign.fault.${fault}`))}</li>
            ))}
          </ul>
        </div>
      )}
      <button type="submit" className="button key">
        {say(issue === 1 ? phrase('assign.make') : phrase('assign.make-again', { issue }))}
      </button>
    </form>
  );
}
