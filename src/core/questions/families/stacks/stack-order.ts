/**
 * Put a pack in order from its floor up, from memory. Plates that nobody can tell apart take each other's place.
 * Of a very high pack only a part is asked, its plates next to one another.
 */
import type { Random } from '../../../random.ts';
import type { DeckStack, DeckStackItem } from '../../../unit/stacks.ts';
import { say } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import { distinctLures } from '../chart-parts.ts';
import {
  floorName,
  kindsIn,
  likesIn,
  likesTogether,
  orderFact,
  plateName,
  SPRUNG,
  stackLine,
  stackName,
  sureStacks,
} from './stack-parts.ts';

/** A pack of more is asked in part. */
const MOST = 12;
const PART = 7;
/** Kinds of plate below which there is little to put in order. */
const FEWEST_KINDS = 4;

const canAsk = (stack: DeckStack): boolean => kindsIn(stack.items).length >= FEWEST_KINDS;

/** The whole pack, or neighbouring plates of a high one; undefined where no part of it has enough kinds. */
function drawn({ items }: DeckStack, random: Random): readonly DeckStackItem[] | undefined {
  if (items.length <= MOST) return items;
  const parts = items
    .slice(0, items.length - PART + 1)
    .map((_, first) => items.slice(first, first + PART))
    .filter((part) => kindsIn(part).length >= FEWEST_KINDS);
  return parts.length > 0 ? random.pick(parts) : undefined;
}

const ordered = (items: readonly DeckStackItem[]): Answer => ({
  form: 'order',
  order: items.map(({ id }) => id),
});

/** The sprung plate as far from the opening as it is from the floor. */
function waveMoved(items: readonly DeckStackItem[], sprung: DeckStackItem): DeckStackItem[] {
  const rest = items.filter((item) => item !== sprung);
  return rest.toSpliced(rest.length - items.indexOf(sprung), 0, sprung);
}

export const stackOrder: Family = {
  id: 'stack-order',
  level: 'read',
  form: 'order',
  facts: (unit) => sureStacks(unit).filter(canAsk).map(orderFact),
  pose(unit, fact, random) {
    const stack = sureStacks(unit).find((candidate) => canAsk(candidate) && orderFact(candidate) === fact);
    if (!stack) return undefined;
    const items = drawn(stack, random);
    if (!items) return undefined;
    const raw = unit.deck.stacks!.find(({ id }) => id === stack.id)!.items;
    const kindOf = new Map(raw.map(({ id, identical }) => [id, identical ? `=${identical}` : id]));
    const wanted = raw.slice(raw.findIndex(({ id }) => id === items[0]!.id)).map(({ id }) => kindOf.get(id));
    const whole = items.length === stack.items.length;
    const lure = (slipUp: Lure['slipUp'], order: readonly DeckStackItem[]): Lure => ({
      answer: ordered(order),
      slipUp,
      fact,
    });
    const lures = [
      ...items
        .slice(1)
        .map((upper, index) => lure('adjacent-swapped', items.toSpliced(index, 2, upper, items[index]!))),
      lure('likes-together', likesTogether(items)),
      ...items
        .filter(({ kind }) => SPRUNG.includes(kind))
        .map((sprung) => lure('wave-at-wrong-end', waveMoved(items, sprung))),
      lure('counted-from-opening', items.toReversed()),
    ];
    return {
      facts: [fact],
      uses: [`stack:${stack.id}`, ...stack.items.map(({ id }) => `plate:${stack.id}/${id}` as const)],
      prompt: say(whole ? 'stack-order.prompt' : 'stack-order.part', {
        stack: stackName(stack),
        floor: floorName(stack),
      }),
      space: {
        form: 'order',
        items: random.shuffle(items).map((item) => ({ id: item.id, label: plateName(item) })),
        first: whole ? say('stack-order.first', { floor: floorName(stack) }) : say('stack-order.lower'),
        last: say('stack-order.last'),
        alike: likesIn(items),
      },
      answers: [ordered(items)],
      lures: distinctLures(lures),
      explanation: {
        row: stackLine(stack),
        reason: say('stack-order.reason', { kinds: kindsIn(items).map(plateName) }),
        more: items
          .slice(1)
          .map((item, index) =>
            say('stack-order.step', { lower: plateName(items[index]!), upper: plateName(item) }),
          ),
        drawing: { kind: 'stack', stack: stack.id, showThickness: true },
      },
      // By what each plate is and not by its id.
      isRight: (answer) =>
        answer.form === 'order' && answer.order.every((id, place) => kindOf.get(id) === wanted[place]),
    };
  },
};
