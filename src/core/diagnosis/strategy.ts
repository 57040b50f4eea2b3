/**
 * The best that can be done: the strategy that finds the cause for the least effort, on average or at worst, by
 * trying all of them. The best next test (choose.ts) looks one test ahead; this looks to the end. It stops when
 * no test of the table tells the suspects that are left apart. Dynamic programme over sets of suspects, cut short
 * where a test already costs as much as the best one found.
 */
import type { Fault } from '../faults/fault.ts';
import { faultId } from '../faults/fault.ts';
import { type Rational, rational } from '../rational.ts';
import type { Table } from './table.ts';
import { type CostOf, costOf, type Reading, type Test } from './test.ts';

/** More suspects than this are not tried: the sets they make are too many. */
export const MOST_SUSPECTS = 24;

export const AIMS = ['average', 'worst'] as const;
/** Least cost on average over the suspects, each as likely; or least cost for the unluckiest of them. */
export type Aim = (typeof AIMS)[number];

export interface Strategy {
  /** Points of cost, on average or at worst. */
  readonly cost: Rational;
  /** What to do first; null when nothing more can be told apart. */
  readonly first: Step | null;
}

export interface Step {
  readonly test: Test;
  /** What to do after each reading. */
  readonly after: ReadonlyMap<Reading, Step | null>;
}

/** A test as sets of suspects, one bit for each. */
interface Split {
  readonly test: Test;
  readonly cost: number;
  readonly branches: readonly (readonly [Reading, number])[];
  /** Suspects it is not settled for. */
  readonly unsettled: number;
}

const countOf = (set: number): number => {
  let count = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) count++;
  return count;
};

/** Tests as splits; of those that split alike only the cheapest. */
function splitsOf(table: Table, suspects: readonly Fault[], cost: CostOf): Split[] {
  const cheapest = new Map<string, Split>();
  for (const test of table.tests) {
    const branches = new Map<Reading, number>();
    let unsettled = 0;
    suspects.forEach((suspect, bit) => {
      const reading = table.reading(suspect, test);
      if (reading === null) unsettled |= 1 << bit;
      else branches.set(reading, (branches.get(reading) ?? 0) | (1 << bit));
    });
    const sets = [...branches.values()].sort((a, b) => a - b);
    const key = `${sets} ${unsettled}`;
    const known = cheapest.get(key);
    if (sets.length > 0 && (!known || cost(test) < known.cost))
      cheapest.set(key, { test, cost: cost(test), branches: [...branches], unsettled });
  }
  return [...cheapest.values()].sort((a, b) => a.cost - b.cost);
}

interface Best {
  /** Sum over the suspects, or the most of any of them. */
  readonly cost: number;
  readonly split: Split | null;
}

class Search {
  private readonly known = new Map<number, Best>();

  constructor(
    private readonly splits: readonly Split[],
    private readonly aim: Aim,
  ) {}

  /** The best for a set of suspects. */
  best(set: number): Best {
    const known = this.known.get(set);
    if (known) return known;
    let best: Best | null = null;
    for (const split of this.splits) {
      if ((split.unsettled & set) !== 0) continue;
      const parts = split.branches.map(([, branch]) => branch & set).filter((part) => part !== 0);
      if (parts.length < 2) continue;
      const most = best?.cost ?? Number.POSITIVE_INFINITY;
      const cost = this.costOf(split, set, parts, most);
      if (cost < most) best = { cost, split };
    }
    const found = best ?? { cost: 0, split: null };
    this.known.set(set, found);
    return found;
  }

  /** Cost of beginning with this split; anything from `most` on may be said too small. */
  private costOf(split: Split, set: number, parts: readonly number[], most: number): number {
    let cost = this.aim === 'average' ? split.cost * countOf(set) : 0;
    for (const part of parts) {
      if ((this.aim === 'average' ? cost : split.cost + cost) >= most) return most;
      const rest = countOf(part) === 1 ? 0 : this.best(part).cost;
      cost = this.aim === 'average' ? cost + rest : Math.max(cost, rest);
    }
    return this.aim === 'average' ? cost : split.cost + cost;
  }

  step(set: number): Step | null {
    const { split } = countOf(set) === 1 ? { split: null } : this.best(set);
    if (!split) return null;
    const after = split.branches.flatMap(([reading, branch]): [Reading, Step | null][] =>
      (branch & set) === 0 ? [] : [[reading, this.step(branch & set)]],
    );
    return { test: split.test, after: new Map(after) };
  }
}

/** The best strategy for these suspects; null when there are more than can be tried. */
export function bestStrategy(
  table: Table,
  suspects: readonly Fault[],
  aim: Aim,
  cost: CostOf = costOf,
): Strategy | null {
  if (suspects.length === 0 || suspects.length > MOST_SUSPECTS) return null;
  const search = new Search(splitsOf(table, suspects, cost), aim);
  const all = 2 ** suspects.length - 1;
  const total = suspects.length === 1 ? 0 : search.best(all).cost;
  return {
    cost: aim === 'average' ? rational(total, suspects.length) : rational(total),
    first: search.step(all),
  };
}

/** The tests a strategy makes if this suspect is the cause, in order. */
export function pathOf(table: Table, { first }: Strategy, cause: Fault): Test[] {
  const path: Test[] = [];
  let step = first;
  while (step) {
    path.push(step.test);
    const reading = table.reading(cause, step.test);
    if (reading === null) throw new Error(`"${faultId(cause)}" is not among the strategy's suspects`);
    step = step.after.get(reading) ?? null;
  }
  return path;
}
