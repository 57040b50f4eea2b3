/**
 * How much of a worked example stands above a calculation: all of it the first time, the step to the result left
 * to the learner the next time, then nothing. Read off the log alone, so every device says the same.
 * docs/spec/memory.md M39 to M41; docs/sources.md [EXAMPLES].
 */
import type { FactId, Family } from '../questions/question.ts';
import type { Attempt } from './attempt.ts';

export const SUPPORTS = ['full', 'one-step-hidden', 'alone'] as const;
export type Support = (typeof SUPPORTS)[number];

/**
 * Chance of a right answer from somebody who follows the example and does not know the way; the log keeps it as
 * the guess rate of that answer. A number cannot be guessed otherwise.
 */
export const GUESS_WITH: Readonly<Record<Support, number>> = {
  full: 0.5,
  'one-step-hidden': 0.25,
  alone: 0,
};

type Given = Pick<Attempt, 'family' | 'fact' | 'form' | 'right' | 'guessRate'>;

/** Whether the whole example stood above the answer: a right one then shows no day of holding (M41). */
export const followsExample = ({ form, guessRate }: Pick<Attempt, 'form' | 'guessRate'>): boolean =>
  form === 'number' && guessRate >= GUESS_WITH.full;

const wasAlone = ({ guessRate }: Given) => guessRate < GUESS_WITH['one-step-hidden'];

/** Reading a figure off is no calculation: there is no way to show. */
const isCalculation = ({ form, level }: Family) => form === 'number' && level !== 'read';

/**
 * Each answer takes one step of help away, right or wrong: a wrong one has its own working shown. Once the fact was
 * answered right alone there is none. Who has calculated this way alone about another fact starts one step on.
 */
export function supportFor(log: readonly Given[], family: Family, fact: FactId): Support {
  if (!isCalculation(family)) return 'alone';
  const numbers = log.filter(({ form }) => form === 'number');
  const rightAlone = numbers.filter((given) => given.right && wasAlone(given));
  if (rightAlone.some((given) => given.fact === fact)) return 'alone';
  const asked = numbers.filter((given) => given.family === family.id && given.fact === fact).length;
  const knowsTheWay = rightAlone.some((given) => given.family === family.id) ? 1 : 0;
  return SUPPORTS[Math.min(asked + knowsTheWay, SUPPORTS.length - 1)]!;
}
