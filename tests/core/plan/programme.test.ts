import { describe, expect, test } from 'vitest';
import { WEIGHTS } from '../../../src/core/memory/recall.ts';
import { FINE, PLANNING } from '../../../src/core/plan/grid.ts';
import { boundAt, evaluate, type PlanFact, problemOf } from '../../../src/core/plan/problem.ts';
import type { Calendar } from '../../../src/core/plan/programme.ts';
import { after, type Memory, recallAfter, transitionOf } from '../../../src/core/plan/transition.ts';
import { randomFrom } from '../../../src/core/random.ts';

const m = transitionOf(WEIGHTS);

const aFact = (changes: Partial<PlanFact> = {}): PlanFact => ({
  id: 'a',
  weight: 1,
  rightSeconds: 10,
  wrongSeconds: 20,
  memory: null,
  firstRecall: 0.3,
  ...changes,
});

const calendarOf = (days: number[], attendance: number, classDay: number): Calendar => ({
  days,
  attendance: days.map(() => attendance),
  seconds: days.map(() => 60),
  classDay,
});

/** Worth of a fact by plain recursion over every decision and outcome, on exact states. */
function exactWorth(fact: PlanFact, calendar: Calendar, prices: Float64Array): number {
  const { days, attendance, classDay } = calendar;
  const worth = (u: number, memory: Memory | null, last: number): number => {
    if (u === days.length) return memory ? recallAfter(m, classDay - last, memory.stability) : 0;
    const wait = worth(u + 1, memory, last);
    const gap = days[u]! - last;
    if (memory && gap < 1) return wait;
    const r = memory ? recallAfter(m, gap, memory.stability) : fact.firstRecall;
    const known = memory ? after(m, memory, gap, true) : m.first.known;
    const missed = memory ? after(m, memory, gap, false) : m.first.missed;
    const ask =
      r * worth(u + 1, known, days[u]!) +
      (1 - r) * worth(u + 1, missed, days[u]!) -
      prices[u]! * (fact.rightSeconds * r + fact.wrongSeconds * (1 - r));
    return attendance[u]! * Math.max(ask, wait) + (1 - attendance[u]!) * wait;
  };
  return worth(0, fact.memory, fact.memory?.lastDay ?? 0);
}

describe('P2: a fact alone is planned as a search of every decision and outcome plans it', () => {
  const cases: [string, PlanFact, number[], number, number, number][] = [
    ['never asked, free', aFact(), [0, 1, 2, 3, 4], 1, 5, 0],
    ['never asked, dear', aFact(), [0, 1, 2, 3, 4], 1, 5, 0.006],
    ['never asked, days apart', aFact(), [0, 2, 7, 9, 14, 20], 1, 21, 0.003],
    ['half the days take place', aFact(), [0, 1, 3, 6, 9], 0.5, 12, 0.002],
    [
      'well known',
      aFact({ memory: { stability: 9, difficulty: 4, lastDay: -3 } }),
      [0, 1, 2, 5, 8],
      1,
      12,
      0.002,
    ],
    [
      'missed before',
      aFact({ memory: { stability: 0.3, difficulty: 9, lastDay: -1 } }),
      [0, 1, 2, 3, 4, 5],
      0.9,
      7,
      0.001,
    ],
    ['asked today', aFact({ memory: { stability: 2, difficulty: 5, lastDay: 0 } }), [0, 1, 2], 1, 3, 0],
  ];
  for (const [name, fact, days, attendance, classDay, price] of cases)
    test(name, () => {
      const calendar = calendarOf(days, attendance, classDay);
      const prices = new Float64Array(days.length).fill(price);
      const problem = problemOf(WEIGHTS, [fact], calendar, 0, FINE);
      boundAt(problem, prices, 0);
      expect(problem.asks.value[0]!).toBeCloseTo(exactWorth(fact, calendar, prices), 3);
    });
});

/** A mixed set of facts, with prices at which some days are used and some are not. */
function aProblem(seed: number) {
  const random = randomFrom(seed);
  const facts = Array.from({ length: 12 }, (_, i) =>
    aFact({
      id: String(i),
      weight: random.pick([1, 1, 2]),
      rightSeconds: random.pick([8, 12]),
      ...(i % 3 === 0 ? { rightDays: { wanted: 2, had: i % 2 } } : {}),
      memory:
        i % 4 === 0
          ? null
          : { stability: Math.exp(4 * random.unit() - 1), difficulty: 1 + 9 * random.unit(), lastDay: -i },
    }),
  );
  const calendar = calendarOf([0, 1, 2, 4, 5, 8, 9, 11], 0.8, 13);
  const prices = Float64Array.from(calendar.days, () => 0.004 * random.unit());
  return { problem: problemOf(WEIGHTS, facts, calendar, 0, PLANNING), prices, calendar };
}

test('P2: values looked back equal what is recalled, less what is paid, looked forward', () => {
  for (let seed = 1; seed <= 20; seed++) {
    const { problem, prices, calendar } = aProblem(seed);
    const { bound, flow } = evaluate(problem, prices, 0);
    const paid = prices.reduce(
      (sum, price, u) => sum + price * calendar.attendance[u]! * (flow.seconds[u]! - calendar.seconds[u]!),
      0,
    );
    expect(flow.recalled + flow.bonus - paid).toBeCloseTo(bound, 6);
  }
});

test('P3: the bound falls with a price by the seconds left over on that day', () => {
  for (let seed = 1; seed <= 8; seed++) {
    const { problem, prices, calendar } = aProblem(seed);
    const width = 0.01;
    const { flow } = evaluate(problem, prices, width);
    for (const u of prices.keys()) {
      const step = 1e-6;
      const shifted = (by: number) =>
        boundAt(
          problem,
          prices.map((x, v) => x + (u === v ? by : 0)),
          width,
        );
      const slope = (shifted(step) - shifted(-step)) / (2 * step);
      expect(slope).toBeCloseTo(calendar.attendance[u]! * (calendar.seconds[u]! - flow.seconds[u]!), 2);
    }
  }
});

test('P3: rounding off decisions moves the bound up, by no more than a quarter width a decision', () => {
  for (let seed = 1; seed <= 8; seed++) {
    const { problem, prices } = aProblem(seed);
    const exact = boundAt(problem, prices, 0);
    const rounded = boundAt(problem, prices, 0.002);
    expect(rounded).toBeGreaterThanOrEqual(exact - 1e-9);
    expect(rounded - exact).toBeLessThan(problem.weight * 8 * 0.0005);
  }
});

test('P3: the planning grid is within 0.001 a fact of the fine one', () => {
  for (let seed = 1; seed <= 5; seed++) {
    const random = randomFrom(seed);
    const facts = Array.from({ length: 40 }, (_, i) =>
      aFact({
        id: String(i),
        memory:
          i % 2
            ? null
            : { stability: Math.exp(4 * random.unit() - 1), difficulty: 1 + 9 * random.unit(), lastDay: -i },
      }),
    );
    const calendar = calendarOf(
      Array.from({ length: 21 }, (_, day) => day),
      1,
      21,
    );
    const prices = new Float64Array(21).fill(0.002);
    const [coarse, fine] = [PLANNING, FINE].map((size) =>
      boundAt(problemOf(WEIGHTS, facts, calendar, 0, size), prices, 0),
    );
    expect(Math.abs(coarse! - fine!) / facts.length).toBeLessThan(0.001);
  }
});
