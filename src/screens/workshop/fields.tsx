/** Entry fields bound to a place of the draft. What is typed is kept letter by letter, finished or not. */
import { type FocusEvent, type HTMLAttributes, useId, useRef } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import { type Place, valueAt } from '../../core/workshop/draft.ts';
import { type MentionedKind, renameMentions } from '../../core/workshop/mentions.ts';
import type { Desk } from './desk.ts';

export interface FieldProps {
  readonly desk: Desk;
  readonly at: Place;
  readonly label: Phrase;
}

export const textAt = (desk: Desk, at: Place): string => {
  const value = valueAt(desk.draft, at);
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
};

export const listAt = (desk: Desk, at: Place): readonly string[] => {
  const value = valueAt(desk.draft, at);
  return Array.isArray(value) ? value.filter((entry) => typeof entry === 'string') : [];
};

/** An emptied field is no field; an emptied entry of a list stays. */
const written = (at: Place, text: string) =>
  text === '' && typeof at.at(-1) === 'string' ? undefined : text;

const runOf = (at: Place) => at.join('/');

interface TextProps extends FieldProps {
  readonly hint?: Phrase | undefined;
  readonly inputMode?: HTMLAttributes<HTMLInputElement>['inputMode'];
  readonly type?: 'text' | 'date';
  /** Words offered while typing. */
  readonly offers?: readonly string[];
  readonly placeholder?: string | undefined;
  readonly className?: string;
  readonly onBlur?: (event: FocusEvent<HTMLInputElement>) => void;
  readonly onFocus?: () => void;
}

export function TextField({ desk, at, label, hint, offers, className = '', onBlur, ...input }: TextProps) {
  const [field, list, told] = [useId(), useId(), useId()];
  const { say, edit, endRun } = desk;
  return (
    <div className={`field ${className}`}>
      <label htmlFor={field}>{say(label)}</label>
      <input
        id={field}
        type="text"
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        list={offers && offers.length > 0 ? list : undefined}
        aria-describedby={hint ? told : undefined}
        {...input}
        value={textAt(desk, at)}
        onChange={({ target }) => edit({ kind: 'set', at, value: written(at, target.value) }, runOf(at))}
        onBlur={(event) => {
          onBlur?.(event);
          endRun();
        }}
      />
      {offers && offers.length > 0 && (
        <datalist id={list}>
          {offers.map((offer) => (
            <option key={offer} value={offer} />
          ))}
        </datalist>
      )}
      {hint && (
        <small id={told} className="aside">
          {say(hint)}
        </small>
      )}
    </div>
  );
}

/** The name that is put in for "checked by". It is the writer's and no part of the deck. */
export function WriterField({ desk, hint }: { readonly desk: Desk; readonly hint?: Phrase }) {
  const [field, told] = [useId(), useId()];
  return (
    <div className="field">
      <label htmlFor={field}>{desk.say(phrase('workshop.writer'))}</label>
      <input
        id={field}
        type="text"
        autoComplete="name"
        value={desk.writer}
        aria-describedby={hint ? told : undefined}
        onChange={({ target }) => desk.nameWriter(target.value)}
      />
      {hint && (
        <small id={told} className="aside">
          {desk.say(hint)}
        </small>
      )}
    </div>
  );
}

/**
 * The id of a record. While it is typed only the record has it; when the field is left, all that names the record
 * follows. An id that another one has, or none, is left to the checks.
 */
export function IdField({ kind, ...field }: TextProps & { readonly kind: MentionedKind }) {
  const { desk, at } = field;
  const before = useRef('');
  const peers = () => {
    const list = valueAt(desk.draft, at.slice(0, -2));
    return (Array.isArray(list) ? list : []).map((record) => (record as { id?: string }).id);
  };
  return (
    <TextField
      {...field}
      onFocus={() => {
        before.current = textAt(desk, at);
      }}
      onBlur={() => {
        const [was, is] = [before.current, textAt(desk, at).trim()];
        if (was === is || was === '' || is === '' || peers().filter((id) => id === is).length > 1) return;
        if (peers().includes(was)) return;
        desk.replace(renameMentions(desk.draft, kind, was, is), runOf(at));
      }}
    />
  );
}

