/**
 * A worked example for a question with a number for its answer: a sibling of the same family, by another seed and
 * with another result, and the sentences of its explanation as the steps of a working. A skill is shown with other
 * numbers; a value of the deck is shown on another value, since its own working would give the answer away.
 */

import { randomFrom, seedOf } from '../random.ts';
import { makeDecimal, parseRational, type Rational } from '../rational.ts';
import type { Unit } from '../unit/unit.ts';
import { ask } from './ask.ts';
import { sameAnswer } from './judge.ts';
import type { Phrase } from './phrase.ts';
import type { FactId, Family, Question } from './question.ts';

export interface WorkedExample {
  readonly question: Question;
  /** On the way, in order. */
  readonly steps: readonly string[];
  /** The step that ends in the result; more sentences than one where they say it too. */
  readonly last: readonly string[];
}

/** Siblings looked at before the best of them is taken. */
const TRIED = 8;

/** Figures of a sentence without their signs; digits of a name ("C2") are none. */
const FIGURE = /(?<![\p{L}\d.,])\d+(?:\.\d+)?/gu;

const placesOf = (figure: string) => figure.split('.')[1]?.length ?? 0;

/** Whether one of the figures is the result, rounded to as many places as the figure has, and these are enough. */
const tells = (sentence: string, result: Rational, decimals: number): boolean =>
  [...sentence.matchAll(FIGURE)].some(
    ([figure]) => placesOf(figure) >= decimals && figure === makeDecimal(result.abs(), placesOf(figure)),
  );

/** The explanation as a working: what says the result comes last. */
export function workingOf(question: Question, speak: (phrase: Phrase) => string): WorkedExample {
  const { space, answers, explanation } = question;
  const sentences = [explanation.row, explanation.reason, ...explanation.more].map(speak);
  const [answer] = answers;
  if (space.form !== 'number' || answer.form !== 'number') return { question, steps: sentences, last: [] };
  const result = parseRational(answer.value)!;
  const isLast = (sentence: string) => tells(sentence, result, space.decimals);
  return {
    question,
    steps: sentences.filter((sentence) => !isLast(sentence)),
    last: sentences.filter(isLast),
  };
}

/** What a fact of the deck says of its value: "/ratio" of "range:4/ratio". Empty for a skill. */
const aspectOf = (fact: FactId): string => /\/[^/]*$/.exec(fact)?.[0] ?? '';

function* siblings(unit: Unit, family: Family, question: Question, spared: readonly FactId[]) {
  const { fact, seed } = question;
  const random = randomFrom(seedOf('example', family.id, fact, seed));
  const others = aspectOf(fact)
    ? family.facts(unit).filter((other) => other !== fact && aspectOf(other) === aspectOf(fact))
    : [];
  const shuffled = random.shuffle(others);
  const facts = [
    ...shuffled.filter((other) => !spared.includes(other)),
    ...shuffled.filter((other) => spared.includes(other)),
    ...Array.from({ length: TRIED }, () => fact),
  ];
  for (const about of facts) {
    const drawn = seedOf('example', seed, random.int(0, 2 ** 30)) >>> 1;
    // The seed beside is the one the fact is asked again by.
    if (Math.abs(drawn - seed) <= 1) continue;
    const sibling = ask(unit, family, drawn, about);
    if (sibling) yield sibling;
  }
}

/** Sentences too many that say the result: of one like 1, or one that is given, nearly all do. */
function murk({ question, steps, last }: WorkedExample, speak: (phrase: Phrase) => string): number {
  const { space, answers } = question;
  const [answer] = answers;
  const isGiven =
    space.form === 'number' &&
    answer.form === 'number' &&
    tells(speak(question.prompt), parseRational(answer.value)!, space.decimals);
  const isShown = steps.length > 0 && last.length > 0;
  return (isGiven ? TRIED : 0) + (isShown ? Math.max(0, last.length - 2) : TRIED);
}

/**
 * The clearest example for a question; undefined where the family has no sibling with another result. `spared`:
 * facts that are better not shown worked, such as those still to come; they are taken last.
 */
export function exampleFor(
  unit: Unit,
  family: Family,
  question: Question,
  speak: (phrase: Phrase) => string,
  spared: readonly FactId[] = [],
): WorkedExample | undefined {
  let best: { readonly example: WorkedExample; readonly murk: number } | undefined;
  let looked = 0;
  for (const sibling of siblings(unit, family, question, spared)) {
    const sameResult = sibling.answers.some((answer) =>
      question.answers.some(
        (own) => sameAnswer(question.space, answer, own) || sameAnswer(sibling.space, answer, own),
      ),
    );
    if (!sameResult) {
      const example = workingOf(sibling, speak);
      const found = { example, murk: murk(example, speak) };
      if (!best || found.murk < best.murk) best = found;
    }
    if (best?.murk === 0 || ++looked === TRIED) break;
  }
  return best?.example;
}
