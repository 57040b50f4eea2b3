import { describe, expect, test } from 'vitest';
import { WEIGHTS } from '../../../src/core/memory/recall.ts';
import { everyDay } from '../../../src/core/plan/calendar.ts';
import { ceilingsOf } from '../../../src/core/plan/ceiling.ts';
import type { Observation } from '../../../src/core/plan/observe.ts';
import { planToday } from '../../../src/core/plan/plan.ts';
import type { PlanFact } from '../../../src/core/plan/problem.ts';
import { AS_BELIEVED, courseOf, recallAtClass } from '../../../src/core/plan/prospect.ts';
import { readinessOf } from '../../../src/core/plan/readiness.ts';
import { type PlanRequest, solve } from '../../../src/core/plan/solve.ts';
import { recallAfter, transitionOf } from '../../../src/core/plan/transition.ts';
import { randomFrom } from '../../../src/core/random.ts';
import { aCell } from '../../sim/cells.ts';
import { coverageOf } from '../../sim/readiness.ts';

const TODAY = 20_000;
const m = transitionOf(WEIGHTS);

function factsOf(count: number, seed: number): PlanFact[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, (_, i) => ({
    id: `fact-${i}`,
    weight: random.pick([1, 1, 2]),
    rightSeconds: random.pick([10, 14, 30]),
    wrongSeconds: 30,
    memory:
      i % 3 === 0
        ? null
        : {
            stability: Math.exp(3 * random.unit() - 1),
            difficulty: 2 + 7 * random.unit(),
            lastDay: TODAY - random.int(1, 6),
          },
    firstRecall: 0.3,
    ...(i % 10 === 0 ? { rightDays: { wanted: 2, had: 0 } } : {}),
  }));
}

const requestFor = (
  facts: readonly PlanFact[],
  days: number,
  minutes: number,
  attendance = 1,
): PlanRequest => ({
  w: WEIGHTS,
  today: TODAY,
  classDay: TODAY + days,
  practice: everyDay(TODAY, TODAY + days, minutes * 60, attendance),
  facts,
  seed: 1,
});

describe('P15: the plan, fact by fact and day by day', () => {
  test('what each fact is expected to have at class adds up to the forecast, for a learner as believed', () => {
    for (const [seed, attendance] of [
      [1, 1],
      [2, 0.7],
      [3, 1],
    ] as const) {
      const solved = solve(requestFor(factsOf(60, seed), 12, 6, attendance));
      const each = recallAtClass(solved, AS_BELIEVED);
      const total = solved.problem.asks.groups.reduce(
        (sum, { count, weight }, g) => sum + count * weight * each[g]!,
        0,
      );
      expect(total).toBeCloseTo(solved.outcome.flow.recalled, 5);
    }
  });

  test('a learner who forgets slower has more at class, one who forgets faster less', () => {
    const solved = solve(requestFor(factsOf(60, 4), 12, 6));
    const at = (factor: number) =>
      recallAtClass(solved, { factor, firstShift: 0 }).reduce((a, b) => a + b, 0);
    expect(at(0.6)).toBeLessThan(at(1));
    expect(at(1)).toBeLessThan(at(1.6));
  });

  test('the course ends at the forecast, fills the minutes, and is lower when today is left out', () => {
    const solved = solve(requestFor(factsOf(90, 5), 12, 6));
    const kept = courseOf(solved, { skipToday: false });
    const skipped = courseOf(solved, { skipToday: true });
    expect(kept.recalled.at(-1)).toBeCloseTo(solved.outcome.flow.recalled / solved.problem.weight, 9);
    expect(skipped.recalled.at(-1)!).toBeLessThan(kept.recalled.at(-1)!);
    expect(skipped.seconds[0]).toBe(0);
    for (const seconds of kept.seconds) expect(seconds).toBeLessThan(360 * 1.1);
    expect(kept.days).toEqual([...Array(12).keys(), 12]);
  });

  test('it begins with what is recalled this morning', () => {
    const facts = factsOf(90, 6);
    const { recalled } = courseOf(solve(requestFor(facts, 12, 6)), { skipToday: false });
    const weight = facts.reduce((sum, fact) => sum + fact.weight, 0);
    const now = facts.reduce(
      (sum, { memory, weight: own }) =>
        sum + (memory ? own * recallAfter(m, TODAY - memory.lastDay, memory.stability) : 0),
      0,
    );
    expect(recalled[0]).toBeCloseTo(now / weight, 9);
  });
});

/** Answers of a learner whose every stability is `factor` times what is believed. */
function answersOf(factor: number, count: number, seed: number): Observation[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => {
    const days = random.int(1, 8);
    const stability = Math.exp(2.5 * random.unit() - 0.5);
    const right = random.unit() < 0.98 * recallAfter(m, days, factor * stability);
    return {
      day: TODAY - 1,
      before: { days, stability },
      recall: recallAfter(m, days, stability),
      guessRate: 0,
      right,
    };
  });
}

