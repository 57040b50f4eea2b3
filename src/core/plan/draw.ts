/**
 * Draws today's facts from the mixed plan. Many facts are exactly alike, so "the best so many" is not a plan:
 * near ties it would give a whole group nothing. Instead each group is asked with its chance under the plan;
 * today's price is shifted until exactly the day's seconds are expected, and systematic sampling keeps every
 * group's number within one of what is expected. docs/spec/plan.md P8, P9, P11.
 */
import type { Random } from '../random.ts';
import type { Problem } from './problem.ts';

export interface Drawn {
  /** Place in the list of facts. */
  readonly place: number;
  /** Expected seconds, and recall expected today. */
  readonly seconds: number;
  readonly recall: number;
  /** Facts at class that asking it today rather than later is worth per second, before today's price. */
  readonly worth: number;
}

export interface Draw {
  /** What to ask, most worth per second first. */
  readonly drawn: readonly Drawn[];
  /** What to go on with if answers were quicker than expected. */
  readonly reserve: readonly Drawn[];
  /** Today's price per second after the shift; 0 when there is more time than the plan wants. */
  readonly price: number;
}

/** The reserve holds this share of the day's seconds: a question that asks several facts spares later ones. */
const RESERVE = 1;

/**
 * The draw for the first calendar day, which must be today, after the problem was evaluated at `prices` and
 * `width`. Facts of a group are taken in the order of the list.
 */
export function drawToday(problem: Problem, prices: Float64Array, width: number, random: Random): Draw {
  const { asks, calendar, members } = problem;
  const days = calendar.days.length;
  const budget = calendar.seconds[0]!;
  const groups = asks.groups.map((group, g) => {
    const at = g * days;
    const recall = asks.recall[at]!;
    const cost = group.wrongCost + (group.rightCost - group.wrongCost) * recall;
    return { recall, cost, seconds: cost * group.weight, gain: asks.better[at]! + prices[0]! * cost };
  });
  const share = (gain: number) => Math.min(1, Math.max(0, (gain + width) / (2 * width)));
  const expected = (price: number) =>
    groups.reduce(
      (sum, { seconds, gain, cost }, g) =>
        sum +
        (gain === Number.NEGATIVE_INFINITY ? 0 : members[g]!.length * seconds * share(gain - price * cost)),
      0,
    );
  let price = 0;
  if (expected(0) > budget) {
    let [low, high] = [0, Math.max(prices[0]!, 1e-6)];
    while (expected(high) > budget) high *= 2;
    for (let step = 0; step < 50; step++) {
      price = (low + high) / 2;
      if (expected(price) > budget) low = price;
      else high = price;
    }
  }
  const order = groups
    .map((group, g) => ({ ...group, g }))
    .filter(({ gain }) => gain > Number.NEGATIVE_INFINITY)
    .sort((a, b) => a.recall - b.recall || a.g - b.g);
  const drawn: Drawn[] = [];
  const waiting: Drawn[] = [];
  let reached = random.unit();
  for (const { g, recall, seconds, gain, cost } of order) {
    const before = Math.floor(reached);
    reached += members[g]!.length * share(gain - price * cost);
    const count = Math.floor(reached + 1e-9) - before;
    for (const [i, place] of members[g]!.entries())
      (i < count ? drawn : waiting).push({ place, seconds, recall, worth: gain / cost });
  }
  const byWorth = (a: Drawn, b: Drawn) => b.worth - a.worth || a.place - b.place;
  let spare = budget * RESERVE;
  const reserve = waiting.sort(byWorth).filter(({ worth, seconds }) => {
    if (worth <= 0 || spare <= 0) return false;
    spare -= seconds;
    return true;
  });
  return { drawn: drawn.sort(byWorth), reserve, price };
}
