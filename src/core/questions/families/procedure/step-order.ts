/** Put steps in order. Only steps that have one order: each must come before the next, directly or not. */
import type { Random } from '../../../random.ts';
import { beforeOf } from '../../../sequence/precedence.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { Answer, FactId, Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import {
  beforeFact,
  pathBetween,
  pathReasons,
  rawBefore,
  stepRef,
  stepText,
  stripWorks,
  type Work,
  workName,
} from './work-parts.ts';

/** Four in order are guessed once in 24. */
const SIZE = 4;
const MOST = 5;

interface Asked {
  readonly work: Work;
  readonly step: string;
}

const factOf = ({ work, step }: Asked): FactId => beforeFact(work, step);

/** How many askable steps the longest chain has that ends here, or that starts here. */
function reach(work: Work, steps: readonly string[]) {
  const [ending, starting] = [new Map<string, number>(), new Map<string, number>()];
  const earlier = (id: string) => steps.filter((other) => beforeOf(work.known, id).has(other));
  const later = (id: string) => steps.filter((other) => beforeOf(work.known, other).has(id));
  const measure = (id: string, met: Map<string, number>, next: (id: string) => string[]): number => {
    const length = met.get(id) ?? 1 + Math.max(0, ...next(id).map((other) => measure(other, met, next)));
    met.set(id, length);
    return length;
  };
  return (id: string) => ({
    ending: measure(id, ending, earlier),
    starting: measure(id, starting, later),
  });
}

const askable = perUnit((unit: Unit): Asked[] =>
  stripWorks(unit).flatMap((work) => {
    const steps = work.askable;
    const reachOf = reach(work, steps);
    return steps
      .filter((step) => {
        const { ending, starting } = reachOf(step);
        return ending > 1 && ending + starting - 1 >= SIZE;
      })
      .map((step) => ({ work, step }));
  }),
);

/** Steps between two neighbours of a chain that are passed over, at most: what lies far apart is no question. */
const MOST_BETWEEN = 2;

/** A chain with the step in it and something before it, grown from neighbour to neighbour. */
function drawChain({ work, step }: Asked, steps: readonly string[], size: number, random: Random): string[] {
  const precedes = (a: string, b: string) => beforeOf(work.known, b).has(a);
  const near = (a: string, b: string) =>
    precedes(a, b) && steps.filter((id) => precedes(a, id) && precedes(id, b)).length <= MOST_BETWEEN;
  const below = (id: string) => steps.filter((other) => near(other, id));
  const above = (id: string) => steps.filter((other) => near(id, other));
  const chain = [random.pick(below(step)), step];
  while (chain.length < size) {
    const [before, after] = [below(chain[0]!), above(chain.at(-1)!)];
    if (before.length + after.length === 0) break;
    const downward = after.length === 0 || (before.length > 0 && random.unit() < 0.5);
    if (downward) chain.unshift(random.pick(before));
    else chain.push(random.pick(after));
  }
  return chain;
}

export const stepOrder: Family = {
  id: 'step-order',
  level: 'apply',
  form: 'order',
  facts: (unit) => askable(unit).map(factOf),
  pose(unit, fact, random) {
    const asked = askable(unit).find((each) => factOf(each) === fact);
    if (!asked) return undefined;
    const { work } = asked;
    const chain = drawChain(asked, work.askable, random.int(SIZE, MOST), random);
    if (chain.length < SIZE) return undefined;
    const order = (ids: readonly string[]): Answer => ({ form: 'order', order: ids });
    const lures: Lure[] = [
      ...chain.slice(1).map(
        (later, index): Lure => ({
          answer: order(chain.toSpliced(index, 2, later, chain[index]!)),
          slipUp: 'step-too-early',
          fact: beforeFact(work, later),
        }),
      ),
      { answer: order(chain.toReversed()), slipUp: 'steps-turned-round' },
    ];
    const links = chain.slice(1).map((later, index) => [chain[index]!, later] as const);
    const own = chain.indexOf(asked.step);
    return {
      facts: [...new Set([fact, ...chain.slice(1).map((id) => beforeFact(work, id))])],
      uses: [
        `sequence:${work.sequence.id}`,
        ...[...new Set(links.flatMap(([earlier, later]) => pathBetween(work, earlier, later)))].map((id) =>
          stepRef(work, id),
        ),
      ],
      prompt: say('step-order.prompt', { work: workName(work) }),
      space: {
        form: 'order',
        items: random.shuffle(chain).map((id) => ({ id, label: stepText(work, id) })),
        first: say('step.first'),
        last: say('step.last'),
      },
      answers: [order(chain)],
      lures,
      explanation: {
        row: say('step.order', {
          steps: chain.map((id) => say('step.quoted', { step: stepText(work, id) })),
        }),
        reason: pathReasons(work, chain[own - 1]!, chain[own]!).at(-1)!,
        more: links.flatMap(([earlier, later]) => pathReasons(work, earlier, later)),
      },
      // From the last back: nothing may stand after a step that needs it.
      isRight: (answer) =>
        answer.form === 'order' &&
        answer.order.every((id, place) =>
          answer.order.slice(place + 1).every((later) => rawBefore(work.sequence, id, later)),
        ),
    };
  },
};