describe('P16: the range', () => {
  const request = requestFor(factsOf(90, 7), 10, 6);
  const solved = solve(request);
  const report = (observations: readonly Observation[]) => readinessOf(request, solved, observations);

  test('holds what is expected, lies within 0 and 1, and narrows as answers come in', () => {
    const widths = [0, 400, 4000].map((count) => {
      const { low, expected, high, kept } = report(answersOf(1, count, 3)).all;
      expect(0 <= low && low < expected && expected < high && high <= 1).toBe(true);
      expect(kept).toBeLessThan(expected);
      return high - low;
    });
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
  });

  test('answers of a learner who forgets twice as fast find the factor and lower the range', () => {
    const seeds = [1, 2, 3, 4, 5, 6, 7, 8];
    for (const factor of [0.5, 1, 1.8]) {
      const found = seeds.map((seed) => report(answersOf(factor, 1500, seed)).factor);
      const mean = found.reduce((sum, { likely }) => sum + Math.log(likely), 0) / found.length;
      expect(Math.abs(mean - Math.log(factor))).toBeLessThan(0.2);
      for (const { low, likely, high } of found) {
        expect(low < likely && likely < high).toBe(true);
        expect(high / low).toBeLessThan(1.7);
      }
    }
    const [fast, usual] = [0.5, 1].map((factor) => report(answersOf(factor, 1500, 1)).all.expected);
    expect(fast!).toBeLessThan(usual! - 0.02);
  });

  test('few answers move the factor little from 1', () => {
    const { likely } = report(answersOf(0.4, 6, 5)).factor;
    expect(likely).toBeGreaterThan(0.6);
    expect(likely).toBeLessThan(1.3);
  });

  test('by fact and by topic it adds up to the whole, and a topic of few facts is less sure', () => {
    const topics = request.facts.map((_, i) => (i < 6 ? 'few' : 'many'));
    const { all, facts, topics: found } = readinessOf(request, solved, [], topics);
    const [few, many] = [found.get('few')!, found.get('many')!];
    const weightOf = (from: number, to: number) =>
      request.facts.slice(from, to).reduce((sum, { weight }) => sum + weight, 0);
    const [light, heavy] = [weightOf(0, 6), weightOf(6, 90)];
    expect((few.expected * light + many.expected * heavy) / (light + heavy)).toBeCloseTo(all.expected, 9);
    const mean =
      facts.reduce((sum, { expected }, i) => sum + expected * request.facts[i]!.weight, 0) / (light + heavy);
    expect(mean).toBeCloseTo(all.expected, 9);
    expect(few.high - few.low).toBeGreaterThan(many.high - many.low);
    expect([...found.keys()]).toEqual(['few', 'many']);
  });

  test('on the class day it is what is recalled that day, with the luck of the day alone', () => {
    const facts = factsOf(90, 8);
    const late = requestFor(facts, 0, 6);
    const { all } = readinessOf(late, solve(late), answersOf(1, 4000, 6));
    expect(all.expected).toBeCloseTo(all.kept, 1);
    expect(all.high - all.low).toBeLessThan(0.2);
  });
});

describe('P17: the range is honest: it holds 85 to 95 of 100 learners whose numbers are unknown', () => {
  // 50 learners scatter by 4 in 100: the wider limits here; the whole table is docs/simulation.md.
  for (const [facts, minutes] of [
    [300, 10],
    [150, 10],
  ] as const)
    test(`${facts} facts, 7 days, ${minutes} minutes`, () => {
      const cell = aCell({ facts, days: 7, minutes, known: false });
      for (const { covered, bias } of coverageOf(cell, [0, 3, 6], 50)) {
        expect(covered).toBeGreaterThan(0.8);
        expect(covered).toBeLessThan(0.99);
        expect(Math.abs(bias)).toBeLessThan(0.02);
      }
    });
});

describe('P18: the ceiling', () => {
  const newFacts = (count: number): PlanFact[] =>
    Array.from({ length: count }, (_, i) => ({
      id: `fact-${i}`,
      weight: 1,
      rightSeconds: 12,
      wrongSeconds: 12,
      memory: null,
      firstRecall: 0.3,
    }));

  test('300 facts in 21 days: 5 minutes a day reach at most 77 percent, 10 minutes 94.6, 20 minutes 98.6', () => {
    // As found by another solver of the same problem (price steps by sign and size, recall rounded off by softmax).
    const found = ceilingsOf(requestFor(newFacts(300), 21, 10), [5, 10, 20]);
    expect(found.map(({ minutes }) => minutes)).toEqual([5, 10, 20]);
    for (const [i, value] of [0.771, 0.9458, 0.9861].entries())
      expect(found[i]!.atMost).toBeCloseTo(value, 2);
  });

  test('no forecast is over it, and more minutes never lower it', () => {
    const facts = factsOf(60, 9);
    const minutes = [3, 6, 15];
    const ceilings = ceilingsOf(requestFor(facts, 9, 6), minutes).map(({ atMost }) => atMost);
    for (const [i, each] of minutes.entries()) {
      const { forecast } = planToday(requestFor(facts, 9, each));
      expect(forecast).toBeLessThan(ceilings[i]! + 0.001);
      if (i > 0) expect(ceilings[i]!).toBeGreaterThan(ceilings[i - 1]!);
    }
  });

  test('without days or facts there is nothing to reach beyond what stays', () => {
    expect(ceilingsOf(requestFor([], 12, 6), [5])).toEqual([{ minutes: 5, atMost: 0 }]);
    const facts = factsOf(30, 10);
    const [late] = ceilingsOf(requestFor(facts, 0, 6), [5]);
    const { forecast } = planToday(requestFor(facts, 0, 6));
    expect(late!.atMost).toBeCloseTo(forecast, 9);
  });
});
