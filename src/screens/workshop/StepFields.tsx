/** One step: what is done, what it must wait for, and why. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { HAZARDS } from '../../core/unit/cautions.ts';
import { TORQUE_UNITS } from '../../core/unit/record.ts';
import type { Place } from '../../core/workshop/draft.ts';
import type { DraftSequence } from '../../core/workshop/steps.ts';
import { AmountField } from './AmountField.tsx';
import type { Desk } from './desk.ts';
import { Fold } from './Fold.tsx';
import { type Option, PickField, SeveralField, TextField } from './fields.tsx';
import { nameOptions, wordedOptions } from './options.ts';
import { Provenance } from './Provenance.tsx';
import { AddRecord, Records } from './Records.tsx';

type Step = NonNullable<DraftSequence['steps']>[number];

export const stepOptions = (steps: readonly Step[]): Option[] =>
  steps.flatMap(({ id, text }, index) => (id ? [{ value: id, label: `${index + 1}. ${text ?? id}` }] : []));

/** What must be done before a step, each with the reason. */
export function After({ desk, at, earlier }: { desk: Desk; at: Place; earlier: readonly Option[] }) {
  const list = [...at, 'after'];
  return (
    <>
      <Records desk={desk} at={list} head={() => phrase('workshop.after')}>
        {(entry) => (
          <div className="fields">
            <PickField
              desk={desk}
              at={[...entry, 'step']}
              label={phrase('workshop.after-step')}
              options={earlier}
            />
            <TextField desk={desk} at={[...entry, 'reason']} label={phrase('workshop.reason')} />
          </div>
        )}
      </Records>
      {earlier.length > 0 && (
        <AddRecord
          desk={desk}
          at={list}
          value={{ step: earlier.at(-1)!.value }}
          label={phrase('workshop.add-after')}
          small
        />
      )}
    </>
  );
}

export function StepFields({
  desk,
  at,
  earlier,
  turns,
}: {
  desk: Desk;
  at: Place;
  earlier: readonly Option[];
  turns: boolean;
}) {
  const { draft, say } = desk;
  const torques = nameOptions(draft.torques);
  return (
    <>
      <div className="fields">
        <TextField desk={desk} at={[...at, 'text']} label={phrase('workshop.step-text')} />
        {turns && <TextField desk={desk} at={[...at, 'turned']} label={phrase('workshop.step-turned')} />}
      </div>
      <After desk={desk} at={at} earlier={earlier} />
      <Fold summary={say(phrase('workshop.more-of-step'))}>
        <div className="fields tight">
          <TextField desk={desk} at={[...at, 'tool']} label={phrase('workshop.tool')} />
          <AmountField
            desk={desk}
            at={[...at, 'torque']}
            label={phrase('workshop.torque')}
            units={TORQUE_UNITS}
          />
          {torques.length > 0 && (
            <PickField
              desk={desk}
              at={[...at, 'tightens']}
              label={phrase('workshop.tightens')}
              options={torques}
              none={phrase('workshop.not-said')}
            />
          )}
          <TextField desk={desk} at={[...at, 'ifSkipped']} label={phrase('workshop.if-skipped')} />
        </div>
        <SeveralField
          desk={desk}
          at={[...at, 'hazards']}
          label={phrase('workshop.hazards')}
          options={wordedOptions(say, HAZARDS, 'workshop.hazard')}
        />
        <Provenance desk={desk} at={at} />
      </Fold>
    </>
  );
}
