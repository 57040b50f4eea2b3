/** Wires: what feeds what, resistances at 20 °C, and the connectors that a meter is put to. */
import { SIDES } from '../../core/electrical/driver.ts';
import { HEAT_SENSES } from '../../core/electrical/heat-sense.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { PICKUP_KINDS } from '../../core/unit/electrical.ts';
import { RESISTANCE_UNITS, TEMPERATURE_UNITS } from '../../core/unit/record.ts';
import type { Edit, Place } from '../../core/workshop/draft.ts';
import { AmountField, BandFields } from './AmountField.tsx';
import { Connectors } from './Connectors.tsx';
import type { Desk, SectionProps } from './desk.ts';
import { IdField, PickField, TextField, textAt } from './fields.tsx';
import { nameOptions, wordedOptions } from './options.ts';
import { Provenance, Vouch } from './Provenance.tsx';
import { AddRecord, headOf, Records } from './Records.tsx';

const SUPPLIES: Place = ['electrical', 'supplies'];
const WINDINGS: Place = ['electrical', 'windings'];
const PICKUPS: Place = ['electrical', 'pickups'];
const THERMISTORS: Place = ['electrical', 'thermistors'];

const idsOf = (list: readonly { readonly id?: string | undefined }[] | undefined): string[] =>
  (list ?? []).flatMap(({ id }) => id ?? []);

function AtTwenty({ desk, at }: { desk: Desk; at: Place }) {
  return (
    <BandFields
      desk={desk}
      at={[...at, 'at20']}
      low={phrase('workshop.least-ohms')}
      high={phrase('workshop.most-ohms')}
      units={RESISTANCE_UNITS}
    />
  );
}

