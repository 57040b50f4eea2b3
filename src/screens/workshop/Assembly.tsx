/** How a sequence goes together: the order that follows from taking apart, and what is not simply turned round. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Place } from '../../core/workshop/draft.ts';
import { assemblyOfDraft, type DraftSequence, stepIdFrom } from '../../core/workshop/steps.ts';
import type { Desk } from './desk.ts';
import { PickField, TextField, textAt } from './fields.tsx';
import { AddRecord, Records } from './Records.tsx';
import { After, stepOptions } from './StepFields.tsx';

export function Assembly({ desk, at, sequence }: { desk: Desk; at: Place; sequence: DraftSequence }) {
  const { say, edit } = desk;
  const place = [...at, 'assembly'];
  const made = assemblyOfDraft(sequence);
  const steps = sequence.steps ?? [];
  const added = sequence.assembly?.added ?? [];
  const all = [...steps, ...added];
  const leftOut = sequence.assembly?.leftOut ?? [];
  const textOf = (id: string) => {
    const step = all.find((one) => one.id === id);
    return step?.turned ?? step?.text ?? id;
  };
  const options = stepOptions(all).map(({ value }) => ({ value, label: textOf(value) }));
  return (
    <>
      <h4>{say(phrase('workshop.assembly'))}</h4>
      {made.ok ? (
        <ol className="steps">
          {made.value.map((id) => (
            <li key={id}>{textOf(id)}</li>
          ))}
        </ol>
      ) : (
        <p className="note">
          {say(
            phrase('workshop.assembly-waits', {
              code: made.error.code === 'too-early' ? 'early' : made.error.code,
            }),
          )}
        </p>
      )}
      <p>{say(phrase('workshop.not-turned'))}</p>
      <fieldset className="answer">
        <legend>{say(phrase('workshop.strip-only'))}</legend>
        <div className="choices wide">
          {steps.map((step) => {
            const index = leftOut.findIndex((entry) => entry.step === step.id);
            return (
              <label key={step.id} className="choice">
                <input
                  type="checkbox"
                  checked={index >= 0}
                  onChange={() =>
                    edit(
                      index >= 0
                        ? { kind: 'remove', at: [...place, 'leftOut', index] }
                        : { kind: 'insert', at: [...place, 'leftOut'], value: { step: step.id } },
                    )
                  }
                />
                <span>{step.text}</span>
              </label>
            );
          })}
        </div>
      </fieldset>
      {leftOut.map((entry, index) => (
        <TextField
          // biome-ignore lint/suspicious/noArrayIndexKey: an entry has no other identity
          key={index}
          desk={desk}
          at={[...place, 'leftOut', index, 'reason']}
          label={phrase('workshop.why-strip-only', {
            step: steps.find(({ id }) => id === entry.step)?.text ?? '',
          })}
        />
      ))}
      <Records
        desk={desk}
        at={[...place, 'added']}
        head={(index) => phrase('workshop.assembly-step', { number: index + 1 })}
      >
        {(step) => (
          <>
            <TextField desk={desk} at={[...step, 'text']} label={phrase('workshop.step-text')} />
            <After
              desk={desk}
              at={step}
              earlier={options.filter(({ value }) => value !== textAt(desk, [...step, 'id']))}
            />
          </>
        )}
      </Records>
      {(['imposed', 'lifted'] as const).map((list) => (
        <Records key={list} desk={desk} at={[...place, list]} head={() => phrase(`workshop.${list}`)}>
          {(relation) => (
            <div className="fields">
              <PickField
                desk={desk}
                at={[...relation, 'earlier']}
                label={phrase('workshop.earlier')}
                options={options}
              />
              <PickField
                desk={desk}
                at={[...relation, 'later']}
                label={phrase('workshop.later')}
                options={options}
              />
              <TextField desk={desk} at={[...relation, 'reason']} label={phrase('workshop.reason')} />
            </div>
          )}
        </Records>
      ))}
      <div className="row-of-buttons">
        <AddRecord
          desk={desk}
          at={[...place, 'added']}
          value={{
            id: stepIdFrom(
              'assembly step',
              all.map(({ id }) => id),
            ),
            text: '',
          }}
          label={phrase('workshop.add-assembly-step')}
        />
        <AddRecord desk={desk} at={[...place, 'imposed']} label={phrase('workshop.add-imposed')} />
        <AddRecord desk={desk} at={[...place, 'lifted']} label={phrase('workshop.add-lifted')} />
      </div>
    </>
  );
}
