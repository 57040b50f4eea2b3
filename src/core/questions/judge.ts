/**
 * Judges an answer: right, or wrong and by which slip-up. Nothing is inferred beyond equality of answers and, for
 * orders, the relations that a question accepts by (docs/spec/answers.md).
 */
import { parseRational } from '../rational.ts';
import type { Accepts, Answer, AnswerSpace, FactId, Lure, Posed } from './question.ts';
import type { SlipUp } from './slip-ups.ts';

export interface Verdict {
  readonly right: boolean;
  /** Every slip-up whose output the answer equals; empty when it is "something else". */
  readonly slipUps: readonly SlipUp[];
  /** Facts those slip-ups show to be missing. */
  readonly missed: readonly FactId[];
}

const sameList = (a: readonly string[], b: readonly string[]) =>
  a.length === b.length && a.every((item, index) => item === b[index]);

const sameRecord = (a: Readonly<Record<string, string>>, b: Readonly<Record<string, string>>) =>
  Object.keys(a).length === Object.keys(b).length && Object.keys(a).every((key) => a[key] === b[key]);

/** The order with the members of each group of likes named in the group's own order, wherever they stand. */
export function withLikesNamed(alike: readonly (readonly string[])[], order: readonly string[]): string[] {
  const met = alike.map(() => 0);
  return order.map((id) => {
    const group = alike.findIndex((ids) => ids.includes(id));
    return group < 0 ? id : (alike[group]![met[group]!++] ?? id);
  });
}

/** Whether the order keeps every relation. */
export const keeps = ({ pairs }: Accepts, order: readonly string[]): boolean =>
  pairs.every(([earlier, later]) => order.indexOf(earlier) < order.indexOf(later));

/** Whether two answers of one space are the same; numbers are the same within the tolerance. */
export function sameAnswer(space: AnswerSpace, a: Answer, b: Answer): boolean {
  if (a.form === 'set' && b.form === 'set') return sameList([...a.picks].sort(), [...b.picks].sort());
  if (a.form === 'one' && b.form === 'one') return a.pick === b.pick;
  if (a.form === 'order' && b.form === 'order') {
    const alike = (space.form === 'order' && space.alike) || [];
    return sameList(withLikesNamed(alike, a.order), withLikesNamed(alike, b.order));
  }
  if (a.form === 'place' && b.form === 'place') return a.spot === b.spot;
  if (a.form === 'pair' && b.form === 'pair') return sameRecord(a.pairs, b.pairs);
  if (a.form === 'fill' && b.form === 'fill') return sameRecord(a.cells, b.cells);
  if (a.form === 'number' && b.form === 'number' && space.form === 'number') {
    const [x, y, tolerance] = [a.value, b.value, space.tolerance].map(parseRational);
    return !!x && !!y && !!tolerance && x.sub(y).abs().lte(tolerance);
  }
  return false;
}

/** Whether an answer that belongs to the question's space is one of those that are right. */
export function isAmongRight(
  { space, answers, accepts }: Pick<Posed, 'space' | 'answers' | 'accepts'>,
  answer: Answer,
): boolean {
  if (answers.some((right) => sameAnswer(space, right, answer))) return true;
  if (!accepts || answer.form !== 'order' || space.form !== 'order') return false;
  return keeps(accepts, withLikesNamed(space.alike ?? [], answer.order));
}

/** The verdict on an answer of the question's form. */
export function judge(
  question: Pick<Posed, 'space' | 'answers' | 'accepts' | 'lures'>,
  answer: Answer,
): Verdict {
  if (isAmongRight(question, answer)) return { right: true, slipUps: [], missed: [] };
  const hit: Lure[] = question.lures.filter((lure) => sameAnswer(question.space, lure.answer, answer));
  return {
    right: false,
    slipUps: [...new Set(hit.map((lure) => lure.slipUp))],
    missed: [...new Set(hit.flatMap((lure) => (lure.fact ? [lure.fact] : [])))],
  };
}
