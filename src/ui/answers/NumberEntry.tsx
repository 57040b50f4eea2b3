/** A typed number: comma or point, the sign by a key where it may turn backward, the unit beside it. */
import { useId } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import { readTypedNumber } from '../../core/questions/typed-number.ts';
import { makeDecimal, parseRational } from '../../core/rational.ts';
import type { AnswerProps } from './AnswerForm.tsx';

export function NumberEntry({ space, draft, onChange, say, right }: AnswerProps<'number'>) {
  const id = useId();
  const unreadable = draft.text.trim().length > 1 && readTypedNumber(draft.text, space.decimals) === null;
  const negative = /^\s*[-\u2212]/.test(draft.text);
  const flip = () =>
    onChange({ form: 'number', text: negative ? draft.text.replace(/^\s*[-\u2212]/, '') : `-${draft.text}` });
  return (
    <div className="answer-rows">
      <label htmlFor={id} className="aside">
        {say(phrase('answer.number', { tolerance: space.tolerance, unit: space.unit ?? 'none' }))}
      </label>
      <div className="number">
        {space.signed && (
          <button
            type="button"
            className="button plain"
            aria-pressed={negative}
            aria-disabled={right !== undefined}
            onClick={() => right ?? flip()}
          >
            {say(phrase('answer.turn-sign'))}
          </button>
        )}
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          enterKeyHint="done"
          value={draft.text}
          readOnly={right !== undefined}
          aria-invalid={unreadable}
          aria-describedby={unreadable ? `${id}-note` : undefined}
          onChange={(event) => onChange({ form: 'number', text: event.target.value })}
        />
        {space.unit && <span className="unit">{say(phrase('text', { text: space.unit }))}</span>}
      </div>
      {unreadable && (
        <p id={`${id}-note`} className="note">
          {say(phrase('answer.not-a-number'))}
        </p>
      )}
      {right && (
        <p className="number-right">
          {say(
            phrase('answer.right-number', {
              value: makeDecimal(parseRational(right.value)!, space.decimals),
              unit: space.unit ?? '',
            }),
          )}
        </p>
      )}
    </div>
  );
}
