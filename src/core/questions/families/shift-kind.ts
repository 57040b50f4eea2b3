/**
 * How does a shift hand over: does a one-way let go or catch by itself, or are two friction elements exchanged,
 * one timed against the other? The chart is in view. Shifts that do several of these at once are left out.
 */
import { commandedIn } from '../../faults/behaviour.ts';
import { settle } from '../../gears/one-way.ts';
import type { Random } from '../../random.ts';
import { trainRefs, type Unit } from '../../unit/unit.ts';
import { type Phrase, say, thing } from '../phrase.ts';
import type { Answer, Family, Lure } from '../question.ts';
import { distinctLures, elementNames, oneWayIds, rawApplied } from './chart-parts.ts';
import { faultRanges } from './fault-parts.ts';
import { perUnit } from './per-unit.ts';
import { everyShift, type Shift } from './shift-parts.ts';

const FACT = 'skill:shift-kind';
const FEWEST_SHIFTS = 3;
const MOST_SHIFTS = 5;

/**
 * lets-go: elements come on, a one-way that held is overrun. catches: elements go off, a one-way takes the load.
 * exchange: friction elements on both sides. comes-on-alone: elements come on and nothing lets go.
 */
const KINDS = ['lets-go', 'catches', 'exchange', 'comes-on-alone'] as const;
type Kind = (typeof KINDS)[number];

interface Hand {
  readonly shift: Shift;
  readonly kind: Kind;
  readonly off: readonly string[];
  readonly on: readonly string[];
  /** One-ways that hold before and not after, and those that hold after and not before. */
  readonly lettingGo: readonly string[];
  readonly catching: readonly string[];
}

const idOf = ({ from, to }: Shift) => `${from.id}>${to.id}`;

const without = (ids: readonly string[], others: readonly string[]) =>
  ids.filter((id) => !others.includes(id));

function kindOf(hand: Omit<Hand, 'kind' | 'shift'>): Kind | undefined {
  const [off, on, lettingGo, catching] = [hand.off, hand.on, hand.lettingGo, hand.catching].map(
    (ids) => ids.length > 0,
  );
  if (!off && on && lettingGo && !catching) return 'lets-go';
  if (off && !on && !lettingGo && catching) return 'catches';
  if (off && on && !lettingGo && !catching) return 'exchange';
  if (!off && on && !lettingGo && !catching) return 'comes-on-alone';
  return undefined;
}

/** Every shift, up and down, that hands over in one way only; none where no one-way ever does it. */
const hands = perUnit((unit: Unit): Hand[] => {
  const { train } = unit.deck;
  if (oneWayIds(unit).length === 0 || faultRanges(unit).length < unit.ranges.length) return [];
  const both = everyShift(unit).flatMap(({ from, to }) => [
    { from, to },
    { from: to, to: from },
  ]);
  const found = both.flatMap((shift): Hand[] => {
    const [before, after] = [shift.from, shift.to].map((range) => commandedIn(train, range.applied)) as [
      string[],
      string[],
    ];
    const [held, holding] = [settle(train, before).holding, settle(train, after).holding];
    const hand = {
      off: without(before, after),
      on: without(after, before),
      lettingGo: without(held, holding),
      catching: without(holding, held),
    };
    const kind = kindOf(hand);
    return kind ? [{ shift, kind, ...hand }] : [];
  });
  const kinds = new Set(found.map(({ kind }) => kind));
  return found.length >= FEWEST_SHIFTS && kinds.has('lets-go') && kinds.has('exchange') ? found : [];
});

/** At least one that a one-way hands over and one that is exchanged. */
function draw(unit: Unit, random: Random): Hand[] {
  const all = random.shuffle(hands(unit));
  const first = all.find(({ kind }) => kind === 'lets-go' || kind === 'catches')!;
  const second = all.find(({ kind }) => kind === 'exchange')!;
  const rest = all.filter((hand) => hand !== first && hand !== second);
  const drawn = [first, second, ...rest.slice(0, MOST_SHIFTS - 2)];
  return hands(unit).filter((hand) => drawn.includes(hand));
}

function inWords({ shift, kind, off, on, lettingGo, catching }: Hand): Phrase {
  return say(`shift-kind.line-${kind}`, {
    from: thing('range', shift.from.id),
    to: thing('range', shift.to.id),
    off: say('shift.off', { count: off.length, elements: elementNames(off) }),
    on: say('shift.on', { count: on.length, elements: elementNames(on) }),
    oneWays: elementNames(kind === 'catches' ? catching : lettingGo),
  });
}

export const shiftKind: Family = {
  id: 'shift-kind',
  level: 'reason',
  form: 'pair',
  facts: (unit) => (hands(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    if (fact !== FACT || hands(unit).length === 0) return undefined;
    const drawn = draw(unit, random);
    const told = (rule: (hand: Hand) => Kind): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(drawn.map((hand) => [idOf(hand.shift), rule(hand)])),
    });
    const lures: Lure[] = [
      { answer: told(() => 'exchange'), slipUp: 'every-shift-timed', fact },
      {
        answer: told(({ kind, on }) => (on.length > 0 ? 'comes-on-alone' : kind)),
        slipUp: 'applied-only',
        fact,
      },
      {
        answer: told(({ kind }) => (kind === 'lets-go' ? 'catches' : kind === 'catches' ? 'lets-go' : kind)),
        slipUp: 'catching-means-letting-go',
        fact,
      },
      {
        answer: told(({ shift, kind }) =>
          shift.from.ratio.lt(shift.to.ratio) ? kind : kind === 'exchange' ? 'lets-go' : kind,
        ),
        slipUp: 'every-upshift-overruns',
        fact,
      },
    ];
    const ranges = unit.ranges.filter((range) =>
      drawn.some(({ shift }) => shift.from === range || shift.to === range),
    );
    const shown = drawn.find(({ kind }) => kind !== 'exchange')!;
    return {
      facts: [fact],
      uses: [...trainRefs(unit.deck), ...ranges.map((range) => range.ref)],
      prompt: say('shift-kind.prompt'),
      drawing: { kind: 'chart', rows: unit.ranges.map(({ id }) => id) },
      space: {
        form: 'pair',
        left: drawn.map(({ shift }) => ({
          id: idOf(shift),
          label: say('shift.named', { from: thing('range', shift.from.id), to: thing('range', shift.to.id) }),
        })),
        right: KINDS.map((id) => ({ id, label: say(`shift-kind.${id}`) })),
      },
      answers: [told(({ kind }) => kind)],
      lures: distinctLures(lures),
      explanation: {
        row: inWords(shown),
        reason: say('shift-kind.reason'),
        more: drawn.map(inWords),
        drawing: { kind: 'chart', rows: ranges.map(({ id }) => id), litColumns: oneWayIds(unit) },
      },
      // By the chart alone: it lists the one-ways that hold with the engine pulling.
      isRight: (answer) =>
        answer.form === 'pair' &&
        drawn.every(({ shift: { from, to } }) => {
          const [before, after] = [rawApplied(unit, from.id), rawApplied(unit, to.id)];
          const isOneWay = (id: string) => oneWayIds(unit).includes(id);
          const [gone, come] = [without(before, after), without(after, before)];
          const given = answer.pairs[`${from.id}>${to.id}`];
          if (gone.some(isOneWay)) return given === 'lets-go';
          if (come.some(isOneWay)) return given === 'catches';
          return given === (gone.length > 0 ? 'exchange' : 'comes-on-alone');
        }),
    };
  },
};
