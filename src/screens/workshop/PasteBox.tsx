/** A table pasted from a spreadsheet, or from a file: read at once, told what is wrong with it cell by cell, and taken in by a tap. */
import { useId, useMemo, useState } from 'react';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Result } from '../../core/result.ts';
import { problemPhrase, type TableProblem } from '../../exchange/csv/records.ts';
import type { Say } from '../../words/words.ts';
import { Fold } from './Fold.tsx';

interface Props<T> {
  readonly say: Say;
  /** How much of it the deck has already: then the box is folded away at first. */
  readonly has?: number;
  readonly label: Phrase;
  readonly how: Phrase;
  readonly read: (text: string) => Result<T, readonly TableProblem[]>;
  /** What was read, in words. */
  readonly tell: (value: T) => Phrase;
  readonly onTake: (value: T) => void;
}

/** Bytes of the largest table that is looked at. */
const LARGEST_FILE = 2_000_000;

export function PasteBox<T>({ has, ...props }: Props<T>) {
  if (has === undefined) return <Box {...props} />;
  return (
    <Fold summary={props.say(phrase('workshop.from-spreadsheet'))} starts={has === 0 ? 'open' : 'closed'}>
      <Box {...props} />
    </Fold>
  );
}

function Box<T>({ say, label, how, read, tell, onTake }: Props<T>) {
  const [field, told] = [useId(), useId()];
  const [text, setText] = useState('');
  const result = useMemo(() => (text.trim() === '' ? null : read(text)), [text, read]);
  return (
    <div className="paste">
      <div className="field">
        <label htmlFor={field}>{say(label)}</label>
        <textarea
          id={field}
          rows={4}
          className="table-text"
          value={text}
          spellCheck={false}
          aria-describedby={told}
          onChange={({ target }) => setText(target.value)}
        />
        <small id={told} className="aside">
          {say(how)}
        </small>
      </div>
      <label className="button plain file-button">
        {say(phrase('workshop.table-file'))}
        <input
          type="file"
          accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain"
          className="unseen"
          aria-label={say(phrase('workshop.table-file-for', { what: label }))}
          onChange={async ({ target }) => {
            const [file] = target.files ?? [];
            const read = file && file.size <= LARGEST_FILE ? await file.text() : '';
            target.value = '';
            if (read !== '') setText(read);
          }}
        />
      </label>
      <div role="status">
        {result?.ok && <p>{say(tell(result.value))}</p>}
        {result && !result.ok && (
          <ul className="steps">
            {result.error.slice(0, 8).map((problem) => (
              <li key={`${problem.code} ${problem.line} ${problem.column}`}>{say(problemPhrase(problem))}</li>
            ))}
          </ul>
        )}
      </div>
      {result?.ok && (
        <button
          type="button"
          className="button"
          onClick={() => {
            onTake(result.value);
            setText('');
          }}
        >
          {say(phrase('workshop.take-table'))}
        </button>
      )}
    </div>
  );
}
