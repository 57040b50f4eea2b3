/** Put in order by tapping: each tap takes the next place; the last one can be taken back. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { AnswerProps } from './AnswerForm.tsx';
import { widthClass } from './Choices.tsx';
import { useNumberKeys } from './use-number-keys.ts';

export function OrderPlaces({ space, draft, onChange, say, right }: AnswerProps<'order'>) {
  const left = space.items.filter((item) => !draft.order.includes(item.id));
  const label = (id: string) => say(space.items.find((item) => item.id === id)!.label);
  const take = (id: string) => onChange({ form: 'order', order: [...draft.order, id] });
  useNumberKeys(left.length, (index) => take(left[index]!.id), right === undefined);
  return (
    <div className="answer-rows">
      <div>
        <p className="aside">{say(space.first)}</p>
        <ol className="places" aria-label={say(phrase('answer.your-order'))}>
          {space.items.map((item, place) => {
            const taken = draft.order[place];
            const rightHere = right?.order[place];
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
          {left.map((item) => (
            <button key={item.id} type="button" className="choice slim" onClick={() => take(item.id)}>
              {say(item.label)}
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
