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
const PART = 9;
/** Kinds of plate below which there is little to put in order. */
const FEWEST_KINDS = 4;

const canAsk = (stack: DeckStack): boolean => kindsIn(stack.items).length >= FEWEST_KINDS;

function drawn({ items }: DeckStack, random: Random): readonly DeckStackItem[] {
  if (items.length <= MOST) return items;
  const first = random.int(0, items.length - PART);
  return items.slice(first, first + PART);
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
    if (kindsIn(items).length < FEWEST_KINDS) return undefined;
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
      // From the opening down, by what each plate is and not by its id.
      isRight: (answer) => {
        if (answer.form !== 'order') return false;
        const raw = unit.deck.stacks!.find(({ id }) => id === stack.id)!.items;
        const offset = raw.findIndex(({ id }) => id === items[0]!.id);
        return answer.order.every((id, place) => {
          const [given, wanted] = [raw.find((item) => item.id === id), raw[offset + place]];
          return given?.id === wanted?.id || (given?.identical ?? 'a') === (wanted?.identical ?? 'b');
        });
      },
    };
  },
};
