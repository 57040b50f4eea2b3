/** What lies below and above a plate of which there is one? From memory. */
import type { DeckStack, DeckStackItem } from '../../../unit/stacks.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import { perUnit } from '../per-unit.ts';
import {
  classOf,
  floorName,
  kindsIn,
  orderFact,
  plateName,
  SPRUNG,
  stackLine,
  stackName,
  sureStacks,
} from './stack-parts.ts';

const FEWEST_KINDS = 4;
const MOST_KINDS = 6;

/** Plates that occur once and have something on both sides. */
const singles = ({ items }: DeckStack): DeckStackItem[] =>
  items.slice(1, -1).filter((item) => items.filter((other) => classOf(other) === classOf(item)).length === 1);

const askable = perUnit((unit: Unit) =>
  sureStacks(unit).filter(
    (stack) => kindsIn(stack.items).length >= FEWEST_KINDS && singles(stack).length > 0,
  ),
);

export const plateNeighbours: Family = {
  id: 'plate-neighbours',
  level: 'read',
  form: 'pair',
  facts: (unit) => askable(unit).map(orderFact),
  pose(unit, fact, random) {
    const stack = askable(unit).find((candidate) => orderFact(candidate) === fact);
    if (!stack) return undefined;
    const { items } = stack;
    const plate = random.pick(singles(stack));
    const place = items.indexOf(plate);
    const first = (item: DeckStackItem) => kindsIn(items).find((kind) => classOf(kind) === classOf(item))!.id;
    const rest = items.toSpliced(place, 1);
    /** What it lies between when put on the first so many of the others. */
    const on = (count: number): Answer | undefined => {
      const [lower, upper] = [rest[count - 1], rest[count]];
      return lower && upper && { form: 'pair', pairs: { below: first(lower), above: first(upper) } };
    };
    const right = on(place)!;
    const { below, above } = (right as Extract<Answer, { form: 'pair' }>).pairs;
    const kinds = kindsIn(items).filter(({ id }) => id !== first(plate));
    const needed = kinds.filter(({ id }) => id === below || id === above);
    const drawn = random.sample(
      kinds.filter((kind) => !needed.includes(kind)),
      MOST_KINDS - needed.length,
    );
    const shown = random.shuffle([...needed, ...drawn]);
    const among = (answer: Answer | undefined): answer is Answer =>
      answer?.form === 'pair' &&
      Object.values(answer.pairs).every((id) => shown.some((kind) => kind.id === id));
    const opposite = on(rest.length - place);
    const lures: Lure[] = [
      {
        answer: { form: 'pair', pairs: { below: above!, above: below! } },
        slipUp: 'counted-from-opening',
        fact,
      },
      ...[opposite].filter(among).map(
        (answer): Lure => ({
          answer,
          slipUp: SPRUNG.includes(plate.kind) ? 'wave-at-wrong-end' : 'opposite-end-plate',
          fact,
        }),
      ),
      ...[on(place - 1), on(place + 1)]
        .filter(among)
        .map((answer): Lure => ({ answer, slipUp: 'adjacent-swapped', fact })),
    ];
    if (shown.length < FEWEST_KINDS - 1) return undefined;
    return {
      facts: [fact],
      uses: [`stack:${stack.id}`, ...items.map(({ id }) => `plate:${stack.id}/${id}` as const)],
      prompt: say('plate-neighbours.prompt', {
        stack: stackName(stack),
        floor: floorName(stack),
        plate: plateName(plate),
      }),
      space: {
        form: 'pair',
        left: ['below', 'above'].map((id) => ({ id, label: say(`plate-neighbours.${id}`) })),
        right: shown.map((kind) => ({ id: kind.id, label: plateName(kind) })),
      },
      answers: [right],
      lures: distinctLures(lures),
      explanation: {
        row: say('plate-neighbours.row', {
          plate: plateName(plate),
          below: plateName(items[place - 1]!),
          above: plateName(items[place + 1]!),
        }),
        reason: stackLine(stack),
        more: [],
        drawing: { kind: 'stack', stack: stack.id, lit: [plate.id], showThickness: true },
      },
      // By walking up the recorded pack until the plate is met.
      isRight: (answer) => {
        if (answer.form !== 'pair') return false;
        const raw = unit.deck.stacks!.find(({ id }) => id === stack.id)!.items;
        const kindOf = (id: string | undefined) => {
          const item = raw.find((each) => each.id === id);
          return item?.identical ?? item?.id;
        };
        let before: string | undefined;
        for (const [index, item] of raw.entries()) {
          if (item.id === plate.id)
            return (
              kindOf(answer.pairs.below) === before &&
              kindOf(answer.pairs.above) === kindOf(raw[index + 1]?.id)
            );
          before = kindOf(item.id);
        }
        return false;
      },
    };
  },
};
