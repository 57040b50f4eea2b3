/** The most that so many minutes a day can reach by the class date: the bound, for a few choices of minutes. */

import { calendarOf, MOST_BOUND_DAYS } from './calendar.ts';
import { FINE } from './grid.ts';
import { solvePrices, tightenPrices } from './prices.ts';
import { boundAt, problemOf } from './problem.ts';
import { type PlanRequest, pricesOn } from './solve.ts';

export interface Ceiling {
  readonly minutes: number;
  /** No way of practising so long on each practice day recalls a larger share at class, by the memory model. */
  readonly atMost: number;
}

/** Evaluations for each width the bound is tightened at. */
const EVALUATIONS = 6;

/** For each number of minutes a day, on the request's practice days. Wishes of right days do not count here. */
export function ceilingsOf(request: PlanRequest, minutes: readonly number[]): Ceiling[] {
  const { w, today, classDay, practice } = request;
  const facts = request.facts.map(({ rightDays, ...fact }) => fact);
  const weight = facts.reduce((sum, fact) => sum + fact.weight, 0);
  let prices: ReadonlyMap<number, number> | null = null;
  return minutes.map((each): Ceiling => {
    const days = practice.map((day) => ({ ...day, seconds: each * 60 }));
    const calendar = calendarOf(days, today, classDay);
    if (facts.length === 0) return { minutes: each, atMost: 0 };
    const problem = problemOf(w, facts, calendar, today, FINE);
    const localDays = calendar.days.map((offset) => today + offset);
    const start = prices ? pricesOn(prices, localDays) : null;
    const solved = calendar.days.length > 0 ? solvePrices(problem, start) : new Float64Array(0);
    const tight = calendar.days.length > 0 ? tightenPrices(problem, solved, EVALUATIONS) : solved;
    prices = new Map(localDays.map((day, u) => [day, tight[u]!]));
    const whole = calendarOf(days, today, classDay, MOST_BOUND_DAYS);
    if (whole.days.length === calendar.days.length)
      return { minutes: each, atMost: boundAt(problem, tight, 0) / weight };
    const all = problemOf(w, facts, whole, today, FINE);
    const everyDay = pricesOn(
      prices,
      whole.days.map((offset) => today + offset),
    );
    return { minutes: each, atMost: boundAt(all, everyDay, 0) / weight };
  });
}