function Supplies({ desk }: SectionProps) {
  const { say } = desk;
  return (
    <>
      <h3>{say(phrase('workshop.supplies'))}</h3>
      <p className="aside">{say(phrase('workshop.supplies-hint'))}</p>
      <Records
        folds
        desk={desk}
        at={SUPPLIES}
        kind="supply"
        head={(index) => headOf(desk, SUPPLIES, index, 'workshop.supply')}
      >
        {(at) => (
          <>
            <div className="fields tight">
              <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
              <IdField kind="supply" desk={desk} at={[...at, 'id']} label={phrase('workshop.short-id')} />
            </div>
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <AddRecord desk={desk} at={SUPPLIES} stem="feed-" label={phrase('workshop.add-supply')} />
    </>
  );
}

function Windings({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const windings = draft.electrical?.windings ?? [];
  const solenoids = idsOf(draft.solenoids);
  const supplies = nameOptions(draft.electrical?.supplies);
  const without = solenoids.filter((id) => !windings.some(({ solenoid }) => solenoid === id));
  const kindOf = (solenoid: string | undefined) => draft.solenoids?.find(({ id }) => id === solenoid)?.kind;
  /** Windings of one kind are alike as a rule: the first that is filled in says it for all that are empty. */
  const likeFirst = () =>
    edit({
      kind: 'all',
      edits: windings.flatMap((winding, index): Edit[] => {
        const model = windings.find(
          ({ solenoid, at20 }) => at20 !== undefined && kindOf(solenoid) === kindOf(winding.solenoid),
        );
        if (!model || winding.at20 !== undefined) return [];
        return (['at20', 'supply', 'switched'] as const).flatMap((field): Edit[] =>
          winding[field] === undefined && model[field] !== undefined
            ? [{ kind: 'set', at: [...WINDINGS, index, field], value: model[field] }]
            : [],
        );
      }),
    });
  const add = (ids: readonly string[]) =>
    edit({
      kind: 'all',
      edits: ids.map((solenoid) => ({
        kind: 'insert',
        at: WINDINGS,
        value: {
          solenoid,
          ...(supplies.length === 1 && { supply: supplies[0]!.value }),
          ...(windings.at(-1)?.switched !== undefined && { switched: windings.at(-1)!.switched }),
        },
      })),
    });
  return (
    <>
      <h3>{say(phrase('workshop.windings'))}</h3>
      <Records
        folds
        desk={desk}
        at={WINDINGS}
        head={(index) => phrase('workshop.winding', { solenoid: windings[index]?.solenoid ?? '' })}
      >
        {(at) => (
          <>
            <div className="fields tight">
              <AtTwenty desk={desk} at={at} />
              <PickField
                desk={desk}
                at={[...at, 'supply']}
                label={phrase('workshop.fed-by')}
                options={supplies}
              />
              <PickField
                desk={desk}
                at={[...at, 'switched']}
                label={phrase('workshop.switched')}
                options={wordedOptions(say, SIDES, 'workshop.switched')}
              />
              <PickField
                desk={desk}
                at={[...at, 'solenoid']}
                label={phrase('workshop.of-solenoid')}
                options={solenoids.map((value) => ({ value, label: value }))}
              />
            </div>
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <div className="row-of-buttons">
        {without.length > 0 && (
          <button type="button" className="button plain" onClick={() => add(without)}>
            {say(phrase('workshop.add-windings', { solenoids: without }))}
          </button>
        )}
        {windings.some(({ at20 }) => at20 === undefined) && windings.some(({ at20 }) => at20) && (
          <button type="button" className="button plain" onClick={likeFirst}>
            {say(phrase('workshop.windings-alike'))}
          </button>
        )}
      </div>
    </>
  );
}

function Pickups({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const pickups = draft.electrical?.pickups ?? [];
  const sensors = nameOptions(draft.sensors);
  const without = sensors.filter(({ value }) => !pickups.some(({ sensor }) => sensor === value));
  return (
    <>
      <h3>{say(phrase('workshop.pickups'))}</h3>
      <Records
        folds
        desk={desk}
        at={PICKUPS}
        head={(index) =>
          phrase('workshop.pickup', {
            sensor: sensors.find(({ value }) => value === pickups[index]?.sensor)?.label ?? '',
          })
        }
      >
        {(at) => {
          const kind = textAt(desk, [...at, 'kind']);
          return (
            <>
              <div className="fields tight">
                <PickField
                  desk={desk}
                  at={[...at, 'kind']}
                  label={phrase('workshop.pickup-kind')}
                  options={wordedOptions(say, PICKUP_KINDS, 'workshop.pickup-kind')}
                  onPick={(value) =>
                    edit({
                      kind: 'all',
                      edits: [
                        { kind: 'set', at: [...at, 'kind'], value: value || undefined },
                        // What the other kind has does not stay behind.
                        { kind: 'set', at: [...at, value === 'coil' ? 'supply' : 'at20'], value: undefined },
                      ],
                    })
                  }
                />
                {kind === 'coil' && <AtTwenty desk={desk} at={at} />}
                {kind === 'hall' && (
                  <PickField
                    desk={desk}
                    at={[...at, 'supply']}
                    label={phrase('workshop.fed-by')}
                    options={nameOptions(draft.electrical?.supplies)}
                  />
                )}
              </div>
              <Provenance desk={desk} at={at} />
            </>
          );
        }}
      </Records>
      {without.length > 0 && (
        <button
          type="button"
          className="button plain"
          onClick={() =>
            edit({
              kind: 'all',
              edits: without.map(({ value }) => ({ kind: 'insert', at: PICKUPS, value: { sensor: value } })),
            })
          }
        >
          {say(phrase('workshop.add-pickups', { sensors: without.map(({ label }) => label) }))}
        </button>
      )}
    </>
  );
}

function Thermistors({ desk }: SectionProps) {
  const { say } = desk;
  return (
    <>
      <h3>{say(phrase('workshop.thermistors'))}</h3>
      <Records
        folds
        desk={desk}
        at={THERMISTORS}
        kind="thermistor"
        head={(index) => headOf(desk, THERMISTORS, index, 'workshop.thermistor')}
      >
        {(at) => (
          <>
            <div className="fields tight">
              <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
              <PickField
                desk={desk}
                at={[...at, 'sense']}
                label={phrase('workshop.heat-sense')}
                options={wordedOptions(say, HEAT_SENSES, 'workshop.heat-sense')}
              />
              <IdField kind="thermistor" desk={desk} at={[...at, 'id']} label={phrase('workshop.short-id')} />
            </div>
            <Records
              desk={desk}
              at={[...at, 'points']}
              head={(index) => phrase('workshop.point', { number: index + 1 })}
            >
              {(point) => (
                <div className="fields tight">
                  <AmountField
                    desk={desk}
                    at={[...point, 'at']}
                    label={phrase('workshop.at-heat')}
                    units={TEMPERATURE_UNITS}
                  />
                  <BandFields
                    desk={desk}
                    at={[...point, 'ohms']}
                    low={phrase('workshop.least-ohms-there')}
                    high={phrase('workshop.most-ohms-there')}
                    units={RESISTANCE_UNITS}
                  />
                </div>
              )}
            </Records>
            <AddRecord desk={desk} at={[...at, 'points']} label={phrase('workshop.add-point')} small />
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <AddRecord
        desk={desk}
        at={THERMISTORS}
        stem="heat-"
        value={{ points: [{}] }}
        label={phrase('workshop.add-thermistor')}
      />
    </>
  );
}

export function WireSection({ desk }: SectionProps) {
  return (
    <>
      <Supplies desk={desk} />
      <Windings desk={desk} />
      <Pickups desk={desk} />
      <Thermistors desk={desk} />
      <Connectors desk={desk} />
      <Vouch desk={desk} lists={[SUPPLIES, WINDINGS, PICKUPS, THERMISTORS, ['electrical', 'connectors']]} />
    </>
  );
}
