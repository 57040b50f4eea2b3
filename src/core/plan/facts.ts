/** The facts of a deck as the planner takes them: what they cost, what they count, what is remembered of them. */
import { UNSEEN_RECALL } from '../memory/credit.ts';
import { HOLDING_DAYS, type Memory } from '../memory/fold.ts';
import { type SecondsPerForm, secondsFor } from '../memory/pace.ts';
import type { Fact } from '../questions/facts.ts';
import type { FactId, Family } from '../questions/question.ts';
import type { PlanFact } from './problem.ts';

export interface FactsRequest {
  /** In the order they are to be met. */
  readonly facts: readonly Fact[];
  readonly families: readonly Family[];
  readonly memory: Memory;
  /** Own answering times (`paceOf`). */
  readonly secondsPerForm?: SecondsPerForm;
  /** Set by the instructor; 1 where none is given. */
  readonly weights?: ReadonlyMap<FactId, number>;
  /** Facts to be right on two separate days; those under a caution when left out. */
  readonly safety?: ReadonlySet<FactId>;
}

/**
 * A fact takes the mean time of the families that can ask it; when missed, it is asked once more in the drill and
 * takes twice that.
 */
export function planFactsOf({
  facts,
  families,
  memory,
  secondsPerForm,
  weights,
  safety,
}: FactsRequest): PlanFact[] {
  const formOf = new Map(families.map(({ id, form }) => [id, form]));
  return facts.map(({ id, families: able, cautioned }): PlanFact => {
    const times = able.flatMap((family) => {
      const form = formOf.get(family);
      return form ? [secondsFor(form, secondsPerForm)] : [];
    });
    const seconds = times.reduce((sum, time) => sum + time, 0) / Math.max(1, times.length);
    const state = memory.get(id) ?? null;
    return {
      id,
      weight: weights?.get(id) ?? 1,
      rightSeconds: seconds,
      wrongSeconds: 2 * seconds,
      memory: state && { stability: state.stability, difficulty: state.difficulty, lastDay: state.lastDay },
      firstRecall: UNSEEN_RECALL,
      ...((safety ? safety.has(id) : cautioned)
        ? { rightDays: { wanted: HOLDING_DAYS, had: state?.rightDays ?? 0 } }
        : {}),
    };
  });
}
