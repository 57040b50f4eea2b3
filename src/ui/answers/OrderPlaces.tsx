/**
 * Put in order by tapping: each tap takes the next place; what is placed is tapped to take it back. It can be dragged
 * as well. Items that nobody can tell apart share one key, which says how many are left.
 */
import { useRef } from 'react';
import { withLikesNamed } from '../../core/questions/judge.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { AnswerProps } from './AnswerForm.tsx';
import { putAt, without } from './arrange.ts';
import { widthClass } from './Choices.tsx';
import { TAPPED, useOrderParts } from './order-parts.tsx';
import { useKeptFocus } from './use-kept-focus.ts';
import { useNumberKeys } from './use-number-keys.ts';

export function OrderPlaces({ space, draft, onChange, say, right }: AnswerProps<'order'>) {
  const alike = space.alike ?? [];
  const label = (id: string) => say(space.items.find((item) => item.id === id)!.label);
  // A key for each kind stays where it is, however many of the kind are left.
  const keys = space.items
    .map(({ id }) => alike.find((ids) => ids.includes(id)) ?? [id])
    .filter((likes, index, all) => all.findIndex((other) => other[0] === likes[0]) === index)
    .map((likes) => ({ likes, left: likes.filter((id) => !draft.order.includes(id)) }))
    .filter(({ left }) => left.length > 0)
    .map(({ likes, left: [next, ...others] }) => ({
      kind: likes[0]!,
      id: next!,
      text:
        likes.length > 1
          ? say(phrase('answer.several', { what: label(next!), count: others.length + 1 }))
          : label(next!),
    }));
  const given = withLikesNamed(alike, draft.order);
  const rightOrder = right && withLikesNamed(alike, right.order);

  const form = useRef<HTMLDivElement>(null);
  const parts = useOrderParts(form);
  const { Frame, Place, Keys, Key, canDrag } = right ? TAPPED : parts;

  const goOnFrom = useKeptFocus(form, keys.length > 0 && right === undefined);
  const arrange = (order: readonly string[]) => {
    goOnFrom();
    onChange({ form: 'order', order: [...order] });
  };
  const take = (id: string) => arrange([...draft.order, id]);
  useNumberKeys(keys.length, (index) => take(keys[index]!.id), right === undefined);

  return (
    <div className="answer-rows" ref={form}>
      <Frame
        order={draft.order}
        labelOf={label}
        onPut={(id, place) => arrange(putAt(draft.order, id, place))}
        onTakeOut={(id) => arrange(without(draft.order, id))}
        say={say}
      >
        <div>
          <p className="aside">{say(space.first)}</p>
          <ol className="places" aria-label={say(phrase('answer.your-order'))}>
            {space.items.map((item, place) => {
              const taken = draft.order[place];
              const rightHere = rightOrder?.[place];
              const wrong = right !== undefined && given[place] !== rightHere;
              return (
                <Place
                  key={item.id}
                  place={place}
                  taken={taken}
                  className={`place ${taken ? 'filled' : ''} ${wrong ? 'was-wrong' : ''}`}
                >
                  <span aria-hidden="true">{place + 1}</span>
                  {taken && !right ? (
                    <button
                      type="button"
                      className="placed"
                      onClick={() => arrange(without(draft.order, taken))}
                    >
                      {label(taken)}
                      <span className="unseen">, {say(phrase('answer.take-out'))}</span>
                    </button>
                  ) : (
                    <span>
                      {taken ? label(taken) : say(phrase('answer.open-place'))}
                      {wrong && (
                        <span className="choice-mark">
                          {say(phrase('mark.here', { what: label(rightHere!) }))}
                        </span>
                      )}
                    </span>
                  )}
                </Place>
              );
            })}
          </ol>
          <p className="aside">{say(space.last)}</p>
        </div>
        {!right && (
          <Keys className={`answer choices ${widthClass(space.items.map((item) => say(item.label)))}`}>
            <legend>{say(phrase(canDrag ? 'answer.tap-or-drag' : 'answer.tap-next'))}</legend>
            {keys.map(({ kind, id, text }) => (
              <Key key={kind} id={id} onPress={() => take(id)}>
                {text}
              </Key>
            ))}
            <button
              type="button"
              className="choice slim take-back"
              disabled={draft.order.length === 0}
              onClick={() => arrange(draft.order.slice(0, -1))}
            >
              {say(phrase('answer.take-back'))}
            </button>
          </Keys>
        )}
      </Frame>
    </div>
  );
}