export function AreaField({ desk, at, label, rows = 3 }: FieldProps & { readonly rows?: number }) {
  const field = useId();
  return (
    <div className="field">
      <label htmlFor={field}>{desk.say(label)}</label>
      <textarea
        id={field}
        rows={rows}
        value={textAt(desk, at)}
        onChange={({ target }) => desk.edit({ kind: 'set', at, value: written(at, target.value) }, runOf(at))}
        onBlur={desk.endRun}
      />
    </div>
  );
}

export interface Option {
  readonly value: string;
  readonly label: string;
}

interface PickProps extends FieldProps {
  readonly options: readonly Option[];
  /** What stands for nothing chosen; left out where something always is. */
  readonly none?: Phrase;
  readonly onPick?: (value: string) => void;
}

/** Letters that a narrow field shows of what is picked. */
const SHOWN = 14;

export function PickField({ desk, at, label, options, none, onPick }: PickProps) {
  const field = useId();
  const value = textAt(desk, at);
  const picked = options.find((option) => option.value === value);
  const known = picked !== undefined;
  return (
    <div className={picked && picked.label.length > SHOWN ? 'field long' : 'field'}>
      <label htmlFor={field}>{desk.say(label)}</label>
      <select
        id={field}
        value={value}
        onChange={({ target }) =>
          onPick ? onPick(target.value) : desk.edit({ kind: 'set', at, value: written(at, target.value) })
        }
      >
        {(none || !known) && <option value="">{desk.say(none ?? phrase('workshop.pick'))}</option>}
        {!known && value !== '' && <option value={value}>{value}</option>}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  );
}

/** A list to pick from that sets several places at once, and so shows none of them as picked. */
export function ActField({
  label,
  none,
  options,
  onPick,
}: {
  readonly label: string;
  readonly none: string;
  readonly options: readonly Option[];
  readonly onPick: (value: string) => void;
}) {
  const field = useId();
  return (
    <div className="field">
      <label htmlFor={field}>{label}</label>
      <select id={field} value="" onChange={({ target }) => onPick(target.value)}>
        <option value="">{none}</option>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  );
}

/** A few choices side by side, none made at first. */
export function ChoiceField({
  desk,
  at,
  label,
  options,
}: FieldProps & { readonly options: readonly Option[] }) {
  const name = useId();
  const value = textAt(desk, at);
  return (
    <fieldset className="answer">
      <legend>{desk.say(label)}</legend>
      <div className="choices">
        {options.map((option) => (
          <label key={option.value} className="choice">
            <input
              type="radio"
              name={name}
              checked={value === option.value}
              onChange={() => desk.edit({ kind: 'set', at, value: option.value })}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** Several of a list of ids; kept in the order they are listed here. */
export function SeveralField({
  desk,
  at,
  label,
  options,
}: FieldProps & { readonly options: readonly Option[] }) {
  const picked = listAt(desk, at);
  const toggle = (value: string, on: boolean) => {
    const others = picked.filter((entry) => !options.some((option) => option.value === entry));
    const kept = options
      .map((option) => option.value)
      .filter((entry) => (entry === value ? on : picked.includes(entry)));
    desk.edit({ kind: 'set', at, value: [...kept, ...others] });
  };
  return (
    <fieldset className="answer">
      <legend>{desk.say(label)}</legend>
      <div
        className={options.some((option) => option.label.length > 12) ? 'choices worded' : 'choices short'}
      >
        {options.map((option) => (
          <label key={option.value} className="choice slim">
            <input
              type="checkbox"
              checked={picked.includes(option.value)}
              onChange={({ target }) => toggle(option.value, target.checked)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

export function TickField({ desk, at, label }: FieldProps) {
  return (
    <label className="choice">
      <input
        type="checkbox"
        checked={valueAt(desk.draft, at) === true}
        onChange={({ target }) => desk.edit({ kind: 'set', at, value: target.checked || undefined })}
      />
      <span>{desk.say(label)}</span>
    </label>
  );
}
