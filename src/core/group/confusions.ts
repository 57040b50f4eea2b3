/**
 * What a wrong answer took for what: read off the question opened again and the answer given. Two things put in
 * each other's place are one confusion of the two; otherwise it is said what was put in place of what was right.
 * Nothing is guessed: an answer that is wrong in several ways that do not explain each other confuses nothing.
 */
import { type Phrase, thing } from '../questions/phrase.ts';
import type { Answer, Option, Question } from '../questions/question.ts';

export interface Confusion {
  /** What it was about, where the two say nothing by themselves ("none" and "full" of solenoid S2); else null. */
  readonly about: Phrase | null;
  /** What was right, and what was put in its place. For a swap in the order of their names. */
  readonly right: Phrase;
  readonly given: Phrase;
  /** Each was put in the place of the other. */
  readonly swapped: boolean;
}

const labels = (options: readonly Option[]) => new Map(options.map(({ id, label }) => [id, label]));

/** Things of the deck speak for themselves; marks like "on" and "off" only together with what they are about. */
const speaks = (phrase: Phrase) => phrase.key === thing('range', '').key;

const textOf = (phrase: Phrase) => JSON.stringify(phrase);

const swap = (a: Phrase, b: Phrase): Confusion => {
  const [right, given] = textOf(a) < textOf(b) ? [a, b] : [b, a];
  return { about: null, right, given, swapped: true };
};

const instead = (about: Phrase | null, right: Phrase, given: Phrase): Confusion => ({
  about: speaks(right) && speaks(given) ? null : about,
  right,
  given,
  swapped: false,
});

/** Places where two records differ: swaps of two first, then each that is left by itself. */
function inPlaces(
  right: Readonly<Record<string, string>>,
  given: Readonly<Record<string, string>>,
  lefts: ReadonlyMap<string, Phrase>,
  values: ReadonlyMap<string, Phrase>,
): Confusion[] {
  const wrong = Object.keys(right).filter((place) => given[place] !== right[place]);
  const [a, b] = wrong as [string?, string?];
  if (wrong.length === 2 && a && b && given[a] === right[b] && given[b] === right[a]) {
    const [first, second] = [lefts.get(a), lefts.get(b)];
    if (first && second) return [swap(first, second)];
  }
  return wrong.flatMap((place) => {
    const [is, was] = [values.get(right[place]!), values.get(given[place] ?? '')];
    return is && was ? [instead(lefts.get(place) ?? null, is, was)] : [];
  });
}

/** Confusions of a wrong answer, against the nearest right one; empty when it shows none. */
export function confusionsIn({ space, answers, prompt }: Question, answer: Answer): Confusion[] {
  const [right] = answers;
  if (space.form === 'one' && right.form === 'one' && answer.form === 'one') {
    const options = labels(space.options);
    const [is, was] = [options.get(right.pick), options.get(answer.pick)];
    return is && was && answers.length === 1 && right.pick !== answer.pick ? [instead(prompt, is, was)] : [];
  }
  if (space.form === 'place' && right.form === 'place' && answer.form === 'place') {
    const spots = labels(space.spots);
    const [is, was] = [spots.get(right.spot), spots.get(answer.spot)];
    return is && was && answers.length === 1 && right.spot !== answer.spot ? [instead(prompt, is, was)] : [];
  }
  if (space.form === 'set' && right.form === 'set' && answer.form === 'set') {
    const options = labels(space.options);
    const [missing] = right.picks.filter((id) => !answer.picks.includes(id));
    const extra = answer.picks.filter((id) => !right.picks.includes(id));
    const [is, was] = [options.get(missing ?? ''), options.get(extra[0] ?? '')];
    const one = answer.picks.length === right.picks.length && extra.length === 1;
    return one && is && was ? [instead(prompt, is, was)] : [];
  }
  if (space.form === 'order' && right.form === 'order' && answer.form === 'order') {
    const items = labels(space.items);
    const wrong = right.order.flatMap((id, place) => (answer.order[place] === id ? [] : [id]));
    const [is, was] = [items.get(wrong[0] ?? ''), items.get(wrong[1] ?? '')];
    return answers.length === 1 && wrong.length === 2 && is && was ? [swap(is, was)] : [];
  }
  if (space.form === 'pair' && right.form === 'pair' && answer.form === 'pair')
    return inPlaces(right.pairs, answer.pairs, labels(space.left), labels(space.right));
  if (space.form === 'fill' && right.form === 'fill' && answer.form === 'fill') {
    const [rows, columns] = [labels(space.rows), labels(space.columns)];
    const lefts = new Map(
      space.asked.flatMap((cell) => {
        const [row, column] = [cell.slice(0, cell.indexOf('/')), cell.slice(cell.indexOf('/') + 1)];
        const label = columns.get(column) ?? rows.get(row);
        return label ? [[cell, label] as const] : [];
      }),
    );
    return inPlaces(right.cells, answer.cells, lefts, labels(space.marks));
  }
  return [];
}

export interface ConfusionTally {
  readonly confusion: Confusion;
  readonly times: number;
  /** Learners who made it. */
  readonly people: number;
}

/** How often each confusion was made, most people first; a swap counts whichever way round it was made. */
export function tallyConfusions(byLearner: Iterable<readonly Confusion[]>): ConfusionTally[] {
  const tallies = new Map<string, { confusion: Confusion; times: number; people: number }>();
  for (const confusions of byLearner) {
    const own = new Set<string>();
    for (const confusion of confusions) {
      const key = JSON.stringify([confusion.swapped, confusion.about, confusion.right, confusion.given]);
      const tally = tallies.get(key) ?? { confusion, times: 0, people: 0 };
      tallies.set(key, tally);
      tally.times++;
      if (!own.has(key)) tally.people++;
      own.add(key);
    }
  }
  return [...tallies]
    .sort(([a, x], [b, y]) => y.people - x.people || y.times - x.times || (a < b ? -1 : 1))
    .map(([, tally]) => tally);
}
