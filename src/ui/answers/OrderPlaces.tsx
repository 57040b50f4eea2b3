/**
 * Put in order by tapping: each tap takes the next place; the last one can be taken back. Items that nobody can
 * tell apart share one key, which says how many are left.
 */
import { withLikesNamed } from '../../core/questions/judge.ts';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { AnswerProps } from './AnswerForm.tsx';
import { widthClass } from './Choices.tsx';
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
  const take = (id: string) => onChange({ form: 'order', order: [...draft.order, id] });
  useNumberKeys(keys.length, (index) => take(keys[index]!.id), right === undefined);
  return (
    <div className="answer-rows">
      <div>
        <p className="aside">{say(space.first)}</p>
        <ol className="places" aria-label={say(phrase('answer.your-order'))}>
          {space.items.map((item, place) => {
            const taken = given[place];
            const rightHere = rightOrder?.[place];
            const wrong = right !== undefined && taken !== rightHere;
            return (
              <li key={item.id} className={`place ${taken ? 'filled' : ''} ${wrong ? 'was-wrong' : ''}`}>
                <span aria-hidden="true">{place + 1}</span>
                <span>
                  {taken ? label(taken) : say(phrase('answer.open-place'))}
                  {wrong && (
                    <span className="choice-mark">
                      {say(phrase('mark.here', { what: label(rightHere!) }))}
                    </span>
                  )}
                </span>
              </li>
            );
          })}
        </ol>
        <p className="aside">{say(space.last)}</p>
      </div>
      {!right && (
        <fieldset className={`answer choices ${widthClass(space.items.map((item) => say(item.label)))}`}>
          <legend>{say(phrase('answer.tap-next'))}</legend>
          {keys.map(({ kind, id, text }) => (
            <button key={kind} type="button" className="choice slim" onClick={() => take(id)}>
              {text}
            </button>
          ))}
          <button
            type="button"
            className="choice slim take-back"
            disabled={draft.order.length === 0}
            onClick={() => onChange({ form: 'order', order: draft.order.slice(0, -1) })}
          >
            {say(phrase('answer.take-back'))}
          </button>
        </fieldset>
      )}
    </div>
  );
}
