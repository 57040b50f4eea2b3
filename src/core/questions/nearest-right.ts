/** The right answer to show beside a given one: where several orders are right, the one that changes least. */
import { isAmongRight, withLikesNamed } from './judge.ts';
import type { Answer, Posed } from './question.ts';

/**
 * A right answer itself when it is one. Else, of accepted orders, the given one with each item held back until
 * what must come before it is done; else the declared answer.
 */
export function nearestRight(question: Pick<Posed, 'space' | 'answers' | 'accepts'>, answer: Answer): Answer {
  const { space, answers, accepts } = question;
  if (isAmongRight(question, answer)) return answer;
  if (!accepts || answer.form !== 'order' || space.form !== 'order') return answers[0];
  const left = withLikesNamed(space.alike ?? [], answer.order);
  const order: string[] = [];
  while (left.length > 0) {
    const ready = left.findIndex((id) =>
      accepts.pairs.every(([earlier, later]) => later !== id || order.includes(earlier)),
    );
    if (ready < 0) return answers[0];
    order.push(...left.splice(ready, 1));
  }
  return { form: 'order', order };
}
