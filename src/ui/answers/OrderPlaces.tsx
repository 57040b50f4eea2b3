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
  const left = space.items.filter((item) => !draft.order.includes(item.id));
  const likesOf = (id: string) => alike.find((ids) => ids.includes(id)) ?? [id];
  const keys = left.filter(({ id }) => left.find((item) => likesOf(id).includes(item.id))!.id === id);
  const label = (id: string) => say(space.items.find((item) => item.id === id)!.label);
  const keyLabel = (id: string) => {
    const count = left.filter((item) => likesOf(id).includes(item.id)).length;
    return likesOf(id).length > 1 ? say(phrase('answer.several', { what: label(id), count })) : label(id);
  };
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
          {keys.map(({ id }) => (
            <button key={id} type="button" className="choice slim" onClick={() => take(id)}>
              {keyLabel(id)}
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
