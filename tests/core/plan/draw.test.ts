import { describe, expect, test } from 'vitest';
import { WEIGHTS } from '../../../src/core/memory/recall.ts';
import { everyDay } from '../../../src/core/plan/calendar.ts';
import { drawToday } from '../../../src/core/plan/draw.ts';
import type { PlanFact } from '../../../src/core/plan/problem.ts';
import { solve } from '../../../src/core/plan/solve.ts';
import { randomFrom } from '../../../src/core/random.ts';

const SORTS = 3;
const EACH = 40;

/** Facts in three groups that differ by next to nothing. */
const facts = Array.from(
  { length: SORTS * EACH },
  (_, i): PlanFact => ({
    id: `fact-${i}`,
    weight: 1,
    rightSeconds: 12,
    wrongSeconds: 12,
    memory: null,
    firstRecall: 0.3 + 1e-5 * (i % SORTS),
  }),
);
const solved = solve({
  w: WEIGHTS,
  today: 0,
  classDay: 7,
  practice: everyDay(0, 7, 300),
  facts,
  seed: 1,
});
const draws = Array.from({ length: 300 }, (_, seed) =>
  drawToday(solved.problem, solved.prices, solved.width, randomFrom(seed)),
);
const counts = (sort: number) =>
  draws.map(({ drawn }) => drawn.filter(({ place }) => place % SORTS === sort).length);
const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

describe('P11: of groups nearly alike none goes without', () => {
  test('each has its share of the 25 asks there is time for', () => {
    for (let sort = 0; sort < SORTS; sort++) {
      expect(mean(counts(sort))).toBeGreaterThan(25 / SORTS - 1);
      expect(mean(counts(sort))).toBeLessThan(25 / SORTS + 1);
    }
  });

  test('in every draw the number from a group is within one of what is expected, and the day is full', () => {
    for (let sort = 0; sort < SORTS; sort++) {
      const expected = mean(counts(sort));
      for (const count of counts(sort)) expect(Math.abs(count - expected)).toBeLessThan(1 + 1e-9);
    }
    for (const { drawn } of draws) expect(drawn.length).toBe(25);
  });

  test('chance decides where an expected number is no whole one', () => {
    expect(new Set(counts(0)).size).toBe(2);
  });
});
