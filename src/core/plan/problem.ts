/**
 * The whole planning problem: facts in groups, one programme per kind, and what prices make of it. With a price
 * per second for every practice day the facts no longer compete, each is planned alone (Lagrangian relaxation):
 * sum of the facts' values + sum of price times seconds is then at least what any plan can reach.
 */
import type { FactId } from '../questions/question.ts';
import { type Grid, type GridSize, layGrid } from './grid.ts';
import { type Asks, asksOf, type Group, setOut, settle } from './groups.ts';
import {
  type Calendar,
  type Flow,
  type Kind,
  lookBack,
  lookForward,
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

/** Kinds of facts kept apart by cost per weight; costs of asks after the next are those of the kind. */
const MOST_KINDS = 4;

/** What right days are worth, in facts: enough to come before anything else, unless it cannot be done. */
export const RIGHT_DAYS_BONUS = 2;

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

const costOf = (fact: PlanFact) => (0.75 * fact.rightSeconds + 0.25 * fact.wrongSeconds) / fact.weight;

/** Sorts facts into kinds: exactly by cost while there are few costs, else into equal steps of its logarithm. */
function kindsOf(facts: readonly PlanFact[]): { kinds: Kind[]; kindOf: Int32Array } {
  const costs = facts.map(costOf);
  const distinct = [...new Set(costs)].sort((a, b) => a - b);
  const low = Math.log(distinct[0] ?? 1);
  const span = Math.log(distinct.at(-1) ?? 1) - low;
  const bucketOf = (cost: number) =>
    distinct.length <= MOST_KINDS
      ? distinct.indexOf(cost)
      : Math.min(MOST_KINDS - 1, Math.floor(((Math.log(cost) - low) / span) * MOST_KINDS));
  const places = new Map<string, number[]>();
  for (const [place, fact] of facts.entries()) {
    const key = `${bucketOf(costs[place]!)}/${fact.rightDays?.wanted ?? 0}`;
    const own = places.get(key);
    if (own) own.push(place);
    else places.set(key, [place]);
  }
  const kindOf = new Int32Array(facts.length);
  const kinds = [...places.values()].map((own, kind): Kind => {
    const mean = (value: (fact: PlanFact) => number) =>
      own.reduce((sum, place) => sum + value(facts[place]!) / facts[place]!.weight, 0) / own.length;
    for (const place of own) kindOf[place] = kind;
    const rightDays = facts[own[0]!]!.rightDays?.wanted ?? 0;
    return {
      rightCost: mean((fact) => fact.rightSeconds),
      wrongCost: mean((fact) => fact.wrongSeconds),
      rightDays,
      bonus: rightDays > 0 ? RIGHT_DAYS_BONUS : 0,
    };
  });
  return { kinds, kindOf };
}

function groupsOf(facts: readonly PlanFact[], kindOf: Int32Array, today: number) {
  const groups: { group: Group; places: number[] }[] = [];
  const found = new Map<string, number>();
  for (const [place, fact] of facts.entries()) {
    const { memory, weight, rightDays } = fact;
    const elapsed = memory ? Math.max(0, today - memory.lastDay) : 0;
    const layer = Math.min(rightDays?.had ?? 0, rightDays?.wanted ?? 0);
    const state = memory ? [memory.stability, memory.difficulty, elapsed] : [fact.firstRecall];
    const key = [kindOf[place], layer, weight, fact.rightSeconds, fact.wrongSeconds, ...state].join(' ');
    const at = found.get(key);
    if (at !== undefined) {
      groups[at]!.places.push(place);
      continue;
    }
    found.set(key, groups.length);
    groups.push({
      places: [place],
      group: {
        kind: kindOf[place]!,
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

export function problemOf(
  w: readonly number[],
  facts: readonly PlanFact[],
  calendar: Calendar,
  today: number,
  size: GridSize,
): Problem {
  const { kinds, kindOf } = kindsOf(facts);
  const grid = layGrid(transitionOf(w), Math.max(1, calendar.classDay), size);
  const grouped = groupsOf(facts, kindOf, today);
  return {
    grid,
    calendar,
    programmes: kinds.map((kind) => programmeFor(grid, calendar, kind)),
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
  const flow: Flow = { seconds: new Float64Array(prices.length), recalled: 0, bonus: 0, spread: 0 };
  const touched = new Float64Array(asks.groups.length);
  setOut(asks, programmes, flow, touched);
  for (const programme of programmes) lookForward(programme, flow);
  return { bound, flow, touched };
}
