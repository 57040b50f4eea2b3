/**
 * One of the numbered places on the drawing. The drawing can be tapped; these keys are the same places for the
 * keyboard, a screen reader and a thumb. Keys 1 to 9 press the first nine.
 */
import { useId } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { AnswerProps } from './AnswerForm.tsx';
import { Choice } from './Choice.tsx';
import { widthClass } from './Choices.tsx';
import { useNumberKeys } from './use-number-keys.ts';

export function PlaceSpots({ space, draft, onChange, say, right }: AnswerProps<'place'>) {
  const group = useId();
  const pick = (spot: string) => onChange({ form: 'place', spot });
  useNumberKeys(space.spots.length, (index) => pick(space.spots[index]!.id), right === undefined);
  const labels = space.spots.map(({ label }, index) =>
    say(phrase('answer.spot', { number: String(index + 1), what: label })),
  );
  return (
    <fieldset className="answer">
      <legend>{say(phrase('answer.pick-place'))}</legend>
      <div className={`choices ${widthClass(labels)}`}>
        {space.spots.map(({ id }, index) => (
          <Choice
            key={id}
            kind="radio"
            group={group}
            label={labels[index]!}
            picked={draft.spot === id}
            right={right?.spot === id}
            checked={right !== undefined}
            onPress={() => pick(id)}
            say={say}
          />
        ))}
      </div>
    </fieldset>
  );
}
