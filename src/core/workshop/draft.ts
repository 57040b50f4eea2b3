/**
 * A deck while somebody writes it: plain JSON in the deck's own fields, any of them missing, any text unfinished,
 * numbers as they were typed. Edits never change a draft; what they leave alone is shared with the one before.
 * `finishDraft` (finish.ts) makes of it what a deck file would say, and src/content checks that.
 */
import type { Deck } from '../unit/deck.ts';

/** Every field may be missing, and every text and number may be any text. */
export type Loose<T> = T extends string
  ? string
  : T extends number
    ? number | string
    : T extends boolean
      ? T
      : T extends readonly (infer Item)[]
        ? readonly Loose<Item>[]
        : T extends object
          ? { readonly [K in keyof T]?: Loose<Exclude<T[K], undefined>> | undefined }
          : T;

export type DeckDraft = Loose<Deck>;

/** A way into a draft: fields and positions in lists. */
export type Place = readonly (string | number)[];

export type Edit =
  /** Undefined takes the field away. Objects and lists on the way are made where there are none. */
  | { readonly kind: 'set'; readonly at: Place; readonly value: unknown }
  /** Puts the value into the list, before the entry that stands there now; at the end when left out. */
  | { readonly kind: 'insert'; readonly at: Place; readonly index?: number; readonly value: unknown }
  /** Takes an entry out of its list. */
  | { readonly kind: 'remove'; readonly at: Place }
  /** Puts an entry of the list in another position. */
  | { readonly kind: 'move'; readonly at: Place; readonly from: number; readonly to: number }
  /** Several as one. */
  | { readonly kind: 'all'; readonly edits: readonly Edit[] };

export const emptyDraft = (): DeckDraft => ({ detentDeck: 1, revision: 1 });

type Fields = Readonly<Record<string, unknown>>;

const fieldsOf = (value: unknown): Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Fields) : {};

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

const inRange = (list: readonly unknown[], index: number): boolean =>
  Number.isInteger(index) && index >= 0 && index < list.length;

/** The value at a place; undefined when there is none. */
export function valueAt(root: unknown, at: Place): unknown {
  return at.reduce<unknown>(
    (value, step) =>
      typeof step === 'number'
        ? listOf(value)[step]
        : Object.hasOwn(fieldsOf(value), step)
          ? fieldsOf(value)[step]
          : undefined,
    root,
  );
}

/** The root with another value at the place. A position beyond the end of its list changes nothing. */
function change(root: unknown, at: Place, make: (value: unknown) => unknown): unknown {
  const [step, ...rest] = at;
  if (step === undefined) return make(root);
  if (typeof step === 'number') {
    const list = listOf(root);
    return inRange(list, step) ? list.with(step, change(list[step], rest, make)) : root;
  }
  const { [step]: was, ...others } = fieldsOf(root);
  const is = change(was, rest, make);
  if (is === was && root !== undefined) return root;
  if (is === undefined) return others;
  // A field keeps its place among the others.
  return step in fieldsOf(root) ? { ...fieldsOf(root), [step]: is } : { ...others, [step]: is };
}

function applyTo(root: unknown, edit: Edit): unknown {
  switch (edit.kind) {
    case 'set':
      return change(root, edit.at, () => edit.value);
    case 'insert':
      return change(root, edit.at, (value) => {
        const list = listOf(value);
        return list.toSpliced(edit.index ?? list.length, 0, edit.value);
      });
    case 'remove':
      return change(root, edit.at.slice(0, -1), (value) => {
        const [list, index] = [listOf(value), Number(edit.at.at(-1))];
        return inRange(list, index) ? list.toSpliced(index, 1) : value;
      });
    case 'move':
      return change(root, edit.at, (value) => {
        const list = listOf(value);
        if (!inRange(list, edit.from) || !inRange(list, edit.to)) return value;
        return list.toSpliced(edit.from, 1).toSpliced(edit.to, 0, list[edit.from]);
      });
    case 'all':
      return edit.edits.reduce(applyTo, root);
  }
}

/** applyEdit(draft, { kind: 'set', at: ['train', 'gearsets', 0, 'sun', 'teeth'], value: '43' }) */
export const applyEdit = (draft: DeckDraft, edit: Edit): DeckDraft => applyTo(draft, edit) as DeckDraft;

/** An id that none of these is: the stem with the first number from 1 that is free. freshId('P', ['P1']) → "P2" */
export function freshId(stem: string, taken: readonly (string | undefined)[]): string {
  let number = 1;
  while (taken.includes(`${stem}${number}`)) number++;
  return `${stem}${number}`;
}
