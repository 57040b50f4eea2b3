/** A list of records, each in its frame, with the keys that move it, take it away and add another. */
import type { ReactNode } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import { applyEdit, type Place, valueAt } from '../../core/workshop/draft.ts';
import { dropMentions, type MentionedKind } from '../../core/workshop/mentions.ts';
import type { Desk } from './desk.ts';

interface Props {
  readonly desk: Desk;
  readonly at: Place;
  /** What names a record when it is taken away. */
  readonly kind?: MentionedKind;
  /** The order says something: records can be moved. */
  readonly ordered?: boolean;
  readonly head: (index: number) => Phrase;
  readonly children: (at: Place, index: number) => ReactNode;
}

export const countAt = ({ draft }: Desk, at: Place): number => {
  const list = valueAt(draft, at);
  return Array.isArray(list) ? list.length : 0;
};

export function Records({ desk, at, kind, ordered = false, head, children }: Props) {
  const count = countAt(desk, at);
  const { say } = desk;
  const remove = (index: number) => {
    const id = valueAt(desk.draft, [...at, index, 'id']);
    const left = applyEdit(desk.draft, { kind: 'remove', at: [...at, index] });
    desk.replace(kind && typeof id === 'string' ? dropMentions(left, kind, id) : left);
  };
  return Array.from({ length: count }, (_, index) => {
    const title = say(head(index));
    return (
      // biome-ignore lint/suspicious/noArrayIndexKey: ids change while they are typed; the position is what stays
      <section key={index} className="frame record" aria-label={title}>
        <div className="record-top">
          <h3>{title}</h3>
          <div className="record-keys">
            {ordered && index > 0 && (
              <button
                type="button"
                className="button plain small"
                onClick={() => desk.edit({ kind: 'move', at, from: index, to: index - 1 })}
              >
                {say(phrase('workshop.up'))}
                <span className="unseen"> {title}</span>
              </button>
            )}
            {ordered && index < count - 1 && (
              <button
                type="button"
                className="button plain small"
                onClick={() => desk.edit({ kind: 'move', at, from: index, to: index + 1 })}
              >
                {say(phrase('workshop.down'))}
                <span className="unseen"> {title}</span>
              </button>
            )}
            <button type="button" className="button plain small" onClick={() => remove(index)}>
              {say(phrase('workshop.remove'))}
              <span className="unseen"> {title}</span>
            </button>
          </div>
        </div>
        {children([...at, index], index)}
      </section>
    );
  });
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
