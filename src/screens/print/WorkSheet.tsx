/** Questions for one person on paper, and the key to them on a sheet of its own. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Question } from '../../core/questions/question.ts';
import { makeReference } from '../../core/questions/reference.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { answerInWords } from '../../words/answer-in-words.ts';
import type { Say } from '../../words/words.ts';
import { Paper, type PaperSize } from './Paper.tsx';
import { PaperQuestion } from './PaperQuestion.tsx';

interface Props {
  readonly questions: readonly Question[];
  readonly title: string;
  /** Whose it is; empty leaves room for a name. */
  readonly name: string;
  /** Number that sheet and key share. */
  readonly sheet: string;
  readonly size: PaperSize;
  readonly unit: Unit;
  readonly say: Say;
}

const lineOf = ({ name, sheet, say }: Props) =>
  say(phrase('print.line', { name: name || '____________', sheet }));

export function WorkSheet(props: Props) {
  const { questions, title, size, unit, say } = props;
  return (
    <Paper title={title} line={lineOf(props)} size={size} unit={unit} say={say} kind="work">
      <p>{say(phrase('print.date-line'))}</p>
      {questions.map((question, index) => (
        <PaperQuestion
          key={makeReference(question)}
          question={question}
          number={index + 1}
          unit={unit}
          say={say}
        />
      ))}
    </Paper>
  );
}

/** All right answers where several are, and which row they follow from. */
export function KeySheet(props: Props) {
  const { questions, title, size, unit, say } = props;
  return (
    <Paper
      title={say(phrase('print.key', { title }))}
      line={lineOf(props)}
      size={size}
      unit={unit}
      say={say}
      kind="key"
    >
      <ol className="paper-key">
        {questions.map((question) => (
          <li key={makeReference(question)}>
            <strong>
              {question.answers.map((answer) => answerInWords(question.space, answer, say)).join(' / ')}
            </strong>
            {question.accepts && ` ${say(phrase('print.other-orders'))}`} {say(question.explanation.row)}
            <span className="provenance">{makeReference(question)}</span>
          </li>
        ))}
      </ol>
    </Paper>
  );
}
