/**
 * The most that practice can reach by the class date, whoever plans it. Any prices give such a bound; those found
 * for the plan give one that is nearly reached. docs/spec/plan.md P4.
 */

import { calendarOf, MOST_BOUND_DAYS } from './calendar.ts';
import { FINE, PLANNING } from './grid.ts';
import { PATIENT, solvePrices, tightenPrices } from './prices.ts';
import { boundAt, problemOf } from './problem.ts';
import { type PlanRequest, pricesOn } from './solve.ts';

export interface Ceiling {
  readonly minutes: number;
  /** No way of practising so long on each practice day recalls a larger share at class, by the memory model. */
  readonly atMost: number;
}

/** Evaluations for each width that prices are tightened at. */
const EVALUATIONS = 5;

interface Bounded {
  readonly atMost: number;
  readonly prices: ReadonlyMap<number, number>;
}

function bounded(request: PlanRequest): Bounded {
  const { w, today, classDay, practice, prices } = request;
  // A wish for right days is no recall: what it is worth must not count.
  const facts = request.facts.map(({ rightDays, ...fact }) => fact);
  const weight = facts.reduce((sum, fact) => sum + fact.weight, 0);
  if (weight === 0) return { atMost: 0, prices: new Map() };
  const localDays = ({ days }: { days: readonly number[] }) => days.map((offset) => today + offset);
  const calendar = calendarOf(practice, today, classDay);
  const days = localDays(calendar);
  let found = prices ?? new Map<number, number>();
  if (days.length > 0) {
    const problem = problemOf(w, facts, calendar, today, PLANNING);
    const start = found.size > 0 ? pricesOn(found, days) : null;
    const tight = tightenPrices(problem, solvePrices(problem, start, PATIENT).prices, EVALUATIONS);
    found = new Map(days.map((day, u) => [day, tight[u]!]));
  }
  const whole = calendarOf(practice, today, classDay, MOST_BOUND_DAYS);
  const all = problemOf(w, facts, whole, today, FINE, true);
  const everyDay = days.length > 0 ? pricesOn(found, localDays(whole)) : new Float64Array(0);
  return { atMost: Math.min(1, boundAt(all, everyDay, 0) / weight), prices: found };
}

/** Share of the weight that no way of practising on the request's days exceeds at class. */
export const boundOf = (request: PlanRequest): number => bounded(request).atMost;

/** The same for other numbers of minutes a day, each found from the prices of the one before. */
export function ceilingsOf(request: PlanRequest, minutes: readonly number[]): Ceiling[] {
  let { prices } = request;
  return minutes.map((each): Ceiling => {
    const practice = request.practice.map((day) => ({ ...day, seconds: each * 60 }));
    const found = bounded({ ...request, practice, ...(prices && { prices }) });
    prices = found.prices;
    return { minutes: each, atMost: found.atMost };
  });
}
