/**
 * Runs one policy with one learner through the days. The score is mean true recall of all facts at class, those
 * never asked counting 0, less the luck of answers and missed days as the bound's value function sees it: each
 * piece of luck has mean 0 whatever the policy, so the mean is not moved, and the noise nearly goes.
 */
import { UNSEEN_RECALL } from '../../src/core/memory/credit.ts';
import { WEIGHTS } from '../../src/core/memory/recall.ts';
import type { Observation } from '../../src/core/plan/observe.ts';
import {
  after,
  type Memory,
  recallAfter,
  type Transition,
  transitionOf,
} from '../../src/core/plan/transition.ts';
import type { Bound } from './bound.ts';
import type { Cell } from './cells.ts';
import { chance, type Learner, sortOf } from './learner.ts';
import type { Belief, Policy, View } from './policies.ts';

export interface Score {
  /** Mean true recall at class, less luck. */
  readonly share: number;
  readonly luck: number;
}

/** Looks on while a course goes by. */
export interface Watch {
  /** Before the drill of a day that takes place. */
  readonly day?: (view: View) => void;
  /** After each answer: what the scheduler believed, and what came. */
  readonly answer?: (observation: Observation) => void;
  /** True recall of each fact on the class day. */
  readonly end?: (recalls: readonly number[]) => void;
}

const stepped = (m: Transition, belief: Belief, first: Memory, day: number, known: boolean): Memory =>
  belief ? after(m, belief, day - belief.lastDay, known) : first;

export function run(
  cell: Cell,
  learner: Learner,
  policy: Policy,
  bound: Bound,
  seed: number,
  watch: Watch = {},
): Score {
  const model = cell.known ? learner.truth : transitionOf(WEIGHTS);
  const beliefs: Belief[] = Array.from({ length: cell.facts }, () => null);
  const truths: Belief[] = [...beliefs];
  const scheduler = policy.start();
  let luck = 0;
  for (let day = 0; day < cell.days; day++) {
    const share = day === 0 ? 1 : cell.attendance;
    const takesPlace = chance(seed, 900_000, day) < share;
    if (share < 1) {
      let gain = bound.prices[day]! * cell.minutes * 60;
      for (const truth of truths) gain += bound.gainOfDay(day, truth);
      luck += ((takesPlace ? 1 : 0) - share) * gain;
    }
    if (!takesPlace) continue;
    let left = cell.minutes * 60;
    let full = false;
    const asked = new Set<number>();
    const view = { cell, model, day, beliefs, seed };
    watch.day?.(view);
    for (const fact of scheduler(view)) {
      if (asked.has(fact)) throw new Error(`${policy.name} asks fact ${fact} twice on day ${day}`);
      const truth = truths[fact]!;
      const recall = truth
        ? recallAfter(learner.truth, day - truth.lastDay, truth.stability)
        : learner.firstRecall;
      const expected = cell.wrongSeconds + (cell.rightSeconds - cell.wrongSeconds) * recall;
      // The last question of a day is begun with a chance that makes the seconds come out right on average.
      if (left < expected * (1 - 1e-9) && chance(seed, 800_000 + day, asked.size) >= left / expected) {
        full = true;
        break;
      }
      asked.add(fact);
      const sort = sortOf(learner, seed, fact);
      const known = chance(seed, fact, day) < recall;
      const seconds = known ? cell.rightSeconds : cell.wrongSeconds;
      left -= seconds;
      const ifKnown = stepped(learner.truth, truth, sort.known, day, true);
      const ifMissed = stepped(learner.truth, truth, sort.missed, day, false);
      const outcome = known ? ifKnown : ifMissed;
      const foreseen = truth
        ? recall * bound.valueAfter(day, ifKnown) + (1 - recall) * bound.valueAfter(day, ifMissed)
        : bound.valueOfFirst(day);
      luck += bound.valueAfter(day, outcome) - foreseen - bound.prices[day]! * (seconds - expected);
      truths[fact] = { ...outcome, lastDay: day };
      const belief = beliefs[fact]!;
      const before = belief && { days: day - belief.lastDay, stability: belief.stability };
      const foretold = before ? recallAfter(model, before.days, before.stability) : UNSEEN_RECALL;
      watch.answer?.({ day, before, recall: foretold, guessRate: 0, right: known });
      const first = known ? model.first.known : model.first.missed;
      beliefs[fact] = { ...stepped(model, belief, first, day, known), lastDay: day };
      full ||= left <= 0;
    }
    // A day that ran over its seconds is charged for them, one that fell short is paid: both at the bound's price.
    if (full) luck -= bound.prices[day]! * left;
  }
  const recalls = truths.map((truth) =>
    truth ? recallAfter(learner.truth, cell.days - truth.lastDay, truth.stability) : 0,
  );
  watch.end?.(recalls);
  const recalled = recalls.reduce((a, b) => a + b, 0);
  return { share: (recalled - luck) / cell.facts, luck: luck / cell.facts };
}
