/** What sits around the oil: speed sensors, interlocks, and where the solenoids are on the valve body. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { freshId, type Place } from '../../core/workshop/draft.ts';
import type { SectionProps } from './desk.ts';
import { IdField, PickField, SeveralField, TextField } from './fields.tsx';
import { frictionOf, idOptions } from './options.ts';
import { Provenance, Vouch } from './Provenance.tsx';
import { AddRecord, headOf, Records } from './Records.tsx';
import { shaftOptions } from './shafts.ts';
import { ValveBody } from './ValveBody.tsx';

const SENSORS: Place = ['sensors'];
const INTERLOCKS: Place = ['interlocks'];

function Sensors({ desk }: SectionProps) {
  const { draft, say } = desk;
  const { input, output } = draft.train ?? {};
  const sensors = draft.sensors ?? [];
  const taken = sensors.map(({ id }) => id);
  /** A sensor on the input, one on the output, then others. */
  const next = [
    { id: 'input-speed', reads: input },
    { id: 'output-speed', reads: output },
  ].find(({ id, reads }) => reads && !taken.includes(id)) ?? {
    id: freshId('speed-', taken),
    reads: undefined,
  };
  return (
    <>
      <h3>{say(phrase('workshop.sensors'))}</h3>
      <p className="aside">{say(phrase('workshop.sensors-hint'))}</p>
      <Records
        folds
        desk={desk}
        at={SENSORS}
        kind="sensor"
        head={(index) => headOf(desk, SENSORS, index, 'workshop.sensor')}
      >
        {(at) => (
          <>
            <div className="fields tight">
              <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
              <PickField
                desk={desk}
                at={[...at, 'reads']}
                label={phrase('workshop.reads')}
                options={shaftOptions(desk)}
              />
              <TextField
                desk={desk}
                at={[...at, 'teeth']}
                label={phrase('workshop.sensor-teeth')}
                inputMode="numeric"
                className="narrow"
              />
              <IdField kind="sensor" desk={desk} at={[...at, 'id']} label={phrase('workshop.short-id')} />
            </div>
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <AddRecord
        desk={desk}
        at={SENSORS}
        value={{ id: next.id, ...(next.reads && { reads: next.reads }) }}
        label={phrase('workshop.add-sensor')}
      />
    </>
  );
}

function Interlocks({ desk }: SectionProps) {
  const { draft, say } = desk;
  const friction = idOptions(frictionOf(draft));
  return (
    <>
      <h3>{say(phrase('workshop.interlocks'))}</h3>
      <p className="aside">{say(phrase('workshop.interlocks-hint'))}</p>
      <Records
        folds
        desk={desk}
        at={INTERLOCKS}
        head={(index) => headOf(desk, INTERLOCKS, index, 'workshop.interlock')}
      >
        {(at) => (
          <>
            <div className="fields tight">
              <TextField desk={desk} at={[...at, 'id']} label={phrase('workshop.id')} className="narrow" />
              <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
            </div>
            <SeveralField
              desk={desk}
              at={[...at, 'whenApplied']}
              label={phrase('workshop.when-applied')}
              options={friction}
            />
            <SeveralField
              desk={desk}
              at={[...at, 'blocks']}
              label={phrase('workshop.blocks')}
              options={friction}
            />
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <AddRecord desk={desk} at={INTERLOCKS} stem="X" label={phrase('workshop.add-interlock')} />
    </>
  );
}

export function ControlSection({ desk }: SectionProps) {
  return (
    <>
      <Sensors desk={desk} />
      <Interlocks desk={desk} />
      <ValveBody desk={desk} />
      <Vouch desk={desk} lists={[SENSORS, INTERLOCKS]} />
    </>
  );
}
