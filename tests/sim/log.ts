/** The log of attempts a simulated learner leaves behind, one single-fact question at a time. */
import type { Attempt } from '../../src/core/memory/attempt.ts';
import { SLIP_RATE } from '../../src/core/memory/credit.ts';
import { after, type Memory, recallAfter } from '../../src/core/plan/transition.ts';
import { anAttempt } from '../attempts.ts';
import { chance, type Learner, sortOf } from './learner.ts';

export const FIRST_DAY = 20_000;

export interface Habit {
  readonly facts: number;
  readonly days: number;
  readonly asksADay: number;
  readonly guessRate: number;
}

/** Facts never asked come first, ten a day at most; then those asked longest ago. */
export function logOf(
  learner: Learner,
  { facts, days, asksADay, guessRate }: Habit,
  seed: number,
): Attempt[] {
  const truths: ((Memory & { readonly lastDay: number }) | null)[] = Array.from(
    { length: facts },
    () => null,
  );
  const attempts: Attempt[] = [];
  for (let day = 0; day < days; day++) {
    const fresh = [...truths.keys()].filter((fact) => !truths[fact]).slice(0, 10);
    const met = [...truths.keys()]
      .filter((fact) => truths[fact])
      .sort((a, b) => truths[a]!.lastDay - truths[b]!.lastDay || a - b);
    for (const fact of [...fresh, ...met].slice(0, asksADay)) {
      const truth = truths[fact]!;
      const recall = truth
        ? recallAfter(learner.truth, day - truth.lastDay, truth.stability)
        : learner.firstRecall;
      const known = chance(seed, fact, day) < recall;
      const luck = chance(seed, 30_000 + fact, day);
      const sort = sortOf(learner, seed, fact);
      const first = known ? sort.known : sort.missed;
      const memory = truth ? after(learner.truth, truth, day - truth.lastDay, known) : first;
      truths[fact] = { ...memory, lastDay: day };
      attempts.push(
        anAttempt({
          day: FIRST_DAY + day,
          sequence: attempts.length + 1,
          facts: [`fact-${fact}`],
          right: known ? luck >= SLIP_RATE : luck < guessRate,
          guessRate,
        }),
      );
    }
  }
  return attempts;
}
