/** Judges an answer: right, or wrong and by which slip-up. Nothing is inferred beyond equality of answers. */
import { parseRational } from '../rational.ts';
import type { Answer, AnswerSpace, FactId, Lure, Posed } from './question.ts';
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

/** Whether two answers of one space are the same; numbers are the same within the tolerance. */
export function sameAnswer(space: AnswerSpace, a: Answer, b: Answer): boolean {
  if (a.form === 'set' && b.form === 'set') return sameList([...a.picks].sort(), [...b.picks].sort());
  if (a.form === 'one' && b.form === 'one') return a.pick === b.pick;
  if (a.form === 'order' && b.form === 'order') return sameList(a.order, b.order);
  if (a.form === 'pair' && b.form === 'pair') return sameRecord(a.pairs, b.pairs);
  if (a.form === 'fill' && b.form === 'fill') return sameRecord(a.cells, b.cells);
  if (a.form === 'number' && b.form === 'number' && space.form === 'number') {
    const [x, y, tolerance] = [a.value, b.value, space.tolerance].map(parseRational);
    return !!x && !!y && !!tolerance && x.sub(y).abs().lte(tolerance);
  }
  return false;
}

/** The verdict on an answer of the question's form. */
export function judge(question: Pick<Posed, 'space' | 'answers' | 'lures'>, answer: Answer): Verdict {
  const same = (other: Answer) => sameAnswer(question.space, other, answer);
  if (question.answers.some(same)) return { right: true, slipUps: [], missed: [] };
  const hit: Lure[] = question.lures.filter((lure) => same(lure.answer));
  return {
    right: false,
    slipUps: [...new Set(hit.map((lure) => lure.slipUp))],
    missed: [...new Set(hit.flatMap((lure) => (lure.fact ? [lure.fact] : [])))],
  };
}
