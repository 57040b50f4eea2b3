/** Many at once, typed or dictated a line each. */
import { useId, useState } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Say } from '../../words/words.ts';

interface Props {
  readonly say: Say;
  readonly label: Phrase;
  readonly how: Phrase;
  readonly onTake: (text: string) => void;
}

export function LinesBox({ say, label, how, onTake }: Props) {
  const [field, told] = [useId(), useId()];
  const [text, setText] = useState('');
  const count = text.split('\n').filter((line) => line.trim() !== '').length;
  return (
    <div className="paste">
      <div className="field">
        <label htmlFor={field}>{say(label)}</label>
        <textarea
          id={field}
          rows={4}
          value={text}
          aria-describedby={told}
          onChange={({ target }) => setText(target.value)}
        />
        <small id={told} className="aside">
          {say(how)}
        </small>
      </div>
      <button
        type="button"
        className="button"
        aria-disabled={count === 0}
        onClick={() => {
          if (count === 0) return;
          onTake(text);
          setText('');
        }}
      >
        {say(phrase('workshop.take-lines', { count }))}
      </button>
    </div>
  );
}
