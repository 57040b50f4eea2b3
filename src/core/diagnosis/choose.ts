/**
 * Which test to make next. A test splits the suspects by what it would show. Two rules say how good a split is,
 * both for what it costs, with every suspect as likely as any other:
 * remaining: suspects struck out on average, for each point of cost. Expected remaining is the sum of k²/n.
 * entropy: information, log n - sum of k/n log k, for each point of cost.
 * Both are compared exactly, in whole numbers, so a tie is a tie. A test that is not settled for one of the
 * suspects is no test for them and is left out. Source: docs/sources.md [SPLIT].
 */
import type { Fault } from '../faults/fault.ts';
import { type Rational, rational } from '../rational.ts';
import type { Table } from './table.ts';
import { type CostOf, costOf, type Reading, type Test } from './test.ts';

export const RULES = ['remaining', 'entropy'] as const;
export type Rule = (typeof RULES)[number];

/** Suspects by what the test would show, in the order they come up; null when one of them is not settled. */
export function splitBy(
  table: Table,
  test: Test,
  suspects: readonly Fault[],
): ReadonlyMap<Reading, readonly Fault[]> | null {
  const branches = new Map<Reading, Fault[]>();
  for (const suspect of suspects) {
    const reading = table.reading(suspect, test);
    if (reading === null) return null;
    const branch = branches.get(reading);
    if (branch) branch.push(suspect);
    else branches.set(reading, [suspect]);
  }
  return branches;
}

export interface Choice {
  readonly test: Test;
  readonly cost: number;
  readonly branches: ReadonlyMap<Reading, readonly Fault[]>;
  /** Suspects left on average. */
  readonly remaining: Rational;
  /** Suspects left at worst. */
  readonly worst: number;
  /** Information in bits: for showing, never for comparing. */
  readonly bits: number;
}

const sizesOf = (branches: Choice['branches']) => [...branches.values()].map(({ length }) => length);

/** What a test would do to these suspects; null where it is not settled. */
export function weigh(
  table: Table,
  test: Test,
  suspects: readonly Fault[],
  cost: CostOf = costOf,
): Choice | null {
  const branches = splitBy(table, test, suspects);
  if (!branches) return null;
  const total = suspects.length;
  const sizes = sizesOf(branches);
  return {
    test,
    cost: cost(test),
    branches,
    remaining: rational(
      sizes.reduce((sum, size) => sum + size * size, 0),
      Math.max(total, 1),
    ),
    worst: Math.max(0, ...sizes),
    bits: sizes.reduce((sum, size) => sum + (size / total) * Math.log2(total / size), 0),
  };
}

/** 2 to the power of (suspects × bits), exactly: n^n over the product of k^k. */
function spread({ branches }: Choice): Rational {
  const sizes = sizesOf(branches).map(BigInt);
  const total = sizes.reduce((sum, size) => sum + size, 0n);
  return rational(
    total ** total,
    sizes.reduce((product, size) => product * size ** size, 1n),
  );
}

const power = ({ n, d }: Rational, exponent: number): Rational =>
  rational(n ** BigInt(exponent), d ** BigInt(exponent));

/** Below 0 where `a` is the better choice by the rule, 0 where they are as good. For the same suspects. */
export function compareChoices(a: Choice, b: Choice, rule: Rule): number {
  if (rule === 'remaining') {
    const struck = ({ branches, remaining }: Choice) =>
      rational(sizesOf(branches).reduce((sum, size) => sum + size, 0)).sub(remaining);
    return struck(b)
      .mul(BigInt(a.cost))
      .compare(struck(a).mul(BigInt(b.cost)));
  }
  return power(spread(b), a.cost).compare(power(spread(a), b.cost));
}

/** Every test that tells these suspects apart at all, the best first; those as good keep the table's order. */
export function rankTests(
  table: Table,
  suspects: readonly Fault[],
  rule: Rule,
  cost: CostOf = costOf,
): Choice[] {
  return table.tests
    .map((test) => weigh(table, test, suspects, cost))
    .filter((choice) => choice !== null && choice.branches.size > 1)
    .map((choice) => choice!)
    .sort((a, b) => compareChoices(a, b, rule));
}

/** The best next tests: one, or all that are as good. None when no test tells the suspects apart. */
export function bestTests(
  table: Table,
  suspects: readonly Fault[],
  rule: Rule,
  cost: CostOf = costOf,
): Choice[] {
  const ranked = rankTests(table, suspects, rule, cost);
  return ranked.filter((choice) => compareChoices(choice, ranked[0]!, rule) === 0);
}

/** Whether no test tells these suspects apart any more. */
export const isFound = (table: Table, suspects: readonly Fault[]): boolean =>
  table.tests.every((test) => (splitBy(table, test, suspects)?.size ?? 0) <= 1);
