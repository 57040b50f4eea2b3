/** Other names of things: the maker's code, what the shop says, another language. */
import { useId } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Place } from '../../core/workshop/draft.ts';
import type { Desk, SectionProps } from './desk.ts';
import { listAt, PickField, TextField } from './fields.tsx';
import { AddRecord, Records } from './Records.tsx';
import { thingOptions } from './things.ts';

const ALIASES: Place = ['aliases'];

/** Several names, a line each; blank lines stay while somebody types. */
function NamesField({ desk, at }: { desk: Desk; at: Place }) {
  const field = useId();
  return (
    <div className="field">
      <label htmlFor={field}>{desk.say(phrase('workshop.other-names'))}</label>
      <textarea
        id={field}
        rows={2}
        value={listAt(desk, at).join('\n')}
        onChange={({ target }) =>
          desk.edit({ kind: 'set', at, value: target.value.split('\n') }, at.join('/'))
        }
        onBlur={desk.endRun}
      />
    </div>
  );
}

export function NameSection({ desk }: SectionProps) {
  const { say } = desk;
  const things = thingOptions(desk);
  return (
    <>
      <p className="aside">{say(phrase('workshop.names-hint'))}</p>
      <Records
        folds
        desk={desk}
        at={ALIASES}
        head={(index) =>
          phrase('workshop.alias-no', {
            number: index + 1,
            of: things.find(({ value }) => value === desk.draft.aliases?.[index]?.of)?.label ?? 'none',
          })
        }
      >
        {(at) => (
          <div className="fields">
            <PickField desk={desk} at={[...at, 'of']} label={phrase('workshop.alias-of')} options={things} />
            <NamesField desk={desk} at={[...at, 'names']} />
            <TextField
              desk={desk}
              at={[...at, 'language']}
              label={phrase('workshop.alias-language')}
              placeholder="es"
            />
          </div>
        )}
      </Records>
      <AddRecord desk={desk} at={ALIASES} value={{ names: [] }} label={phrase('workshop.add-alias')} />
    </>
  );
}
