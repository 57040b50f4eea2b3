/**
 * Which way would a held part turn if its brake let go under load: with the input or against it? Several brakes
 * in several ranges at once, so that no single guess is worth much.
 */
import { CASE, elementOf, type Train } from '../../gears/train.ts';
import { workOut } from '../../gears/working.ts';
import type { Random } from '../../random.ts';
import type { Rational } from '../../rational.ts';
import type { Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import type { Answer, Family, Lure } from '../question.ts';
import { distinctLures, rawApplied } from './chart-parts.ts';
import { speedRefs } from './gear-parts.ts';
import { perUnit } from './per-unit.ts';
import { type Carried, carriedIn, carriedInWords, torqueByWork } from './torque-parts.ts';

const FACT = 'skill:held-push';
const FEWEST_PARTS = 4;
const MOST_PARTS = 5;

const PUSHES = ['forward', 'backward', 'nowhere'] as const;
type Push = (typeof PUSHES)[number];

interface Held extends Carried {
  readonly shaft: string;
  /** What the brake puts on the held shaft, per 1 on the input. */
  readonly brakes: Rational;
}

const idOf = ({ element, range }: Held) => `${range.id}/${element}`;

const held = perUnit((unit: Unit): Held[] =>
  carriedIn(unit).flatMap((carried): Held[] => {
    const { kind, between } = elementOf(unit.deck.train, carried.element);
    const shaft = between.find((name) => name !== CASE);
    if (kind !== 'brake' || shaft === undefined) return [];
    return [{ ...carried, shaft, brakes: between[0] === CASE ? carried.torque.neg() : carried.torque }];
  }),
);

/** The part is pushed the way its brake does not push. */
const pushOf = ({ brakes }: Held): Push => (brakes.lt(0n) ? 'forward' : 'backward');

/** The same by the work that goes in with the output stalled. */
function pushByWork(unit: Unit, { element, range, shaft }: Held): Push | undefined {
  const { train } = unit.deck;
  const torque = torqueByWork(train, rawApplied(unit, range.id), element);
  if (torque === null) return undefined;
  const onShaft = elementOf(train, element).between[0] === shaft ? torque : -torque;
  return onShaft < 0 ? 'forward' : 'backward';
}

/** Of both ways where there are both. */
function draw(unit: Unit, random: Random): Held[] {
  const all = random.shuffle(held(unit));
  const anchors = (['forward', 'backward'] as const).flatMap((push) => {
    const found = all.find((part) => pushOf(part) === push);
    return found ? [found] : [];
  });
  const rest = all.filter((part) => !anchors.includes(part));
  const drawn = [...anchors, ...rest].slice(0, MOST_PARTS);
  return held(unit).filter((part) => drawn.includes(part));
}

const turned: Record<Push, Push> = { forward: 'backward', backward: 'forward', nowhere: 'nowhere' };

/** The held shaft bears a carrier that carries torque, and neither a sun nor a ring. */
const isCarrier = (train: Train, { shaft }: Held) =>
  train.gearsets.some((set) => set.carrier.shaft === shaft) &&
  train.gearsets.every((set) => set.sun.shaft !== shaft && set.ring.shaft !== shaft);

/** "With the output held and B1 let go, s1 turns 2.53 backward for one turn of the input." */
function lineFor(unit: Unit, part: Held): Phrase {
  const { train } = unit.deck;
  const stall = { id: ' stall', kind: 'brake', between: [train.output, CASE] } as const;
  const others = part.range.applied.filter((id) => id !== part.element);
  const working = workOut(
    { ...train, elements: [...train.elements, stall] },
    [...others, stall.id],
    part.shaft,
  );
  return say('held-push.line', {
    carried: carriedInWords(part),
    shaft: thing('shaft', part.shaft),
    push: pushOf(part),
    turns: working ? working.speed.abs().valueOf().toFixed(2) : '',
    known: working ? 'yes' : 'no',
  });
}

export const heldPush: Family = {
  id: 'held-push',
  level: 'reason',
  form: 'pair',
  facts: (unit) => (held(unit).length >= FEWEST_PARTS ? [FACT] : []),
  pose(unit, fact, random) {
    if (fact !== FACT || held(unit).length < FEWEST_PARTS) return undefined;
    const { train } = unit.deck;
    const parts = draw(unit, random);
    const told = (rule: (part: Held) => Push): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(parts.map((part) => [idOf(part), rule(part)])),
    });
    const lures: Lure[] = [
      { answer: told((part) => turned[pushOf(part)]), slipUp: 'brake-push-for-part-push', fact },
      { answer: told(() => 'forward'), slipUp: 'pushed-with-input', fact },
      { answer: told(() => 'backward'), slipUp: 'pushed-against-input', fact },
      { answer: told(() => 'nowhere'), slipUp: 'held-carries-nothing', fact },
      {
        answer: told(({ range }) => (range.ratio.gt(0n) ? 'forward' : 'backward')),
        slipUp: 'pushed-with-output',
        fact,
      },
      {
        answer: told((part) => (isCarrier(train, part) ? turned[pushOf(part)] : pushOf(part))),
        slipUp: 'carrier-pushed-like-ring',
        fact,
      },
    ];
    const shown = parts[0]!;
    let checked: readonly (readonly [string, Push | undefined])[] | undefined;
    return {
      facts: [fact],
      uses: [...new Set(parts.flatMap(({ range }) => speedRefs(unit, range)))],
      prompt: say('held-push.prompt'),
      drawing: { kind: 'train', showTeeth: true },
      space: {
        form: 'pair',
        left: parts.map((part) => ({ id: idOf(part), label: carriedInWords(part) })),
        right: PUSHES.map((id) => ({ id, label: say(`held-push.${id}`) })),
      },
      answers: [told(pushOf)],
      lures: distinctLures(lures),
      explanation: {
        row: lineFor(unit, shown),
        reason: say('held-push.reason'),
        more: parts.map((part) => lineFor(unit, part)),
        drawing: { kind: 'train', applied: shown.range.applied, litShafts: [shown.shaft], showTeeth: true },
      },
      isRight(answer) {
        checked ??= parts.map((part) => [idOf(part), pushByWork(unit, part)] as const);
        return answer.form === 'pair' && checked.every(([id, push]) => answer.pairs[id] === push);
      },
    };
  },
};
