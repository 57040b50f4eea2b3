/**
 * A day's plan made anew from yesterday's prices, beside the plainest rule there is: sorting the facts by recall.
 * Sixty days is the longest course planned day by day; 2,000 facts in as many states is more than any deck has.
 */
import { WEIGHTS } from '../../src/core/memory/recall.ts';
import { everyDay } from '../../src/core/plan/calendar.ts';
import { planToday } from '../../src/core/plan/plan.ts';
import type { PlanFact } from '../../src/core/plan/problem.ts';
import type { PlanRequest } from '../../src/core/plan/solve.ts';
import { recallAfter, transitionOf } from '../../src/core/plan/transition.ts';
import { randomFrom } from '../../src/core/random.ts';
import type { Suite } from './suite.ts';

const TODAY = 20_000;
/** A plan may take as long as this many sorts. */
const MOST_SORTS = 1000;

const m = transitionOf(WEIGHTS);

function factsOf(count: number): PlanFact[] {
  const random = randomFrom(7);
  return Array.from({ length: count }, (_, i) => ({
    id: `fact-${i}`,
    weight: 1,
    rightSeconds: 18,
    wrongSeconds: 36,
    memory:
      i % 2
        ? null
        : {
            stability: Math.exp(4 * random.unit() - 1),
            difficulty: 2 + 7 * random.unit(),
            lastDay: TODAY - random.int(1, 20),
          },
    firstRecall: 0.3,
  }));
}

function suiteOf(days: number, count: number): Suite {
  const facts = factsOf(count);
  const requestOn = (today: number): PlanRequest => ({
    w: WEIGHTS,
    today,
    classDay: TODAY + days,
    practice: everyDay(today, TODAY + days, 600),
    facts,
    seed: 1,
  });
  const { prices } = planToday(requestOn(TODAY - 1));
  const warm = () => planToday({ ...requestOn(TODAY), prices });
  const sort = () =>
    facts
      .map((fact) => ({
        fact,
        recall: fact.memory ? recallAfter(m, TODAY - fact.memory.lastDay, fact.memory.stability) : 0,
      }))
      .sort((a, b) => a.recall - b.recall);
  return {
    title: `A day's plan, ${days} days and ${count} facts`,
    count: 1,
    unit: 'plan',
    subject: { name: 'from yesterday’s prices, bound included', run: warm },
    baselines: [{ name: 'sorting the facts by recall', run: sort, atLeast: 1 / MOST_SORTS }],
    agree() {
      const cold = planToday(requestOn(TODAY));
      const seconds = warm().facts.reduce((sum, { seconds: each }) => sum + each, 0);
      if (Math.abs(cold.forecast - warm().forecast) > 0.003) throw new Error('the warm plan is another plan');
      if (Math.abs(seconds - 600) > 36) throw new Error('the plan does not fill the day');
    },
  };
}

export const plan: readonly Suite[] = [suiteOf(60, 2000), suiteOf(21, 300)];
