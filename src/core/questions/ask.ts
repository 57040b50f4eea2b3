/**
 * Asks: turns a family's draw into a question, and throws away every draw that would not be fair. A question
 * is fixed by deck, family, fact and seed, so a disputed one can be opened again.
 */
import { randomFrom, seedOf } from '../random.ts';
import { countOrders } from '../sequence/count.ts';
import { checkPrecedence } from '../sequence/precedence.ts';
import type { Deck } from '../unit/deck.ts';
import type { Ref, Unit } from '../unit/unit.ts';
import { belongs, everyAnswer, LISTABLE, nearAnswers, sizeOf } from './answer-space.ts';
import { isAmongRight } from './judge.ts';
import type { Answer, FactId, Family, Posed, Question } from './question.ts';

/** Draws tried before a seed is given up; a family's guards may refuse many draws on a small unit. */
const TRIES = 24;

/** Why a draw is not a fair question; null when it is. */
export function unfairness(unit: Unit, posed: Posed): string | null {
  const { space, answers } = posed;
  const unsure = posed.uses.find((ref) => !unit.sure(ref));
  if (unsure) return `rests on ${unsure}, which is not verified`;
  if (space.form === 'one' && space.options.length < 4) return 'fewer than four choices';
  if (space.form === 'place' && space.spots.length < 4) return 'fewer than four places';
  if (!answers.every((answer) => belongs(space, answer))) return 'a right answer is outside the answer space';
  if (!posed.lures.every((lure) => belongs(space, lure.answer)))
    return 'a slip-up is outside the answer space';
  const agrees = (answer: Answer) => posed.isRight(answer) === isAmongRight(posed, answer);
  if (!answers.every((answer) => posed.isRight(answer))) return 'a declared answer is not right';
  const rivals =
    space.form !== 'number' && sizeOf(space) <= LISTABLE
      ? everyAnswer(space)
      : answers.flatMap((answer) => [...nearAnswers(space, answer)]);
  for (const rival of rivals) if (!agrees(rival)) return 'another answer is right as well, or none is';
  return null;
}

/** How many answers of the space are right. Relations that go round in a circle are a mistake of ours and throw. */
export function countRight({
  space,
  answers,
  accepts,
}: Pick<Posed, 'space' | 'answers' | 'accepts'>): number {
  if (!accepts || space.form !== 'order') return answers.length;
  const likes = (space.alike ?? []).flatMap((group) =>
    group.slice(1).map((later, index) => [group[index]!, later] as const),
  );
  const pairs = [...accepts.pairs, ...likes];
  const precedence = checkPrecedence(
    space.items.map(({ id }) => ({
      id,
      after: pairs.filter(([, later]) => later === id).map(([step]) => ({ step })),
    })),
  );
  const orders = precedence.ok ? countOrders(precedence.value) : precedence;
  if (!orders.ok) throw new Error(`accepted orders: ${orders.error.code}`);
  return Number(orders.value);
}

/** Chance of a right answer by blind guessing; a number cannot be guessed (0). */
export function guessRateOf(posed: Pick<Posed, 'space' | 'answers' | 'accepts'>): number {
  return posed.space.form === 'number' ? 0 : countRight(posed) / sizeOf(posed.space);
}

function cautionsFor(deck: Deck, uses: readonly Ref[]): string[] {
  const held: readonly string[] = uses;
  return (deck.cautions ?? [])
    .filter((caution) => caution.attachedTo.some((ref) => held.includes(ref)))
    .map((caution) => caution.text);
}

/**
 * The question that this family, seed and fact give on this unit. The fact is drawn from the seed when none
 * is named. Undefined when the family has nothing fair to ask here.
 */
export function ask(unit: Unit, family: Family, seed: number, about?: FactId): Question | undefined {
  const facts = family.facts(unit);
  if (facts.length === 0 || (about !== undefined && !facts.includes(about))) return undefined;
  const fact = about ?? randomFrom(seedOf(unit.deck.id, family.id, seed)).pick(facts);
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const random = randomFrom(seedOf(unit.deck.id, family.id, fact, seed, attempt));
    const posed = family.pose(unit, fact, random);
    if (!posed || unfairness(unit, posed) !== null) continue;
    const { isRight, lures, ...rest } = posed;
    return {
      ...rest,
      lures: lures.filter((lure) => !isRight(lure.answer)),
      deck: { id: unit.deck.id, revision: unit.deck.revision },
      family: family.id,
      fact,
      seed,
      level: family.level,
      guessRate: guessRateOf(posed),
      cautions: cautionsFor(unit.deck, posed.uses),
    };
  }
  return undefined;
}
