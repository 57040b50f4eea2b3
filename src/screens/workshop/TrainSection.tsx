/** The gear train: sets with their counts, what sits with what, the elements; drawn as far as it is described. */
import { useMemo } from 'react';
import { CASE, ELEMENT_KINDS, GEARSET_KINDS, type GearsetKind, MEMBERS } from '../../core/gears/train.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { type Edit, freshId, type Place, valueAt } from '../../core/workshop/draft.ts';
import {
  drawnTrain,
  freshShaft,
  INPUT,
  membersOn,
  OUTPUT,
  shaftNames,
  shaftsOfDraft,
  unitToDraw,
} from '../../core/workshop/train.ts';
import { TrainDiagram } from '../../ui/drawings/TrainDiagram.tsx';
import '../../ui/drawings/drawings.css';
import { makeSay } from '../../words/words.ts';
import type { Desk, SectionProps } from './desk.ts';
import { IdField, PickField, TextField } from './fields.tsx';
import { Provenance, Vouch } from './Provenance.tsx';
import { Records } from './Records.tsx';
import { shaftLabel, shaftOptions } from './shafts.ts';

const GEARSETS: Place = ['train', 'gearsets'];
const ELEMENTS: Place = ['train', 'elements'];

/** The drawing of what is described so far. It is made anew only when the train is another one. */
function Sketch({ desk }: SectionProps) {
  const { settled, say } = desk;
  const drawn = drawnTrain(settled);
  const text = drawn && JSON.stringify([drawn, settled.unit, shaftNames(settled)]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text is all that the drawing rests on
  const unit = useMemo(() => {
    if (!drawn) return null;
    return unitToDraw(settled, { train: { ...drawn, shafts: shaftNames(settled) } });
  }, [text]);
  const named = useMemo(() => unit && makeSay(unit.deck), [unit]);
  if (!unit || !named) return <p className="note">{say(phrase('workshop.nothing-to-draw'))}</p>;
  const counted = unit.deck.train.gearsets.every(({ sun, ring }) => sun.teeth > 0 && ring.teeth > 0);
  return (
    <figure className="dr-figure">
      <TrainDiagram drawing={{ kind: 'train', showTeeth: counted }} unit={unit} say={named} />
    </figure>
  );
}

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

function Gearsets({ desk }: SectionProps) {
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
                options={GEARSET_KINDS.map((kind) => ({
                  value: kind,
                  label: say(phrase(`workshop.set-kind.${kind}`)),
                }))}
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

export const headOf = (desk: Desk, at: Place, index: number, key: string) => {
  const id = valueAt(desk.draft, [...at, index, 'id']);
  const name = valueAt(desk.draft, [...at, index, 'name']);
  return phrase(key, {
    id: typeof id === 'string' && id !== '' ? id : String(index + 1),
    name: typeof name === 'string' ? name : '',
    named: typeof name === 'string' && name !== '' ? 'yes' : 'no',
  });
};

function ElementFields({ desk, at }: { desk: Desk; at: Place }) {
  const { draft, say, edit } = desk;
  const kind = valueAt(draft, [...at, 'kind']);
  const shafts = shaftOptions(desk);
  const ends = [...shafts, { value: CASE, label: say(phrase('workshop.case')) }];
  const between = (valueAt(draft, [...at, 'between']) ?? ['', '']) as readonly string[];
  const brakeAt = between[0] === CASE ? 1 : 0;
  const setEnd = (end: number, value: string) =>
    edit({
      kind: 'set',
      at: [...at, 'between'],
      value: [between[0] ?? '', between[1] ?? ''].with(end, value),
    });
  const setKind = (value: string) => {
    const [first = '', second = ''] = between;
    const others = [first, second].filter((shaft) => shaft !== CASE);
    const ends_ =
      value === 'brake'
        ? [others[0] ?? '', CASE]
        : value === 'clutch'
          ? [others[0] ?? '', others[1] ?? '']
          : [first, second];
    edit({
      kind: 'all',
      edits: [
        { kind: 'set', at: [...at, 'kind'], value: value || undefined },
        { kind: 'set', at: [...at, 'between'], value: ends_ },
        ...(value === 'one-way' ? [] : [{ kind: 'set' as const, at: [...at, 'overruns'], value: undefined }]),
      ],
    });
  };
  const end = (index: number, label: string, options = ends) => (
    <PickField
      desk={desk}
      at={[...at, 'between', index]}
      label={phrase(label)}
      options={options}
      onPick={(value) => setEnd(index, value)}
    />
  );
  return (
    <div className="fields tight">
      <IdField
        kind="element"
        desk={desk}
        at={[...at, 'id']}
        label={phrase('workshop.id')}
        className="narrow"
      />
      <TextField desk={desk} at={[...at, 'name']} label={phrase('workshop.name')} />
      <PickField
        desk={desk}
        at={[...at, 'kind']}
        label={phrase('workshop.element-kind')}
        options={ELEMENT_KINDS.map((value) => ({
          value,
          label: say(phrase(`workshop.element-kind.${value}`)),
        }))}
        onPick={setKind}
      />
      {kind === 'brake' && end(brakeAt, 'workshop.holds', shafts)}
      {kind === 'clutch' && (
        <>
          {end(0, 'workshop.joins', shafts)}
          {end(1, 'workshop.joins-with', shafts)}
        </>
      )}
      {kind === 'one-way' && (
        <>
          {end(0, 'workshop.free-ahead')}
          {end(1, 'workshop.ahead-of')}
          <PickField
            desk={desk}
            at={[...at, 'overruns']}
            label={phrase('workshop.free-sense')}
            options={[{ value: 'backward', label: say(phrase('workshop.free-sense.backward')) }]}
            none={phrase('workshop.free-sense.forward')}
          />
        </>
      )}
    </div>
  );
}

function Elements({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const add = (kind: (typeof ELEMENT_KINDS)[number], stem: string) =>
    edit({
      kind: 'insert',
      at: ELEMENTS,
      value: {
        id: freshId(
          stem,
          (draft.train?.elements ?? []).map(({ id }) => id),
        ),
        kind,
        between: kind === 'brake' ? ['', CASE] : ['', ''],
      },
    });
  return (
    <>
      <Records
        desk={desk}
        at={ELEMENTS}
        kind="element"
        head={(index) => headOf(desk, ELEMENTS, index, 'workshop.element')}
      >
        {(at) => (
          <>
            <ElementFields desk={desk} at={at} />
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <div className="row-of-buttons">
        {(['brake', 'clutch', 'one-way'] as const).map((kind) => (
          <button
            key={kind}
            type="button"
            className="button plain"
            onClick={() => add(kind, { brake: 'B', clutch: 'C', 'one-way': 'F' }[kind])}
          >
            {say(phrase(`workshop.add-element.${kind}`))}
          </button>
        ))}
      </div>
    </>
  );
}

/** Names of shafts: only for reading, so they come last. */
function Shafts({ desk }: SectionProps) {
  const { draft, say, edit } = desk;
  const named = draft.train?.shafts ?? [];
  // A name whose shaft is gone is listed too, so that it can be emptied.
  const shafts = [...new Set([...shaftsOfDraft(draft), ...named.flatMap(({ id }) => id ?? [])])];
  const setName = (shaft: string, name: string) => {
    const index = named.findIndex(({ id }) => id === shaft);
    const run = `shaft-name/${shaft}`;
    if (index < 0) edit({ kind: 'insert', at: ['train', 'shafts'], value: { id: shaft, name } }, run);
    else if (name === '') edit({ kind: 'remove', at: ['train', 'shafts', index] }, run);
    else edit({ kind: 'set', at: ['train', 'shafts', index, 'name'], value: name }, run);
  };
  return (
    <details>
      <summary>{say(phrase('workshop.shaft-names'))}</summary>
      <div className="fields">
        {shafts.map((shaft) => (
          <label key={shaft} className="field">
            <span>
              {shaftLabel({ ...desk, draft: { ...draft, train: { ...draft.train, shafts: [] } } }, shaft)}
            </span>
            <input
              type="text"
              autoComplete="off"
              value={named.find(({ id }) => id === shaft)?.name ?? ''}
              onChange={({ target }) => setName(shaft, target.value)}
              onBlur={desk.endRun}
            />
          </label>
        ))}
      </div>
    </details>
  );
}

export function TrainSection({ desk }: SectionProps) {
  const { say } = desk;
  return (
    <>
      <div className="beside">
        <div className="beside-drawing">
          <Sketch desk={desk} />
        </div>
        <div className="beside-form">
          <h3>{say(phrase('workshop.sets'))}</h3>
          <p className="aside">{say(phrase('workshop.sets-hint'))}</p>
          <Gearsets desk={desk} />
          <h3>{say(phrase('workshop.elements'))}</h3>
          <p className="aside">{say(phrase('workshop.elements-hint'))}</p>
          <Elements desk={desk} />
          <Shafts desk={desk} />
        </div>
      </div>
      <Vouch desk={desk} lists={[GEARSETS, ELEMENTS]} />
    </>
  );
}
