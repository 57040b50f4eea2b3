/** Brakes, clutches and one-ways: what each is, and what it holds or joins. */
import { CASE, ELEMENT_KINDS } from '../../core/gears/train.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import { type Place, valueAt } from '../../core/workshop/draft.ts';
import { Capacity } from './Capacity.tsx';
import type { Desk, SectionProps } from './desk.ts';
import { IdField, PickField, TextField } from './fields.tsx';
import { wordedOptions } from './options.ts';
import { Provenance } from './Provenance.tsx';
import { AddRecord, headOf, Records } from './Records.tsx';
import { shaftOptions } from './shafts.ts';

export const ELEMENTS: Place = ['train', 'elements'];

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
        options={wordedOptions(say, ELEMENT_KINDS, 'workshop.element-kind')}
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

export function Elements({ desk }: SectionProps) {
  const { draft } = desk;
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
            {valueAt(draft, [...at, 'kind']) !== 'one-way' && <Capacity desk={desk} at={at} />}
            <Provenance desk={desk} at={at} />
          </>
        )}
      </Records>
      <div className="row-of-buttons">
        {(['brake', 'clutch', 'one-way'] as const).map((kind) => (
          <AddRecord
            key={kind}
            desk={desk}
            at={ELEMENTS}
            stem={{ brake: 'B', clutch: 'C', 'one-way': 'F' }[kind]}
            value={{ kind, between: kind === 'brake' ? ['', CASE] : ['', ''] }}
            label={phrase(`workshop.add-element.${kind}`)}
          />
        ))}
      </div>
    </>
  );
}
