/** How often the range of readiness holds what then comes: the share of facts recalled in a test on the class day. */
import { SLIP_RATE } from '../../src/core/memory/credit.ts';
import type { Observation } from '../../src/core/plan/observe.ts';
import { COVERAGE, readinessOf } from '../../src/core/plan/readiness.ts';
import { solve } from '../../src/core/plan/solve.ts';
import { NO_BOUND } from './bound.ts';
import type { Cell } from './cells.ts';
import { chance, expectedLearner, unknownLearner } from './learner.ts';
import { ours, requestOf } from './policies.ts';
import { run } from './world.ts';

export interface Coverage {
  readonly day: number;
  readonly learners: number;
  /** Share of the learners whose result lay in the range. */
  readonly covered: number;
  readonly above: number;
  readonly below: number;
  /** Mean width of the range, and mean of result less expected. */
  readonly width: number;
  readonly bias: number;
}

export const WANTED = COVERAGE;

/** Readiness asked on each of `days` of a course, before the drill, and what came of it. */
export function coverageOf(cell: Cell, days: readonly number[], learners: number): Coverage[] {
  const found = days.map(() => ({ covered: 0, above: 0, below: 0, width: 0, bias: 0 }));
  for (let seed = 1; seed <= learners; seed++) {
    const learner = cell.known ? expectedLearner() : unknownLearner(seed);
    const observations: Observation[] = [];
    const ranges: { expected: number; low: number; high: number }[] = [];
    let share = 0;
    run(cell, learner, ours, NO_BOUND, seed, {
      day: (view) => {
        if (!days.includes(view.day)) return;
        const request = requestOf(view, cell.attendance, new Map());
        ranges.push(readinessOf(request, solve(request), observations).all);
      },
      answer: (observation) => {
        const slipped = chance(seed, 50_000, observations.length) < SLIP_RATE;
        observations.push({ ...observation, right: observation.right && !slipped });
      },
      end: (recalls) => {
        share =
          recalls.filter((recall, fact) => chance(seed, 40_000 + fact, 1) < recall).length / recalls.length;
      },
    });
    for (const [i, { expected, low, high }] of ranges.entries()) {
      const tally = found[i]!;
      // A result is a whole number of facts: the range reaches to the whole numbers around it.
      const [least, most] = [Math.floor(low * cell.facts), Math.ceil(high * cell.facts)];
      const count = Math.round(share * cell.facts);
      if (count > most) tally.above++;
      else if (count < least) tally.below++;
      else tally.covered++;
      tally.width += high - low;
      tally.bias += share - expected;
    }
  }
  return days.map((day, i) => {
    const { covered, above, below, width, bias } = found[i]!;
    const mean = (value: number) => value / learners;
    return {
      day,
      learners,
      covered: mean(covered),
      above: mean(above),
      below: mean(below),
      width: mean(width),
      bias: mean(bias),
    };
  });
}
