/**
 * One gearset by itself: one member is driven, one is held, one drives out. Slower or faster, and which way? A
 * set with single pinions and one with pinions in pairs are facts of their own, since their rules differ.
 */
import { solveSpeeds } from '../../gears/solve.ts';
import {
  CASE,
  GEARSET_KINDS,
  type Gearset,
  type GearsetKind,
  MEMBERS,
  type Member,
  type Train,
} from '../../gears/train.ts';
import type { Random } from '../../random.ts';
import type { Rational } from '../../rational.ts';
import type { Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import type { Answer, FactId, Family, Lure, Option } from '../question.ts';
import { floatOutput } from '../second-route.ts';
import { distinctLures } from './chart-parts.ts';
import { speedText, wayOf } from './gear-parts.ts';
import { perUnit } from './per-unit.ts';
import { wrongSpeeds } from './wrong-rules.ts';

const WAYS = 4;

/** forward or backward, and whether the output turns slower or faster than what is driven. */
const EFFECTS = ['slower', 'alike', 'faster', 'backward-slower', 'backward-faster'] as const;
type Effect = (typeof EFFECTS)[number];

/** Driven, out and third; the third is held, or joined to the driven one so that all turns as one. */
interface Way {
  readonly driven: Member;
  readonly out: Member;
  readonly third: Member;
  readonly joined: boolean;
}

const idOf = ({ driven, out, joined }: Way) => `${driven}>${out}${joined ? '+' : ''}`;

const WAYS_OF_A_SET: readonly Way[] = MEMBERS.flatMap((driven) =>
  MEMBERS.filter((out) => out !== driven).flatMap((out) => {
    const third = MEMBERS.find((member) => member !== driven && member !== out)!;
    return [false, true].map((joined) => ({ driven, out, third, joined }));
  }),
);

const HOLD = 'hold';

/** The set as a train: each member a shaft of its own. */
function trainOf(set: Gearset, { driven, out, third, joined }: Way): Train {
  return {
    input: driven,
    output: out,
    gearsets: [
      {
        ...set,
        sun: { shaft: 'sun', teeth: set.sun.teeth },
        ring: { shaft: 'ring', teeth: set.ring.teeth },
        carrier: { shaft: 'carrier' },
      },
    ],
    elements: [
      joined
        ? { id: HOLD, kind: 'clutch', between: [driven, third] }
        : { id: HOLD, kind: 'brake', between: [third, CASE] },
    ],
  };
}

/** From the output's speed per turn of the driven member; undefined at the same speed backward. */
function effectOf(speed: number): Effect | undefined {
  const size = Math.abs(speed);
  if (speed === 1) return 'alike';
  if (size === 1 || speed === 0) return undefined;
  const rate = size < 1 ? 'slower' : 'faster';
  return speed < 0 ? `backward-${rate}` : rate;
}

const outputOf = (set: Gearset, way: Way): Rational =>
  solveSpeeds(trainOf(set, way), [HOLD]).ratio!.inverse();

const effectIn = (set: Gearset, way: Way): Effect | undefined => effectOf(outputOf(set, way).valueOf());

/** The same by the second solver. */
function floatEffect(set: Gearset, way: Way): Effect | undefined {
  const output = floatOutput(trainOf(set, way), [HOLD]);
  return output === null ? undefined : effectOf(Math.abs(output - 1) < 1e-9 ? 1 : output);
}

const factOf = (kind: GearsetKind): FactId => `skill:one-set-${kind}`;

const setsOf = perUnit((unit: Unit) =>
  unit.deck.train.gearsets.filter((set) => unit.sure(`gearset:${set.id}`)),
);

/** Four ways, most of them with a held member. */
function drawWays(set: Gearset, random: Random): Way[] {
  const clear = WAYS_OF_A_SET.filter((way) => effectIn(set, way) !== undefined);
  const held = random.shuffle(clear.filter(({ joined }) => !joined));
  const joined =
    random.int(0, 2) === 0
      ? random.sample(
          clear.filter((way) => way.joined),
          1,
        )
      : [];
  const drawn = [...joined, ...held].slice(0, WAYS);
  return random.shuffle(drawn);
}

function luresFor(set: Gearset, ways: readonly Way[], fact: FactId): Lure[] {
  const lure = (slipUp: Lure['slipUp'], rule: (way: Way) => Effect | undefined): Lure[] => {
    const told = ways.map((way) => [idOf(way), rule(way)] as const);
    return told.every(([, effect]) => effect)
      ? [
          {
            answer: { form: 'pair', pairs: Object.fromEntries(told) as Record<string, string> },
            slipUp,
            fact,
          },
        ]
      : [];
  };
  const right = (way: Way) => effectIn(set, way);
  const turned: Record<Effect, Effect> = {
    slower: 'faster',
    faster: 'slower',
    alike: 'alike',
    'backward-slower': 'backward-faster',
    'backward-faster': 'backward-slower',
  };
  return distinctLures([
    ...lure('inverse-ratio', (way) => turned[right(way)!]),
    ...lure('sign-lost', (way) => right(way)!.replace('backward-', '') as Effect),
    ...lure('held-driven-mixed', (way) =>
      right(way.joined ? way : { ...way, driven: way.third, third: way.driven }),
    ),
    ...(['sun-ring-swapped', 'carrier-forgotten', 'pinion-pair-missed'] as const).flatMap((slipUp) =>
      lure(slipUp, (way) => {
        const found = wrongSpeeds(trainOf(set, way), [HOLD], way.out).find(
          (wrong) => wrong.slipUp === slipUp,
        );
        return found && effectOf(found.speed.valueOf());
      }),
    ),
  ]);
}

const member = (name: Member): Phrase => say(`member.${name}`);

const wayInWords = (way: Way): Phrase =>
  say(way.joined ? 'one-set.joined' : 'one-set.held', {
    driven: member(way.driven),
    out: member(way.out),
    third: member(way.third),
  });

const effectOptions: readonly Option[] = EFFECTS.map((id) => ({ id, label: say(`one-set.${id}`) }));

export const oneSet: Family = {
  id: 'one-set',
  level: 'reason',
  form: 'pair',
  facts: (unit) => GEARSET_KINDS.filter((kind) => setsOf(unit).some((set) => set.kind === kind)).map(factOf),
  pose(unit, fact, random) {
    const sets = setsOf(unit).filter((set) => factOf(set.kind) === fact);
    if (sets.length === 0) return undefined;
    const set = random.pick(sets);
    const ways = drawWays(set, random);
    if (ways.length < WAYS) return undefined;
    const answer: Answer = {
      form: 'pair',
      pairs: Object.fromEntries(ways.map((way) => [idOf(way), effectIn(set, way)!])),
    };
    let checked: readonly (readonly [string, Effect | undefined])[] | undefined;
    const names = { gearset: thing('gearset', set.id), sunTeeth: set.sun.teeth, ringTeeth: set.ring.teeth };
    return {
      facts: [fact],
      uses: [`gearset:${set.id}`],
      prompt: say(`one-set.prompt-${set.kind}`, names),
      space: {
        form: 'pair',
        left: ways.map((way) => ({ id: idOf(way), label: wayInWords(way) })),
        right: effectOptions,
      },
      answers: [answer],
      lures: luresFor(set, ways, fact),
      explanation: {
        row: say(`gears.rule-${set.kind}`),
        reason: say(`one-set.reason-${set.kind}`),
        more: ways.map((way) => {
          const speed = outputOf(set, way);
          return say('one-set.line', {
            way: wayInWords(way),
            turns: speedText(speed.abs()),
            sense: wayOf(speed),
          });
        }),
      },
      isRight(given) {
        checked ??= ways.map((way) => [idOf(way), floatEffect(set, way)] as const);
        return given.form === 'pair' && checked.every(([id, effect]) => given.pairs[id] === effect);
      },
    };
  },
};
