/** Answers row by row: one choice for each left side, or for each cell of a grid. */

import { useId } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Option } from '../../core/questions/question.ts';
import type { Say } from '../../words/words.ts';
import type { AnswerProps } from './AnswerForm.tsx';
import { Choice } from './Choice.tsx';
import { widthClass } from './Choices.tsx';
import { mostColumns } from './columns.ts';

interface RowProps {
  readonly label: string;
  readonly options: readonly Option[];
  readonly picked: string | undefined;
  readonly right: string | undefined;
  readonly onPick: (id: string) => void;
  readonly say: Say;
}

function AnswerRow({ label, options, picked, right, onPick, say }: RowProps) {
  const group = useId();
  const labels = options.map((option) => say(option.label));
  const stacked = widthClass(labels) !== 'short' && options.length > 2;
  const most = mostColumns(labels);
  return (
    <fieldset className={`answer answer-row ${stacked ? 'stacked' : ''}`}>
      <legend>{label}</legend>
      <div className={`choices of-${options.length} ${most === null ? '' : `in-${most}`}`}>
        {options.map((option, index) => (
          <Choice
            key={option.id}
            kind="radio"
            group={group}
            slim
            label={labels[index]!}
            picked={picked === option.id}
            right={right === option.id}
            checked={right !== undefined}
            onPress={() => onPick(option.id)}
            say={say}
          />
        ))}
      </div>
    </fieldset>
  );
}

export function PairRows({ space, draft, onChange, say, right }: AnswerProps<'pair'>) {
  return (
    <div className="answer-rows">
      {space.left.map((left) => (
        <AnswerRow
          key={left.id}
          label={say(left.label)}
          options={space.right}
          picked={draft.pairs[left.id]}
          right={right?.pairs[left.id]}
          onPick={(id) => onChange({ form: 'pair', pairs: { ...draft.pairs, [left.id]: id } })}
          say={say}
        />
      ))}
    </div>
  );
}

export function GridCells({ space, draft, onChange, say, right }: AnswerProps<'fill'>) {
  const single = space.columns.length === 1;
  const cells = space.rows.flatMap((row) =>
    space.columns.map((column) => ({
      id: `${row.id}/${column.id}`,
      row: say(row.label),
      column: say(column.label),
    })),
  );
  const markLabel = (id: string) => {
    const mark = space.marks.find((candidate) => candidate.id === id);
    return mark ? say(mark.label) : id;
  };
  return (
    <div className="answer-rows">
      {cells.map((cell) => {
        const label = single ? cell.row : say(phrase('answer.cell', { row: cell.row, column: cell.column }));
        const given = space.given[cell.id];
        if (given !== undefined)
          return (
            <p key={cell.id} className="answer-row">
              <span className="answer-head">{label}</span>
              <span>{markLabel(given)}</span>
            </p>
          );
        return space.asked.includes(cell.id) ? (
          <AnswerRow
            key={cell.id}
            label={label}
            options={space.marks}
            picked={draft.cells[cell.id]}
            right={right?.cells[cell.id]}
            onPick={(id) => onChange({ form: 'fill', cells: { ...draft.cells, [cell.id]: id } })}
            say={say}
          />
        ) : null;
      })}
    </div>
  );
}
