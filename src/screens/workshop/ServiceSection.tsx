/** Fluids, torques by place, and what things weigh. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { MASS_UNITS, TEMPERATURE_UNITS, TORQUE_UNITS, VOLUME_UNITS } from '../../core/unit/record.ts';
import { usualUnit } from '../../core/workshop/amounts.ts';
import type { Place } from '../../core/workshop/draft.ts';
import { torquesFromLines } from '../../core/workshop/service-lines.ts';
import { AmountField, BandFields } from './AmountField.tsx';
import type { SectionProps } from './desk.ts';
import { IdField, TextField } from './fields.tsx';
import { LinesBox } from './LinesBox.tsx';
import { Provenance, Vouch } from './Provenance.tsx';
import { AddRecord, headOf, Records } from './Records.tsx';

const FLUIDS: Place = ['fluids'];
const TORQUES: Place = ['torques'];
const WEIGHTS: Place = ['weights'];

function Fluids({ desk }: SectionProps) {
  const { say } = desk;
  return (
    <>
      <h3>{say(phrase('workshop.fluids'))}</h3>
      <Records
        folds
        desk={desk}
        at={FLUIDS}
        kind="fluid"
        head={(index) => headOf(desk, FLUIDS, index, 'workshop.fluid')}
      >
        {(at) => (
          <>
            <TextField
              desk={desk}
              at={[...at, 'type']}
              label={phrase('workshop.fluid-type')}
              hint={phrase('workshop.fluid-type-hint')}
            />
            <div className="fields tight">
              <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
              <AmountField
                desk={desk}
                at={[...at, 'dryFill']}
                label={phrase('workshop.dry-fill')}
                units={VOLUME_UNITS}
              />
              <AmountField
                desk={desk}
                at={[...at, 'refill']}
                label={phrase('workshop.refill')}
                units={VOLUME_UNITS}
              />
              <BandFields
                desk={desk}
                at={[...at, 'levelAt']}
                low={phrase('workshop.level-from')}
                high={phrase('workshop.level-to')}
                units={TEMPERATURE_UNITS}
              />
            </div>
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <AddRecord desk={desk} at={FLUIDS} stem="fluid-" label={phrase('workshop.add-fluid')} />
    </>
  );
}

function Torques({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const usual = usualUnit(draft, TORQUE_UNITS);
  return (
    <>
      <h3>{say(phrase('workshop.torques'))}</h3>
      <LinesBox
        say={say}
        label={phrase('workshop.torque-lines')}
        how={phrase('workshop.torque-lines-how', { unit: usual })}
        onTake={(text) =>
          edit({
            kind: 'all',
            edits: torquesFromLines(
              text,
              usual,
              (draft.torques ?? []).map(({ id }) => id),
            ).map((value) => ({ kind: 'insert', at: TORQUES, value })),
          })
        }
      />
      <Records
        folds
        desk={desk}
        at={TORQUES}
        kind="torque"
        head={(index) => headOf(desk, TORQUES, index, 'workshop.torque-at')}
      >
        {(at) => (
          <>
            <div className="fields tight">
              <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.what-it-holds')} />
              <AmountField
                desk={desk}
                at={[...at, 'torque']}
                label={phrase('workshop.torque')}
                units={TORQUE_UNITS}
              />
              <TextField
                desk={desk}
                at={[...at, 'count']}
                label={phrase('workshop.how-many')}
                inputMode="numeric"
                className="narrow"
              />
              <IdField kind="torque" desk={desk} at={[...at, 'id']} label={phrase('workshop.short-id')} />
            </div>
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
    </>
  );
}

function Weights({ desk }: SectionProps) {
  const { say } = desk;
  return (
    <>
      <h3>{say(phrase('workshop.weights'))}</h3>
      <Records
        folds
        desk={desk}
        at={WEIGHTS}
        kind="weight"
        head={(index) => headOf(desk, WEIGHTS, index, 'workshop.weight')}
      >
        {(at) => (
          <>
            <div className="fields tight">
              <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.what-it-is')} />
              <AmountField
                desk={desk}
                at={[...at, 'mass']}
                label={phrase('workshop.mass')}
                units={MASS_UNITS}
              />
            </div>
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <AddRecord desk={desk} at={WEIGHTS} stem="weight-" label={phrase('workshop.add-weight')} />
    </>
  );
}

export function ServiceSection({ desk }: SectionProps) {
  return (
    <>
      <Fluids desk={desk} />
      <Torques desk={desk} />
      <Weights desk={desk} />
      <Vouch desk={desk} lists={[FLUIDS, TORQUES, WEIGHTS]} />
    </>
  );
}
