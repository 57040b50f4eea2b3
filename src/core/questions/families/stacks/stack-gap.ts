/** A pack with one plate covered: what is it? The others are in view, thickness and all. */
import type { DeckStack, DeckStackItem } from '../../../unit/stacks.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { Family, Lure } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import {
  calledAlike,
  classOf,
  floorName,
  kindsIn,
  orderFact,
  plateName,
  stackLine,
  stackName,
  sureStacks,
} from './stack-parts.ts';

const FEWEST_WRONG = 3;
const MOST_WRONG = 4;

interface Wrong {
  readonly stack: DeckStack;
  readonly item: DeckStackItem;
  readonly slipUp: Lure['slipUp'];
}

/** What wrong rules put into the gap, each plate by another name once. */
function wrongPlates(unit: Unit, stack: DeckStack, place: number): Wrong[] {
  const { items } = stack;
  const covered = items[place]!;
  const beside = [items[place - 1], items[place + 1]].filter((item) => item !== undefined);
  const opposite = items[items.length - 1 - place]!;
  const elsewhere = sureStacks(unit)
    .filter((other) => other !== stack)
    .flatMap((other) =>
      kindsIn(other.items)
        .filter(({ kind }) => kind === covered.kind)
        .map((item): Wrong => ({ stack: other, item, slipUp: 'other-pack-plate' })),
    );
  const found: Wrong[] = [
    ...beside.map((item): Wrong => ({ stack, item, slipUp: 'likes-together' })),
    { stack, item: opposite, slipUp: 'opposite-end-plate' },
    ...elsewhere,
  ];
  return found.filter(
    ({ item }, index) =>
      !calledAlike(item, covered) && found.findIndex((other) => calledAlike(other.item, item)) === index,
  );
}

/** For each pack the places whose plate has enough wrong ones beside it. */
const askable = perUnit(
  (unit) =>
    new Map(
      sureStacks(unit).map((stack) => [
        stack,
        [...stack.items.keys()].filter((place) => wrongPlates(unit, stack, place).length >= FEWEST_WRONG),
      ]),
    ),
);

export const stackGap: Family = {
  id: 'stack-gap',
  level: 'apply',
  form: 'one',
  facts: (unit) =>
    sureStacks(unit)
      .filter((stack) => askable(unit).get(stack)!.length > 0)
      .map(orderFact),
  pose(unit, fact, random) {
    const stack = sureStacks(unit).find((candidate) => orderFact(candidate) === fact);
    const places = stack && askable(unit).get(stack)!;
    if (!stack || !places || places.length === 0) return undefined;
    const place = random.pick(places);
    const covered = stack.items[place]!;
    const wrong = wrongPlates(unit, stack, place);
    const drawn = wrong.slice(0, 2).concat(random.sample(wrong.slice(2), MOST_WRONG - 2));
    const idOf = (of: DeckStack, item: DeckStackItem) => `${of.id}/${item.id}`;
    const pick = (of: DeckStack, item: DeckStackItem) => ({ form: 'one' as const, pick: idOf(of, item) });
    const options = [{ stack, item: covered }, ...drawn].map((each) => ({
      id: idOf(each.stack, each.item),
      label: plateName(each.item),
    }));
    return {
      facts: [fact],
      uses: [
        ...new Set(
          [{ stack, item: covered }, ...drawn].flatMap((each) => [
            `stack:${each.stack.id}` as const,
            `plate:${each.stack.id}/${each.item.id}` as const,
          ]),
        ),
      ],
      prompt: say('stack-gap.prompt', { stack: stackName(stack), floor: floorName(stack) }),
      drawing: { kind: 'stack', stack: stack.id, covered: [covered.id], showThickness: true },
      space: { form: 'one', options: random.shuffle(options) },
      answers: [pick(stack, covered)],
      lures: drawn.map(({ stack: of, item, slipUp }) => ({ answer: pick(of, item), slipUp, fact })),
      explanation: {
        row: stackLine(stack),
        reason: say('stack-gap.reason', {
          plate: plateName(covered),
          place: String(place + 1),
        }),
        more: drawn
          .filter((each) => each.stack !== stack)
          .map((each) => say('stack.belongs', { plate: plateName(each.item), stack: stackName(each.stack) })),
        drawing: { kind: 'stack', stack: stack.id, lit: [covered.id], showThickness: true },
      },
      // Whether the pack is as recorded with this plate in the gap.
      isRight: (answer) => {
        if (answer.form !== 'one') return false;
        const [of, id] = answer.pick.split('/');
        const raw = unit.deck.stacks!.find((each) => each.id === of)?.items.find((item) => item.id === id);
        return of === stack.id && raw !== undefined && classOf(raw) === classOf(covered);
      },
    };
  },
};
