/** Gearsets: counts, and what each gear sits with. */
import { CASE, GEARSET_KINDS, type GearsetKind, MEMBERS } from '../../core/gears/train.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { type Edit, freshId, type Place, valueAt } from '../../core/workshop/draft.ts';
import { freshShaft, INPUT, membersOn, OUTPUT, shaftsOfDraft } from '../../core/workshop/train.ts';
import type { Desk, SectionProps } from './desk.ts';
import { IdField, PickField, TextField } from './fields.tsx';
import { wordedOptions } from './options.ts';
import { Provenance } from './Provenance.tsx';
import { headOf, Records } from './Records.tsx';
import { shaftLabel } from './shafts.ts';

export const GEARSETS: Place = ['train', 'gearsets'];

/** A fresh shaft for each gear; the second set of a pair shares carrier and ring with the first. */
function addSet(desk: Desk, kind: GearsetKind, paired: boolean): Edit {
  const { draft } = desk;
  const ids = (draft.train?.gearsets ?? []).map(({ id }) => id);
  const [first, second] = [freshId('P', ids), freshId('P', [...ids, freshId('P', ids)])];
  const taken = [...shaftsOfDraft(draft), ...(draft.train?.shafts ?? []).map(({ id }) => id)];
  const shafts: string[] = [];
  while (shafts.length < 4) shafts.push(freshId('s', [...taken, ...shafts]));
  const [sun, ring, carrier, other] = shafts as [string, string, string, string];
  const set = (id: string, setKind: GearsetKind, sunShaft: string): Edit => ({
    kind: 'insert',
    at: GEARSETS,
    value: {
      id,
      kind: setKind,
      sun: { shaft: sunShaft },
      ring: { shaft: ring },
      carrier: { shaft: carrier },
    },
  });
  return {
    kind: 'all',
    edits: paired
      ? [set(first, 'simple', sun), set(second, 'double-pinion', other)]
      : [set(first, kind, sun)],
  };
}

function MemberFields({
  desk,
  at,
  set,
  member,
}: {
  desk: Desk;
  at: Place;
  set: number;
  member: (typeof MEMBERS)[number];
}) {
  const { draft, say, edit } = desk;
  const place = [...at, member, 'shaft'];
  const shaft = String(valueAt(draft, place) ?? '');
  const alone =
    membersOn(draft, shaft).length < 2 &&
    ![INPUT, OUTPUT, CASE, draft.train?.input, draft.train?.output].includes(shaft);
  const own = alone && shaft !== '' ? shaft : '';
  const options = [
    { value: own, label: say(phrase('workshop.own-shaft')) },
    ...shaftsOfDraft(draft)
      .filter((other) => other !== own)
      .map((other) => ({ value: other, label: shaftLabel(desk, other, { set, member }) })),
    { value: CASE, label: say(phrase('workshop.case')) },
  ];
  return (
    <>
      <PickField
        desk={desk}
        at={place}
        label={phrase('workshop.sits-with', { member })}
        options={options}
        onPick={(value) => edit({ kind: 'set', at: place, value: value === '' ? freshShaft(draft) : value })}
      />
      {member !== 'carrier' && (
        <TextField
          desk={desk}
          at={[...at, member, 'teeth']}
          label={phrase('workshop.teeth', { member })}
          inputMode="numeric"
          className="narrow"
        />
      )}
    </>
  );
}

export function Gearsets({ desk }: SectionProps) {
  const { say, edit } = desk;
  return (
    <>
      <Records
        desk={desk}
        at={GEARSETS}
        kind="gearset"
        head={(index) => headOf(desk, GEARSETS, index, 'workshop.set')}
      >
        {(at, set) => (
          <>
            <div className="fields tight">
              {MEMBERS.map((member) => (
                <MemberFields key={member} desk={desk} at={at} set={set} member={member} />
              ))}
              <TextField
                desk={desk}
                at={[...at, 'planets']}
                label={phrase('workshop.planets')}
                inputMode="numeric"
                className="narrow"
              />
              <PickField
                desk={desk}
                at={[...at, 'kind']}
                label={phrase('workshop.set-kind')}
                options={wordedOptions(say, GEARSET_KINDS, 'workshop.set-kind')}
              />
              <IdField
                kind="gearset"
                desk={desk}
                at={[...at, 'id']}
                label={phrase('workshop.id')}
                className="narrow"
              />
              <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
            </div>
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <div className="row-of-buttons">
        {GEARSET_KINDS.map((kind) => (
          <button
            key={kind}
            type="button"
            className="button plain"
            onClick={() => edit(addSet(desk, kind, false))}
          >
            {say(phrase(`workshop.add-set.${kind}`))}
          </button>
        ))}
        <button type="button" className="button plain" onClick={() => edit(addSet(desk, 'simple', true))}>
          {say(phrase('workshop.add-set.pair'))}
        </button>
      </div>
    </>
  );
}
