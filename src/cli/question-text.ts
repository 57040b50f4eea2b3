/** A question in text: prompt, drawing where it is a table, answer space, answer, slip-ups, explanation. */
import type { Phrase } from '../core/questions/phrase.ts';
import type { AnswerSpace, Option, Question } from '../core/questions/question.ts';
import type { Unit } from '../core/unit/unit.ts';
import { answerInWords, labelIn } from '../words/answer-in-words.ts';
import type { Say } from '../words/words.ts';
import { drawingInWords } from './drawing-text.ts';
import { labelled, table, wrap } from './layout.ts';

function spaceInWords(space: AnswerSpace, say: Say): string {
  const list = (options: readonly Option[]) =>
    options.map((option) => wrap(say(option.label), '    ').replace('    ', '  - ')).join('\n');
  const labels = (options: readonly Option[]) => options.map((option) => say(option.label)).join(', ');
  const head = (values: Phrase['values'] = {}) =>
    wrap(say({ key: `cli.ask.form-${space.form}`, values }), '  ');
  switch (space.form) {
    case 'set':
    case 'one':
      return `${head()}\n${list(space.options)}`;
    case 'order':
      return `${head({ first: space.first, last: space.last })}\n${list(space.items)}`;
    case 'place':
      return `${head()}\n${list(space.spots)}`;
    case 'number':
      return head({
        unit: space.unit ?? 'none',
        tolerance: space.tolerance,
        signed: space.signed ? 'yes' : 'no',
      });
    case 'pair':
      return `${head({ right: labels(space.right) })}\n${list(space.left)}`;
    case 'fill': {
      const cell = (row: Option, column: Option) => {
        const key = `${row.id}/${column.id}`;
        if (space.asked.includes(key)) return '?';
        const given = space.given[key];
        return given === undefined ? '' : labelIn(space.marks, given, say);
      };
      const rows = space.rows.map((row) => [
        say(row.label),
        ...space.columns.map((column) => cell(row, column)),
      ]);
      const heads = ['', ...space.columns.map((column) => say(column.label))];
      return `${head({ marks: labels(space.marks) })}\n${table([heads, ...rows], '  ')}`;
    }
  }
}

export function questionInWords(question: Question, unit: Unit, say: Say): string {
  const { space, answers, lures, explanation, drawing } = question;
  const word = (key: string, values: Phrase['values'] = {}) => say({ key: `cli.ask.${key}`, values });
  const labels = ['answer', 'guess', 'why', 'more', 'slip-up', 'caution'].map((key) => word(key));
  const width = Math.max(...labels.map((label) => label.length));
  const beside = (key: string, text: string) => labelled(word(key), text, width, '  ');
  const below = (text: string) => labelled('', text, width, '  ');
  const head = `${question.family}  ${question.fact}  ${word('seed', { seed: String(question.seed) })}  ${question.level}`;
  const more = explanation.more.map((phrase, index) =>
    index === 0 ? beside('more', say(phrase)) : below(say(phrase)),
  );
  return [
    head,
    ...question.cautions.map((caution) => beside('caution', caution)),
    wrap(say(question.prompt), '  '),
    ...(drawing ? ['', drawingInWords(drawing, unit, say), ''] : []),
    spaceInWords(space, say),
    '',
    ...answers.map((answer) => beside('answer', answerInWords(space, answer, say))),
    beside('guess', word('guess-rate', { rate: question.guessRate })),
    beside('why', say(explanation.row)),
    below(say(explanation.reason)),
    ...more,
    ...lures.map((lure) =>
      beside(
        'slip-up',
        `${answerInWords(space, lure.answer, say)}: ${say({ key: `slip-up.${lure.slipUp}` })} (${lure.slipUp})`,
      ),
    ),
  ].join('\n');
}

/** The question as data, with the words beside what they are made from. */
export function questionAsData(question: Question, say: Say) {
  const { space, answers, lures, explanation } = question;
  return {
    ...question,
    words: {
      prompt: say(question.prompt),
      answers: answers.map((answer) => answerInWords(space, answer, say)),
      slipUps: lures.map((lure) => ({
        slipUp: lure.slipUp,
        answer: answerInWords(space, lure.answer, say),
        meaning: say({ key: `slip-up.${lure.slipUp}` }),
      })),
      explanation: [explanation.row, explanation.reason, ...explanation.more].map(say),
    },
  };
}
