/**
 * How well the families measure, from collected logs: how hard each is, and whether those who know more answer
 * it right more often. Difficulty is the share not right. Discrimination is the point-biserial correlation of
 * right (0 or 1) with the person's share right on all other families, so that a family does not vouch for
 * itself (docs/sources.md [Q1]). First answers to a fact only: later ones follow the explanation.
 */
import { sampleCorrelation } from 'simple-statistics';
import type { Attempt } from '../memory/attempt.ts';
import { inOrder } from '../memory/order.ts';

/** Fewer answers, or from fewer people, say nothing. */
export const LEAST_ANSWERS = 30;
export const LEAST_PEOPLE = 10;

/** Below this a family tells those who know from those who do not badly, or the wrong way round. */
export const MISLEADS_BELOW = 0.1;

export interface FamilyQuality {
  readonly family: string;
  readonly answers: number;
  readonly people: number;
  /** Share not right, 0 to 1. */
  readonly difficulty: number;
  /** −1 to 1; null where everybody, or nobody, was right, or all the rest scores are alike. */
  readonly discrimination: number | null;
  readonly misleads: boolean;
}

interface First {
  readonly person: string;
  readonly family: string;
  readonly right: number;
}

function firstAnswers(log: ReadonlyMap<string, readonly Attempt[]>): First[] {
  return [...log].flatMap(([person, attempts]) => {
    const met = new Set<string>();
    return inOrder(attempts).flatMap(({ attempt }): First[] => {
      const key = `${attempt.deck} ${attempt.fact} ${attempt.family}`;
      if (met.has(key)) return [];
      met.add(key);
      return [{ person, family: attempt.family, right: attempt.right ? 1 : 0 }];
    });
  });
}

function tally(answers: readonly First[], key: (answer: First) => string) {
  const sums = new Map<string, { right: number; asked: number }>();
  for (const answer of answers) {
    const sum = sums.get(key(answer)) ?? { right: 0, asked: 0 };
    sum.right += answer.right;
    sum.asked++;
    sums.set(key(answer), sum);
  }
  return sums;
}

/** One entry for each family with enough data, the worst discrimination first. `log` is attempts by person. */
export function qualityOf(log: ReadonlyMap<string, readonly Attempt[]>): FamilyQuality[] {
  const answers = firstAnswers(log);
  const whole = tally(answers, ({ person }) => person);
  const parts = tally(answers, ({ person, family }) => `${person}\u0000${family}`);
  const families = new Map<string, First[]>();
  for (const answer of answers) families.set(answer.family, [...(families.get(answer.family) ?? []), answer]);
  const found = [...families].flatMap(([family, own]): FamilyQuality[] => {
    const people = new Set(own.map(({ person }) => person)).size;
    if (own.length < LEAST_ANSWERS || people < LEAST_PEOPLE) return [];
    const pairs = own.flatMap(({ person, right }) => {
      const all = whole.get(person)!;
      const part = parts.get(`${person}\u0000${family}`)!;
      const asked = all.asked - part.asked;
      return asked === 0 ? [] : [{ right, rest: (all.right - part.right) / asked }];
    });
    const [rights, rests] = [pairs.map(({ right }) => right), pairs.map(({ rest }) => rest)];
    const varies = new Set(rights).size > 1 && new Set(rests).size > 1;
    const discrimination = varies ? sampleCorrelation(rights, rests) : null;
    const difficulty = 1 - own.reduce((sum, { right }) => sum + right, 0) / own.length;
    return [
      {
        family,
        answers: own.length,
        people,
        difficulty,
        discrimination,
        misleads: discrimination !== null && discrimination < MISLEADS_BELOW,
      },
    ];
  });
  return found.sort((a, b) => (a.discrimination ?? 1) - (b.discrimination ?? 1));
}
