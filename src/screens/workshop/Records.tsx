/** A list of records, each in its frame with the keys that move it and take it away, and the key that adds another. */
import { type ReactNode, useRef } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import { applyEdit, freshId, type Place, valueAt } from '../../core/workshop/draft.ts';
import { dropMentions, type MentionedKind } from '../../core/workshop/mentions.ts';
import type { Desk } from './desk.ts';
import { Fold } from './Fold.tsx';

interface Props {
  readonly desk: Desk;
  readonly at: Place;
  /** What names a record when it is taken away. */
  readonly kind?: MentionedKind;
  /** The order says something: records can be moved. */
  readonly ordered?: boolean;
  /** Each folds away by its heading. */
  readonly folds?: boolean;
  readonly head: (index: number) => Phrase;
  readonly children: (at: Place, index: number) => ReactNode;
}

export const countAt = ({ draft }: Desk, at: Place): number => {
  const list = valueAt(draft, at);
  return Array.isArray(list) ? list.length : 0;
};

export function Records({ desk, at, kind, ordered = false, folds = false, head, children }: Props) {
  const count = countAt(desk, at);
  // What was there when the list was opened is folded away; what is added since stands open.
  const before = useRef(count);
  const { say } = desk;
  const remove = (index: number) => {
    const id = valueAt(desk.draft, [...at, index, 'id']);
    const left = applyEdit(desk.draft, { kind: 'remove', at: [...at, index] });
    desk.replace(kind && typeof id === 'string' ? dropMentions(left, kind, id) : left);
    before.current = Math.min(before.current, count - 1);
  };
  const key = (title: string, words: string, act: () => void) => (
    <button type="button" className="button plain small" onClick={act}>
      {say(phrase(words))}
      <span className="unseen"> {title}</span>
    </button>
  );
  const move = (from: number, to: number) => desk.edit({ kind: 'move', at, from, to });
  return Array.from({ length: count }, (_, index) => {
    const title = say(head(index));
    const wanted = [...at, index].every((step, depth) => desk.focus?.[depth] === step);
    const keys = (
      <div className="record-keys">
        {ordered && index > 0 && key(title, 'workshop.up', () => move(index, index - 1))}
        {ordered && index < count - 1 && key(title, 'workshop.down', () => move(index, index + 1))}
        {key(title, 'workshop.remove', () => remove(index))}
      </div>
    );
    return (
      // biome-ignore lint/suspicious/noArrayIndexKey: ids change while they are typed; the position is what stays
      <fieldset key={index} className={folds ? 'frame record folds' : 'frame record'} aria-label={title}>
        {folds ? (
          <Fold summary={title} starts={wanted || index >= before.current || count === 1 ? 'open' : 'closed'}>
            <div className="record-body">
              {keys}
              {children([...at, index], index)}
            </div>
          </Fold>
        ) : (
          <>
            <div className="record-top">
              <h3>{title}</h3>
              {keys}
            </div>
            {children([...at, index], index)}
          </>
        )}
      </fieldset>
    );
  });
}

interface AddProps {
  readonly desk: Desk;
  readonly at: Place;
  readonly label: Phrase;
  /** The record is called by this and the first number that is free in the list; left out, it has the id of `value`. */
  readonly stem?: string;
  /** What else it starts with. */
  readonly value?: object;
  readonly small?: boolean;
}

/** Adds a record at the end of its list. */
export function AddRecord({ desk, at, label, stem, value, small = false }: AddProps) {
  const add = () => {
    const list = valueAt(desk.draft, at);
    const taken = Array.isArray(list) ? list.map(({ id }) => id) : [];
    desk.edit({ kind: 'insert', at, value: { ...(stem && { id: freshId(stem, taken) }), ...value } });
  };
  return (
    <button type="button" className={small ? 'button plain small' : 'button plain'} onClick={add}>
      {desk.say(label)}
    </button>
  );
}

/** What a record is called in its heading: its id and name, or its number. */
export const headOf = (desk: Desk, at: Place, index: number, key: string) => {
  const id = valueAt(desk.draft, [...at, index, 'id']);
  const name = valueAt(desk.draft, [...at, index, 'name']);
  return phrase(key, {
    id: typeof id === 'string' && id !== '' ? id : String(index + 1),
    name: typeof name === 'string' ? name : '',
    named: typeof name === 'string' && name !== '' ? 'yes' : 'no',
  });
};
