/**
 * A day's plan made anew from yesterday's prices, beside the plainest rule there is: sorting the facts by recall.
 * Three sizes: a shipped deck, whose questions take unlike times and whose cautioned facts must be right on two days;
 * 2,000 facts, more than any deck has; and three weeks with 300. The first two over sixty days.
 */
import { WEIGHTS } from '../../src/core/memory/recall.ts';
import { everyDay } from '../../src/core/plan/calendar.ts';
import { planFactsOf } from '../../src/core/plan/facts.ts';
import { planToday } from '../../src/core/plan/plan.ts';
import type { PlanFact } from '../../src/core/plan/problem.ts';
import type { PlanRequest } from '../../src/core/plan/solve.ts';
import { recallAfter, transitionOf } from '../../src/core/plan/transition.ts';
import { factsOf } from '../../src/core/questions/facts.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import { type Random, randomFrom } from '../../src/core/random.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { shippedDecks } from '../units.ts';
import type { Suite } from './suite.ts';

const TODAY = 20_000;
/**
 * A plan may take as long as this many sorts of 2,000 facts, and of as many as a deck has: about a quarter of a second
 * where such sorts take 0.3 ms and 0.05 ms. Our choice.
 */
const MOST_SORTS = { many: 800, few: 5000 };

const m = transitionOf(WEIGHTS);

const aMemory = (random: Random) => ({
  stability: Math.exp(4 * random.unit() - 1),
  difficulty: 2 + 7 * random.unit(),
  lastDay: TODAY - random.int(1, 20),
});

function manyFacts(count: number): PlanFact[] {
  const random = randomFrom(7);
  return Array.from({ length: count }, (_, i) => ({
    id: `fact-${i}`,
    weight: 1,
    rightSeconds: 18,
    wrongSeconds: 36,
    memory: i % 2 ? null : aMemory(random),
    firstRecall: 0.3,
  }));
}

/** The facts of a shipped deck, half of them met in the last three weeks. */
function deckFacts(): PlanFact[] {
  const random = randomFrom(7);
  const deck = shippedDecks().find(({ id }) => id === 'kestrel-7')!;
  const facts = factsOf(makeUnit(deck));
  return planFactsOf({ facts, families: FAMILIES, memory: new Map() }).map((fact, i) =>
    i % 2 ? fact : { ...fact, memory: aMemory(random) },
  );
}

function suiteOf(title: string, days: number, facts: readonly PlanFact[]): Suite {
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
    title: `A day's plan, ${days} days and ${title}`,
    count: 1,
    unit: 'plan',
    subject: { name: 'from yesterday’s prices', run: warm },
    baselines: [
      {
        name: 'sorting the facts by recall',
        run: sort,
        atLeast: 1 / (facts.length < 1000 ? MOST_SORTS.few : MOST_SORTS.many),
      },
    ],
    agree() {
      const cold = planToday(requestOn(TODAY));
      const seconds = warm().facts.reduce((sum, { seconds: each }) => sum + each, 0);
      if (Math.abs(cold.forecast - warm().forecast) > 0.003) throw new Error('the warm plan is another plan');
      if (Math.abs(seconds - 600) > 36) throw new Error('the plan does not fill the day');
    },
  };
}

export const plan: readonly Suite[] = [
  suiteOf('the facts of kestrel-7', 60, deckFacts()),
  suiteOf('2,000 facts', 60, manyFacts(2000)),
  suiteOf('300 facts', 21, manyFacts(300)),
];
