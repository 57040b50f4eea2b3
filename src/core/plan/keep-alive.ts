/**
 * Practice after the class date: there is no date to plan to, so a fact is asked once its recall has fallen to
 * 0.9. Every success lets it wait longer, so the gaps grow by themselves. docs/spec/plan.md P19.
 */
import { KEEP_ALIVE_RECALL, UNSEEN_DAYS_AFTER_CLASS } from '../memory/agenda.ts';
import type { PlannedFact } from './plan.ts';
import type { PlanFact } from './problem.ts';
import { recallAfter, transitionOf } from './transition.ts';

export interface KeepAliveRequest {
  /** The 21 memory parameters. */
  readonly w: readonly number[];
  readonly today: number;
  /** Seconds of practice today. */
  readonly seconds: number;
  readonly facts: readonly PlanFact[];
}

/**
 * Facts to ask today, what is most at risk by weight first, as many as fit; none when nothing has faded. Facts
 * never asked are spread over two weeks, and come after those that would be lost.
 */
export function keepAlive({ w, today, seconds, facts }: KeepAliveRequest): PlannedFact[] {
  const m = transitionOf(w);
  const rated = facts.map((fact) => {
    const days = fact.memory ? Math.max(0, today - fact.memory.lastDay) : 0;
    const recall = fact.memory ? recallAfter(m, days, fact.memory.stability) : fact.firstRecall;
    return { fact, recall, cost: fact.wrongSeconds + (fact.rightSeconds - fact.wrongSeconds) * recall };
  });
  const faded = rated
    .filter(({ fact, recall }) => fact.memory && fact.memory.lastDay < today && recall <= KEEP_ALIVE_RECALL)
    .sort((a, b) => b.fact.weight * (1 - b.recall) - a.fact.weight * (1 - a.recall));
  const unseen = rated.filter(({ fact }) => !fact.memory);
  const share = Math.ceil(unseen.length / UNSEEN_DAYS_AFTER_CLASS);
  const asked: PlannedFact[] = [];
  let left = seconds;
  for (const { fact, recall, cost } of [...faded, ...unseen.slice(0, share)]) {
    if (cost > left) continue;
    left -= cost;
    asked.push({ fact: fact.id, seconds: cost, recall, first: fact.memory === null });
  }
  return asked;
}
