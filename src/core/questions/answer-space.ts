/** The whole answer space of a question: how large it is, and every answer in it where that can be listed. */
import { parseRational } from '../rational.ts';
import type { Answer, AnswerSpace, Option } from './question.ts';

/** The largest space that is checked answer by answer: 2^12 sets, or 7! orders. */
export const LISTABLE = 5040;

const factorial = (n: number): number => (n <= 1 ? 1 : n * factorial(n - 1));

/** How many answers the form allows, orders that look alike counted once; infinite for numbers. */
export function sizeOf(space: AnswerSpace): number {
  switch (space.form) {
    case 'set':
      return 2 ** space.options.length;
    case 'one':
      return space.options.length;
    case 'order':
      return (space.alike ?? []).reduce(
        (size, group) => size / factorial(group.length),
        factorial(space.items.length),
      );
    case 'pair':
      return space.right.length ** space.left.length;
    case 'fill':
      return space.marks.length ** space.asked.length;
    case 'place':
      return space.spots.length;
    case 'number':
      return Number.POSITIVE_INFINITY;
  }
}

function* assignments(keys: readonly string[], values: readonly Option[]): Generator<Record<string, string>> {
  const [key, ...rest] = keys;
  if (key === undefined) {
    yield {};
    return;
  }
  for (const tail of assignments(rest, values))
    for (const value of values) yield { [key]: value.id, ...tail };
}

/** Those alike only in the order of their group, so that no order is met twice. */
function* permutations(items: readonly string[], alike: readonly (readonly string[])[]): Generator<string[]> {
  if (items.length === 0) yield [];
  for (const [index, item] of items.entries()) {
    const group = alike.find((ids) => ids.includes(item)) ?? [];
    if (group.slice(0, group.indexOf(item)).some((earlier) => items.includes(earlier))) continue;
    for (const tail of permutations(items.toSpliced(index, 1), alike)) yield [item, ...tail];
  }
}

/** Every answer of a space that is not a number; mind `sizeOf` first. */
export function* everyAnswer(space: Exclude<AnswerSpace, { form: 'number' }>): Generator<Answer> {
  switch (space.form) {
    case 'set':
      for (let mask = 0; mask < 2 ** space.options.length; mask++)
        yield { form: 'set', picks: space.options.filter((_, bit) => mask & (1 << bit)).map((o) => o.id) };
      return;
    case 'one':
      for (const option of space.options) yield { form: 'one', pick: option.id };
      return;
    case 'order':
      for (const order of permutations(
        space.items.map((item) => item.id),
        space.alike ?? [],
      ))
        yield { form: 'order', order };
      return;
    case 'pair':
      for (const pairs of assignments(
        space.left.map((left) => left.id),
        space.right,
      ))
        yield { form: 'pair', pairs };
      return;
    case 'fill':
      for (const cells of assignments(space.asked, space.marks)) yield { form: 'fill', cells };
      return;
    case 'place':
      for (const { id } of space.spots) yield { form: 'place', spot: id };
  }
}

/** The answers one change away: for spaces too large to list. */
export function* nearAnswers(space: AnswerSpace, answer: Answer): Generator<Answer> {
  if (space.form === 'set' && answer.form === 'set') {
    for (const { id } of space.options)
      yield {
        form: 'set',
        picks: answer.picks.includes(id) ? answer.picks.filter((pick) => pick !== id) : [...answer.picks, id],
      };
  } else if (space.form === 'order' && answer.form === 'order') {
    for (let i = 1; i < answer.order.length; i++)
      yield {
        form: 'order',
        order: answer.order.toSpliced(i - 1, 2, answer.order[i]!, answer.order[i - 1]!),
      };
  } else if (space.form === 'pair' && answer.form === 'pair') {
    for (const left of space.left)
      for (const right of space.right)
        if (answer.pairs[left.id] !== right.id)
          yield { form: 'pair', pairs: { ...answer.pairs, [left.id]: right.id } };
  } else if (space.form === 'fill' && answer.form === 'fill') {
    for (const cell of space.asked)
      for (const mark of space.marks)
        if (answer.cells[cell] !== mark.id)
          yield { form: 'fill', cells: { ...answer.cells, [cell]: mark.id } };
  } else if (space.form === 'number' && answer.form === 'number') {
    const [value, tolerance] = [answer.value, space.tolerance].map((text) => parseRational(text)!);
    for (const step of [-3n, 3n])
      yield { form: 'number', value: value!.add(tolerance!.mul(step).div(2n)).toFraction() };
  }
}

/** Whether the answer fits the space's form and names only what is in it. */
export function belongs(space: AnswerSpace, answer: Answer): boolean {
  const among = (options: readonly Option[], id: string | undefined) =>
    options.some((option) => option.id === id);
  const distinct = (ids: readonly string[]) => new Set(ids).size === ids.length;
  if (space.form === 'set' && answer.form === 'set')
    return distinct(answer.picks) && answer.picks.every((id) => among(space.options, id));
  if (space.form === 'one' && answer.form === 'one') return among(space.options, answer.pick);
  if (space.form === 'order' && answer.form === 'order')
    return (
      answer.order.length === space.items.length &&
      distinct(answer.order) &&
      answer.order.every((id) => among(space.items, id))
    );
  if (space.form === 'pair' && answer.form === 'pair')
    return (
      Object.keys(answer.pairs).length === space.left.length &&
      space.left.every((left) => among(space.right, answer.pairs[left.id]))
    );
  if (space.form === 'fill' && answer.form === 'fill')
    return (
      Object.keys(answer.cells).length === space.asked.length &&
      space.asked.every((cell) => among(space.marks, answer.cells[cell]))
    );
  if (space.form === 'place' && answer.form === 'place') return among(space.spots, answer.spot);
  return space.form === 'number' && answer.form === 'number' && parseRational(answer.value) !== null;
}
