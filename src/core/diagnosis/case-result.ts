/** What a case run came to: the effort beside the best there is, and the whole way explained. */
import type { Fault } from '../faults/fault.ts';
import { sameFault } from '../faults/fault.ts';
import { ONE, type Rational, rational, ZERO } from '../rational.ts';
import { CASE_START, type Case, type CaseState, suspectsLeft } from './case.ts';
import { bestTests, type Choice, isFound } from './choose.ts';
import { bestStrategy, pathOf, type Strategy } from './strategy.ts';
import { areAlike, contradictionsOf } from './table.ts';
import { type CostOf, costOf, type Observation, type Reading } from './test.ts';

export interface CaseScore {
  /** Whether what was named is the cause, or alike to it by every test of the case. */
  readonly found: boolean;
  /** Named while a test could still have struck suspects out. */
  readonly early: boolean;
  /** Observations that contradict what was named; the complaint counts. */
  readonly contradicted: readonly Observation[];
  readonly tests: number;
  readonly cost: number;
  /** Cost of the best strategy from the complaint: on average, at worst, and for this cause. */
  readonly best: { readonly average: Rational; readonly worst: Rational; readonly here: number };
  /** Best average over what was spent, at most 1; 0 where the cause was not found, null where it was named early. */
  readonly share: Rational | null;
}

export interface CaseStep extends Observation {
  readonly before: readonly Fault[];
  readonly struckOut: readonly Fault[];
  /** The tests that would have told most for their cost (rule "remaining"); none when nothing was left to tell. */
  readonly best: readonly Choice[];
}

const strategies = new WeakMap<Case, Record<'average' | 'worst', Strategy>>();

function strategiesOf(run: Case, cost: CostOf): Record<'average' | 'worst', Strategy> {
  const known = cost === costOf ? strategies.get(run) : undefined;
  if (known) return known;
  const made = {
    average: bestStrategy(run.table, run.suspects, 'average', cost)!,
    worst: bestStrategy(run.table, run.suspects, 'worst', cost)!,
  };
  if (cost === costOf) strategies.set(run, made);
  return made;
}

const costOfAll = (tests: readonly { readonly test: Observation['test'] }[], cost: CostOf) =>
  tests.reduce((sum, { test }) => sum + cost(test), 0);

/** Null while no cause is named. */
export function scoreCase(run: Case, state: CaseState, cost: CostOf = costOf): CaseScore | null {
  const { asked, named } = state;
  if (!named) return null;
  const { average, worst } = strategiesOf(run, cost);
  const here = pathOf(run.table, average, run.cause).map((test) => ({ test }));
  const spent = costOfAll(asked, cost);
  const early = !isFound(run.table, suspectsLeft(run, state));
  const found = sameFault(named, run.cause) || areAlike(run.table, named, run.cause);
  const share = average.cost.div(rational(Math.max(spent, 1)));
  return {
    found,
    early,
    contradicted: contradictionsOf(run.table, named, [...run.told, ...asked]),
    tests: asked.length,
    cost: spent,
    best: { average: average.cost, worst: worst.cost, here: costOfAll(here, cost) },
    share: !found ? ZERO : early ? null : share.gt(ONE) ? ONE : share,
  };
}

/** Each test that was asked, in order, with what it did to the suspects. */
export function stepsOf(run: Case, { asked }: CaseState, cost: CostOf = costOf): CaseStep[] {
  return asked.map((seen, index) => {
    const before = suspectsLeft(run, { ...CASE_START, asked: asked.slice(0, index) });
    const after = suspectsLeft(run, { ...CASE_START, asked: asked.slice(0, index + 1) });
    return {
      ...seen,
      before,
      struckOut: before.filter((suspect) => !after.includes(suspect)),
      best: bestTests(run.table, before, 'remaining', cost),
    };
  });
}

/** The best strategy's own way to this cause: the tests, what they show, and what they leave. */
export function bestWay(run: Case, cost: CostOf = costOf): CaseStep[] {
  const path = pathOf(run.table, strategiesOf(run, cost).average, run.cause);
  const asked = path.map((test) => ({ test, reading: run.table.reading(run.cause, test) as Reading }));
  return stepsOf(run, { asked, named: null }, cost);
}
