/** An answer in one line, by the labels of its question: for print, the command line and other programs. */
import { say as phrase } from '../core/questions/phrase.ts';
import type { Answer, AnswerSpace, Option } from '../core/questions/question.ts';
import { makeDecimal, parseRational } from '../core/rational.ts';
import type { Say } from './words.ts';

/** The label of one of the options; its id where there is none. */
export const labelIn = (options: readonly Option[], id: string, say: Say): string => {
  const option = options.find((candidate) => candidate.id === id);
  return option ? say(option.label) : id;
};

/** An answer in one line. */
export function answerInWords(space: AnswerSpace, answer: Answer, say: Say): string {
  const nothing = () => say(phrase('answer.none'));
  if (space.form === 'set' && answer.form === 'set')
    return answer.picks.map((id) => labelIn(space.options, id, say)).join(', ') || nothing();
  if (space.form === 'one' && answer.form === 'one') return labelIn(space.options, answer.pick, say);
  if (space.form === 'place' && answer.form === 'place') return labelIn(space.spots, answer.spot, say);
  if (space.form === 'order' && answer.form === 'order')
    return answer.order.map((id) => labelIn(space.items, id, say)).join(' > ');
  if (space.form === 'pair' && answer.form === 'pair')
    return space.left
      .map((left) => `${say(left.label)} = ${labelIn(space.right, answer.pairs[left.id] ?? '', say)}`)
      .join('; ');
  if (space.form === 'fill' && answer.form === 'fill')
    return space.asked
      .map((cell) => {
        const [row = '', column = ''] = cell.split('/');
        const mark = labelIn(space.marks, answer.cells[cell] ?? '', say);
        const place = space.columns.length > 1 ? ` / ${labelIn(space.columns, column, say)}` : '';
        return `${labelIn(space.rows, row, say)}${place} = ${mark}`;
      })
      .join('; ');
  if (space.form === 'number' && answer.form === 'number') {
    const value = parseRational(answer.value);
    const shown = value ? makeDecimal(value, space.decimals) : answer.value;
    return say(phrase('text', { text: space.unit === null ? shown : `${shown} ${space.unit}` }));
  }
  return nothing();
}
