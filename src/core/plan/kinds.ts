/**
 * Facts sorted by what an ask costs per unit of weight, since each cost needs a programme of its own. Few costs
 * are kept exactly. Of many, only some steps have programmes, and a fact between two steps counts as a blend of
 * both: worth is convex in cost, so the blend is never too low, and its error is of second order in the step.
 */
import type { PlanFact } from './problem.ts';
import type { Kind } from './programme.ts';

/** Programmes at most, and the least step between them, in the logarithm of cost. */
const MOST_STEPS = 7;
/** The same for facts with right days, whose programmes are as many times larger. */
const MOST_LAYERED_STEPS = 3;
const LEAST_STEP = 0.45;

/**
 * What right days are worth, in facts recalled: one more. Where there is time they are then reached nearly always;
 * where there is not, a higher price would leave most other facts unasked (docs/spec/plan.md P13).
 */
export const RIGHT_DAYS_BONUS = 1;

/** Between a kind and the next one, `part` of the way. */
export interface KindPlace {
  readonly kind: number;
  readonly part: number;
}

export interface Kinds {
  readonly kinds: readonly Kind[];
  /** For each fact. */
  readonly places: readonly KindPlace[];
}

const wantedOf = (fact: PlanFact) => fact.rightDays?.wanted ?? 0;
const costOf = (fact: PlanFact) => (0.75 * fact.rightSeconds + 0.25 * fact.wrongSeconds) / fact.weight;

/** Costs that get a programme: all of them, or even steps of their logarithm. */
function stepsOf(costs: readonly number[], most: number): number[] {
  const distinct = [...new Set(costs)].sort((a, b) => a - b);
  if (distinct.length <= most) return distinct;
  const [low, high] = [distinct[0]!, distinct.at(-1)!];
  const gaps = Math.min(most - 1, Math.max(1, Math.ceil(Math.log(high / low) / LEAST_STEP)));
  return Array.from({ length: gaps + 1 }, (_, i) => (i === gaps ? high : low * (high / low) ** (i / gaps)));
}

export function sortKinds(facts: readonly PlanFact[]): Kinds {
  const kinds: Kind[] = [];
  const places: KindPlace[] = facts.map(() => ({ kind: 0, part: 0 }));
  for (const wanted of new Set(facts.map(wantedOf))) {
    const own = [...facts.keys()].filter((place) => wantedOf(facts[place]!) === wanted);
    const most = wanted > 0 ? MOST_LAYERED_STEPS : MOST_STEPS;
    const steps = stepsOf(
      own.map((place) => costOf(facts[place]!)),
      most,
    );
    const first = kinds.length;
    // How much longer a wrong answer takes is taken as alike for all, but where each cost is kept exactly.
    const ratioOf = (of: readonly number[]) => {
      const sum = (seconds: (fact: PlanFact) => number) =>
        of.reduce((total, place) => total + seconds(facts[place]!), 0);
      return sum((fact) => fact.wrongSeconds) / sum((fact) => fact.rightSeconds);
    };
    for (const step of steps) {
      const exact = own.filter((place) => costOf(facts[place]!) === step);
      const ratio = ratioOf(exact.length > 0 ? exact : own);
      const rightCost = step / (0.75 + 0.25 * ratio);
      const bonus = wanted > 0 ? RIGHT_DAYS_BONUS : 0;
      kinds.push({ rightCost, wrongCost: rightCost * ratio, rightDays: wanted, bonus });
    }
    for (const place of own) {
      const cost = costOf(facts[place]!);
      let at = steps.findLastIndex((step) => step <= cost);
      at = Math.max(0, at);
      const [low, high] = [steps[at]!, steps[at + 1]];
      const part = high === undefined ? 0 : (cost - low) / (high - low);
      places[place] = { kind: first + at, part };
    }
  }
  return { kinds, places };
}
