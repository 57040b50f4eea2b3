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
export const isCalculation = ({ form, level }: Pick<Family, 'form' | 'level'>): boolean =>
  form === 'number' && level !== 'read';

/** What the log says about calculations: which were right alone, and how often each was asked. */
export interface Worked {
  readonly alone: { readonly facts: ReadonlySet<FactId>; readonly families: ReadonlySet<string> };
  /** Answers by family and fact. */
  readonly asked: ReadonlyMap<string, number>;
}

export const NOTHING_WORKED: Worked = {
  alone: { facts: new Set(), families: new Set() },
  asked: new Map(),
};

const askedKey = (family: string, fact: FactId) => `${family} ${fact}`;

/** What is known after further answers; their order makes no difference, the same one twice counts twice. */
export function addWorked(before: Worked, log: Iterable<Given>): Worked {
  const [facts, families] = [new Set(before.alone.facts), new Set(before.alone.families)];
  const asked = new Map(before.asked);
  for (const given of log) {
    if (given.form !== 'number') continue;
    const key = askedKey(given.family, given.fact);
    asked.set(key, (asked.get(key) ?? 0) + 1);
    if (!given.right || !wasAlone(given)) continue;
    facts.add(given.fact);
    families.add(given.family);
  }
  return { alone: { facts, families }, asked };
}

/**
 * Each answer takes one step of help away, right or wrong: a wrong one has its own working shown. Once the fact was
 * answered right alone there is none. Who has calculated this way alone about another fact starts one step on.
 */
export function supportFor({ alone, asked }: Worked, family: Family, fact: FactId): Support {
  if (!isCalculation(family) || alone.facts.has(fact)) return 'alone';
  const steps = (asked.get(askedKey(family.id, fact)) ?? 0) + (alone.families.has(family.id) ? 1 : 0);
  return SUPPORTS[Math.min(steps, SUPPORTS.length - 1)]!;
}
