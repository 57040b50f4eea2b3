/** Tick all that apply, or pick one. Keys 1 to 9 press the first nine. */
import { useId } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { AnswerProps } from './AnswerForm.tsx';
import { Choice } from './Choice.tsx';
import { useNumberKeys } from './use-number-keys.ts';

/** Labels up to this long sit several to a line. */
const SHORT = 4;
const MIDDLING = 22;
/** A key of two to a line has room for a word this long. */
const WORD = 12;

export function widthClass(labels: readonly string[]): string {
  const longest = Math.max(...labels.map((label) => label.length));
  const word = Math.max(...labels.flatMap((label) => label.split(/[\s-]+/)).map(({ length }) => length));
  return longest <= SHORT ? 'short' : longest <= MIDDLING && word <= WORD ? '' : 'wide';
}

export function Choices({ space, draft, onChange, say, right }: AnswerProps<'set' | 'one'>) {
  const group = useId();
  const many = space.form === 'set';
  const picked = (id: string) => (draft.form === 'set' ? draft.picks.includes(id) : draft.pick === id);
  const isRight = (id: string) =>
    right !== undefined && (right.form === 'set' ? right.picks.includes(id) : right.pick === id);
  const press = (id: string) => {
    if (draft.form === 'one') onChange({ form: 'one', pick: id });
    else
      onChange({
        form: 'set',
        picks: picked(id) ? draft.picks.filter((pick) => pick !== id) : [...draft.picks, id],
      });
  };
  useNumberKeys(space.options.length, (index) => press(space.options[index]!.id), right === undefined);
  const labels = space.options.map((option) => say(option.label));
  return (
    <fieldset className="answer">
      <legend>{say(phrase(many ? 'answer.tick-all' : 'answer.pick-one'))}</legend>
      <div className={`choices ${widthClass(labels)}`}>
        {space.options.map((option, index) => (
          <Choice
            key={option.id}
            kind={many ? 'checkbox' : 'radio'}
            group={group}
            label={labels[index]!}
            picked={picked(option.id)}
            right={isRight(option.id)}
            checked={right !== undefined}
            onPress={() => press(option.id)}
            say={say}
          />
        ))}
      </div>
    </fieldset>
  );
}
