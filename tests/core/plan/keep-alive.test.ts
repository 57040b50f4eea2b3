import { describe, expect, test } from 'vitest';
import { WEIGHTS } from '../../../src/core/memory/recall.ts';
import { keepAlive } from '../../../src/core/plan/keep-alive.ts';
import type { PlanFact } from '../../../src/core/plan/problem.ts';
import { after, recallAfter, transitionOf } from '../../../src/core/plan/transition.ts';
import { randomFrom } from '../../../src/core/random.ts';

const m = transitionOf(WEIGHTS);
const CLASS = 20_000;

const aFact = (i: number, changes: Partial<PlanFact> = {}): PlanFact => ({
  id: `fact-${i}`,
  weight: 1,
  rightSeconds: 12,
  wrongSeconds: 24,
  memory: { stability: 20, difficulty: 5, lastDay: CLASS - 1 - (i % 5) },
  firstRecall: 0.3,
  ...changes,
});

describe('P19: after class', () => {
  /** Practises for a year; `known` decides each answer. Gaps by fact, and mean recall at the end of each month. */
  function year(facts: PlanFact[], seconds: number, known: (recall: number) => boolean) {
    const gaps = new Map<string, number[]>();
    const months: number[] = [];
    let most = 0;
    for (let today = CLASS; today < CLASS + 360; today++) {
      const asked = keepAlive({ w: WEIGHTS, today, seconds, facts });
      most = Math.max(
        most,
        asked.reduce((sum, { seconds: each }) => sum + each, 0),
      );
      for (const { fact: id, recall } of asked) {
        const place = facts.findIndex((fact) => fact.id === id);
        const { memory } = facts[place]!;
        const right = known(recall);
        const next = memory
          ? after(m, memory, today - memory.lastDay, right)
          : right
            ? m.first.known
            : m.first.missed;
        if (memory) gaps.set(id, [...(gaps.get(id) ?? []), today - memory.lastDay]);
        facts = facts.with(place, { ...facts[place]!, memory: { ...next, lastDay: today } });
      }
      if ((today - CLASS) % 30 === 29)
        months.push(
          facts.reduce(
            (sum, { memory }) =>
              sum + (memory ? recallAfter(m, today + 1 - memory.lastDay, memory.stability) : 0),
            0,
          ) / facts.length,
        );
    }
    return { gaps, months, most };
  }

  test('while answers are right the gaps grow', () => {
    const { gaps } = year(
      [...Array(40).keys()].map((i) => aFact(i)),
      600,
      () => true,
    );
    expect(gaps.size).toBe(40);
    for (const own of gaps.values()) {
      expect(own.length).toBeGreaterThan(1);
      for (const [i, gap] of own.entries()) if (i > 0) expect(gap).toBeGreaterThan(own[i - 1]!);
    }
  });

  test('answers as they fall keep recall at 0.9 or more for a year, and within the seconds', () => {
    const random = randomFrom(3);
    const facts = [...Array(120).keys()].map((i) => aFact(i));
    const { months, most } = year(facts, 240, (recall) => random.unit() < recall);
    for (const recall of months) expect(recall).toBeGreaterThan(0.9);
    expect(most).toBeLessThanOrEqual(240);
  });

  test('nothing faded, nothing asked; of what faded the heavier and the weaker come first', () => {
    const today = CLASS + 10;
    const facts = [
      aFact(1, { memory: { stability: 200, difficulty: 5, lastDay: CLASS } }),
      aFact(2, { memory: { stability: 8, difficulty: 5, lastDay: CLASS } }),
      aFact(3, { memory: { stability: 2, difficulty: 5, lastDay: CLASS } }),
      aFact(4, { memory: { stability: 8, difficulty: 5, lastDay: CLASS }, weight: 3 }),
    ];
    const order = (seconds: number) =>
      keepAlive({ w: WEIGHTS, today, seconds, facts }).map(({ fact }) => fact);
    expect(order(600)).toEqual(['fact-4', 'fact-3', 'fact-2']);
    expect(order(30)).toEqual(['fact-4', 'fact-3']);
    expect(keepAlive({ w: WEIGHTS, today, seconds: 600, facts: facts.slice(0, 1) })).toEqual([]);
  });

  test('facts never asked are spread over two weeks, after what would be lost', () => {
    const facts = [...Array(28).keys()].map((i) => aFact(i, { memory: null }));
    const faded = aFact(99, { memory: { stability: 1, difficulty: 8, lastDay: CLASS - 9 } });
    const asked = keepAlive({ w: WEIGHTS, today: CLASS, seconds: 600, facts: [...facts, faded] });
    expect(asked.map(({ fact }) => fact)).toEqual(['fact-99', 'fact-0', 'fact-1']);
  });

  test('asked today, not again today', () => {
    const fact = aFact(1, { memory: { stability: 0.1, difficulty: 9, lastDay: CLASS } });
    expect(keepAlive({ w: WEIGHTS, today: CLASS, seconds: 600, facts: [fact] })).toEqual([]);
  });
});
