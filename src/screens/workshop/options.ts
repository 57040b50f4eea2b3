/** What a field offers to pick from. Records without an id are left out: nothing could name them. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { DeckDraft } from '../../core/workshop/draft.ts';
import type { Say } from '../../words/words.ts';
import type { Option } from './fields.tsx';

type Named = readonly { readonly id?: string | undefined; readonly name?: string | undefined }[] | undefined;

/** Each of these in the words that the key has for it: wordedOptions(say, ENDS, 'workshop.end') says "workshop.end.front". */
export const wordedOptions = (say: Say, values: readonly string[], key: string): Option[] =>
  values.map((value) => ({ value, label: say(phrase(`${key}.${value}`)) }));

const recordOptions = (list: Named, call: (id: string, name: string | undefined) => string): Option[] =>
  (list ?? []).flatMap(({ id, name }) => (id ? [{ value: id, label: call(id, name) }] : []));

export const idOptions = (list: Named): Option[] => recordOptions(list, (id) => id);

/** By their names; what has none, by its id. */
export const nameOptions = (list: Named): Option[] => recordOptions(list, (id, name) => name || id);

/** By name and id, where several may have one name. */
export const nameAndIdOptions = (list: Named): Option[] =>
  recordOptions(list, (id, name) => (name ? `${name} ${id}` : id));

/** As "solenoid:SA", each called what it is and by its name. */
export const refOptions = (say: Say, kind: string, list: Named): Option[] =>
  nameOptions(list).map(({ value, label }) => ({
    value: `${kind}:${value}`,
    label: `${say(phrase(`place.${kind}`))} ${label}`,
  }));

/** Brakes and clutches: what pressure applies. */
export const frictionOf = ({ train }: DeckDraft) =>
  (train?.elements ?? []).filter(({ kind }) => kind !== 'one-way');
