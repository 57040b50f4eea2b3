/** The Lagrangian bound against the best there is, found by trying every policy on instances small enough. */
import { describe, expect, test } from 'vitest';
import { WEIGHTS } from '../../../src/core/memory/recall.ts';
import { FINE } from '../../../src/core/plan/grid.ts';
import { solvePrices, tightenPrices } from '../../../src/core/plan/prices.ts';
import { boundAt, type PlanFact, problemOf } from '../../../src/core/plan/problem.ts';
import { after, type Memory, recallAfter, transitionOf } from '../../../src/core/plan/transition.ts';

const m = transitionOf(WEIGHTS);
const SECONDS = 10;
type State = (Memory & { readonly lastDay: number }) | null;

/** Every set of at most `most` of the places. */
function choices(places: readonly number[], most: number): number[][] {
  if (places.length === 0 || most === 0) return [[]];
  const [head, ...tail] = places;
  return [...choices(tail, most), ...choices(tail, most - 1).map((rest) => [head!, ...rest])];
}

/** Expected facts recalled at class under the best of all policies, by exact search. */
function best(states: readonly State[], day: number, days: number, asks: number): number {
  if (day === days)
    return states.reduce(
      (sum, state) => sum + (state ? recallAfter(m, days - state.lastDay, state.stability) : 0),
      0,
    );
  let most = 0;
  for (const chosen of choices([...states.keys()], asks)) {
    let expected = 0;
    for (let outcome = 0; outcome < 2 ** chosen.length; outcome++) {
      let probability = 1;
      const next = [...states];
      for (const [bit, place] of chosen.entries()) {
        const state = states[place]!;
        const known = (outcome & (1 << bit)) !== 0;
        const gap = state ? day - state.lastDay : 0;
        const r = state ? recallAfter(m, gap, state.stability) : 0.3;
        const memory = state ? after(m, state, gap, known) : known ? m.first.known : m.first.missed;
        probability *= known ? r : 1 - r;
        next[place] = { ...memory, lastDay: day };
      }
      expected += probability * best(next, day + 1, days, asks);
    }
    most = Math.max(most, expected);
  }
  return most;
}

function boundOf(states: readonly State[], days: number, asks: number): number {
  const facts = states.map(
    (memory, i): PlanFact => ({
      id: String(i),
      weight: 1,
      rightSeconds: SECONDS,
      wrongSeconds: SECONDS,
      memory,
      firstRecall: 0.3,
    }),
  );
  const all = Array.from({ length: days }, (_, day) => day);
  const calendar = {
    days: all,
    attendance: all.map(() => 1),
    seconds: all.map(() => asks * SECONDS),
    classDay: days,
  };
  const problem = problemOf(WEIGHTS, facts, calendar, 0, FINE);
  return boundAt(problem, tightenPrices(problem, solvePrices(problem, null).prices, 40), 0);
}

const weak = { stability: 0.4, difficulty: 8, lastDay: -1 };
const firm = { stability: 6, difficulty: 3, lastDay: -4 };
/** The grid's own error, for a handful of facts. */
const GRID = 0.002;

describe('P4: no policy beats the bound, and the best comes close to it', () => {
  const cases: [string, State[], number, number, number][] = [
    ['2 new facts, 4 days, one ask a day', [null, null], 4, 1, 0.06],
    ['2 new facts, 5 days, one ask a day', [null, null], 5, 1, 0.06],
    ['3 new facts, 4 days, one ask a day', [null, null, null], 4, 1, 0.06],
    ['3 new facts, 5 days, one ask a day', [null, null, null], 5, 1, 0.06],
    ['3 new facts, 4 days, two asks a day', [null, null, null], 4, 2, 0.06],
    ['new, weak and firm, 5 days, one ask a day', [null, weak, firm], 5, 1, 0.06],
    ['weak and firm, 5 days, one ask a day', [weak, firm], 5, 1, 0.06],
  ];
  for (const [name, states, days, asks, gap] of cases)
    test(name, () => {
      const [bound, optimum] = [boundOf(states, days, asks), best(states, 0, days, asks)];
      expect(bound).toBeGreaterThan(optimum - GRID);
      expect(bound).toBeLessThan(optimum * (1 + gap));
    });

  test('with time for every fact on every day the facts do not compete, and the bound is the optimum', () => {
    for (const states of [
      [null, null],
      [null, weak],
      [weak, firm],
    ])
      expect(Math.abs(boundOf(states, 4, 2) - best(states, 0, 4, 2))).toBeLessThan(GRID);
  });
});
