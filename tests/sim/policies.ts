/**
 * The policies compared. Each sees only the scheduler's beliefs (memories replayed with the parameters it
 * assumes) and gives an order to ask in; the day's seconds cut it off.
 */
import { UNSEEN_RECALL } from '../../src/core/memory/credit.ts';
import { everyDay } from '../../src/core/plan/calendar.ts';
import { planToday } from '../../src/core/plan/plan.ts';
import type { PlanRequest } from '../../src/core/plan/solve.ts';
import { after, type Memory, recallAfter, type Transition } from '../../src/core/plan/transition.ts';
import type { Cell } from './cells.ts';
import { chance } from './learner.ts';

export type Belief = (Memory & { readonly lastDay: number }) | null;

export interface View {
  readonly cell: Cell;
  readonly model: Transition;
  readonly day: number;
  readonly beliefs: readonly Belief[];
  readonly seed: number;
}

export interface Policy {
  readonly name: string;
  /** A fresh scheduler, which may remember between its days. */
  readonly start: () => (view: View) => readonly number[];
}

const recallOf = ({ model, day }: View, belief: Belief): number =>
  belief ? recallAfter(model, day - belief.lastDay, belief.stability) : UNSEEN_RECALL;

/** Places in rising order of a number, ties by place. */
function by(view: View, rank: (belief: Belief, place: number) => number): number[] {
  const ranks = view.beliefs.map(rank);
  return ranks.map((_, place) => place).sort((a, b) => ranks[a]! - ranks[b]! || a - b);
}

/** Due at recall 0.9: unseen facts first, then what is due, longest overdue first; spare time to lowest recall. */
const due: Policy = {
  name: 'due at 0.9, filled',
  start: () => (view) =>
    by(view, (belief) => {
      if (!belief) return -1e6;
      const overdue = view.day - belief.lastDay - belief.stability;
      return overdue >= 0 ? -overdue : 1e6 + recallOf(view, belief);
    }),
};

/** The same with due facts before unseen ones. */
const dueFirst: Policy = {
  name: 'due first, filled',
  start: () => (view) =>
    by(view, (belief) => {
      if (!belief) return 0;
      const overdue = view.day - belief.lastDay - belief.stability;
      return overdue >= 0 ? -1 - overdue : 1e6 + recallOf(view, belief);
    }),
};

const lowest: Policy = {
  name: 'lowest recall',
  start: () => (view) => by(view, (belief) => (belief ? recallOf(view, belief) : -1)),
};

const random: Policy = {
  name: 'random',
  start: () => (view) => by(view, (_, place) => chance(view.seed, 5000 + view.day, place)),
};

/** Largest gain in recall at class per second, as if it were the last ask. */
const greedy: Policy = {
  name: 'greedy gain',
  start: () => (view) => {
    const { model, cell, day } = view;
    const atClass = (memory: Memory) => recallAfter(model, cell.days - day, memory.stability);
    return by(view, (belief) => {
      const r = recallOf(view, belief);
      const gap = belief ? day - belief.lastDay : 0;
      const known = belief ? after(model, belief, gap, true) : model.first.known;
      const missed = belief ? after(model, belief, gap, false) : model.first.missed;
      const idle = belief ? recallAfter(model, cell.days - belief.lastDay, belief.stability) : 0;
      const seconds = cell.wrongSeconds + (cell.rightSeconds - cell.wrongSeconds) * r;
      return -(r * atClass(known) + (1 - r) * atClass(missed) - idle) / seconds;
    });
  },
};

/** What the planner is asked, from a view. */
export function requestOf(
  { cell, model, day, beliefs, seed }: View,
  attendance: number,
  prices: ReadonlyMap<number, number>,
): PlanRequest {
  return {
    w: model.w,
    today: day,
    classDay: cell.days,
    practice: everyDay(day, cell.days, cell.minutes * 60, attendance),
    facts: beliefs.map((memory, place) => ({
      id: String(place),
      weight: 1,
      rightSeconds: cell.rightSeconds,
      wrongSeconds: cell.wrongSeconds,
      memory,
      firstRecall: UNSEEN_RECALL,
    })),
    seed,
    prices,
  };
}

const planned = (name: string, attendanceOf: (cell: Cell) => number): Policy => ({
  name,
  start: () => {
    let prices: ReadonlyMap<number, number> = new Map();
    return (view) => {
      const plan = planToday(requestOf(view, attendanceOf(view.cell), prices));
      prices = plan.prices;
      return [...plan.facts, ...plan.reserve].map(({ fact }) => Number(fact));
    };
  },
});

export const ours = planned('ours', (cell) => cell.attendance);

/** The same, counting on every day to take place. */
export const oursUnaware = planned('ours, expecting every day', () => 1);

export const BASELINES: readonly Policy[] = [due, dueFirst, lowest, greedy, random];
