/**
 * The whole planning problem: facts in groups, one programme per kind, and what prices make of it. With a price
 * per second for every practice day the facts no longer compete, each is planned alone (Lagrangian relaxation):
 * sum of the facts' values + sum of price times seconds is then at least what any plan can reach.
 */
import type { FactId } from '../questions/question.ts';
import { type Grid, type GridSize, layGrid } from './grid.ts';
import { type Asks, asksOf, type Group, setOut, settle } from './groups.ts';
import { type Kinds, sortKinds } from './kinds.ts';
import {
  type Calendar,
  type Flow,
  lookBack,
  lookForward,
  noFlow,
  type Programme,
  programmeFor,
} from './programme.ts';
import { type Memory, transitionOf } from './transition.ts';

export interface PlanFact {
  readonly id: FactId;
  /** How many facts it counts as; positive. */
  readonly weight: number;
  /** Seconds a question about it takes when answered right and when wrong, result included. */
  readonly rightSeconds: number;
  readonly wrongSeconds: number;
  /** Null until first asked. */
  readonly memory: (Memory & { readonly lastDay: number }) | null;
  /** Chance of knowing it at the first ask. */
  readonly firstRecall: number;
  /** Separate days it must be right on before class (safety facts: 2), and has been since the last miss. */
  readonly rightDays?: { readonly wanted: number; readonly had: number };
}

export interface Problem {
  readonly grid: Grid;
  readonly calendar: Calendar;
  readonly programmes: readonly Programme[];
  readonly asks: Asks;
  /** Places of each group's facts in the list given. */
  readonly members: readonly (readonly number[])[];
  /** Sum of all weights. */
  readonly weight: number;
}

export interface Outcome {
  /** The Lagrangian at these prices, in facts times weight, bonuses included. */
  readonly bound: number;
  readonly flow: Flow;
  /** Chance that a fact of each group is asked before class. */
  readonly touched: Float64Array;
}

function groupsOf(facts: readonly PlanFact[], kinds: Kinds, today: number) {
  const groups: { group: Group; places: number[] }[] = [];
  const found = new Map<string, number>();
  for (const [place, fact] of facts.entries()) {
    const { memory, weight, rightDays } = fact;
    const elapsed = memory ? Math.max(0, today - memory.lastDay) : 0;
    const layer = Math.min(rightDays?.had ?? 0, rightDays?.wanted ?? 0);
    const state = memory ? [memory.stability, memory.difficulty, elapsed] : [fact.firstRecall];
    const { kind, part } = kinds.places[place]!;
    const key = [kind, layer, weight, fact.rightSeconds, fact.wrongSeconds, ...state].join(' ');
    const at = found.get(key);
    if (at !== undefined) {
      groups[at]!.places.push(place);
      continue;
    }
    found.set(key, groups.length);
    groups.push({
      places: [place],
      group: {
        kind,
        part,
        layer,
        weight,
        rightCost: fact.rightSeconds / weight,
        wrongCost: fact.wrongSeconds / weight,
        count: 0,
        memory,
        elapsed,
        firstRecall: fact.firstRecall,
      },
    });
  }
  return groups.map(({ group, places }) => ({ group: { ...group, count: places.length }, places }));
}

/** With `valuesOnly` it can be bounded (`boundAt`), not evaluated. */
export function problemOf(
  w: readonly number[],
  facts: readonly PlanFact[],
  calendar: Calendar,
  today: number,
  size: GridSize,
  valuesOnly = false,
): Problem {
  const kinds = sortKinds(facts);
  const grid = layGrid(transitionOf(w), Math.max(1, calendar.classDay), size);
  const grouped = groupsOf(facts, kinds, today);
  return {
    grid,
    calendar,
    programmes: kinds.kinds.map((kind) => programmeFor(grid, calendar, kind, valuesOnly)),
    asks: asksOf(
      grouped.map(({ group }) => group),
      grid,
      calendar.days,
      calendar.classDay,
    ),
    members: grouped.map(({ places }) => places),
    weight: facts.reduce((sum, fact) => sum + fact.weight, 0),
  };
}

/** Values at these prices, without looking forward: the bound alone. */
export function boundAt(problem: Problem, prices: Float64Array, width: number): number {
  const { programmes, asks, calendar } = problem;
  for (const programme of programmes) lookBack(programme, prices, width);
  settle(asks, programmes, prices, width);
  let bound = 0;
  for (const [g, { count, weight }] of asks.groups.entries()) bound += asks.value[g]! * count * weight;
  for (const [u, price] of prices.entries()) bound += price * calendar.seconds[u]! * calendar.attendance[u]!;
  return bound;
}

/** Values at these prices, and what the facts then do. */
export function evaluate(problem: Problem, prices: Float64Array, width: number): Outcome {
  const { programmes, asks } = problem;
  const bound = boundAt(problem, prices, width);
  const flow = noFlow(prices.length);
  const touched = new Float64Array(asks.groups.length);
  setOut(asks, programmes, flow, touched);
  for (const programme of programmes) lookForward(programme, flow);
  return { bound, flow, touched };
}
