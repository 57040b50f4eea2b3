/**
 * Packs: which can be asked, what their plates are called, and which of them nobody can tell apart. A plate goes
 * by its kind (or the shop's name for it) and its thickness; plates marked identical are one class.
 */
import { exactIn } from '../../../unit/record.ts';
import { type DeckStack, type DeckStackItem, isInPack, type StackKind } from '../../../unit/stacks.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { FactId } from '../../question.ts';
import { perUnit } from '../per-unit.ts';

export const orderFact = (stack: DeckStack): FactId => `stack:${stack.id}/order`;

export const stackName = ({ id }: DeckStack): Phrase => thing('stack', id);

/** Plates of one stack with the same key may change places. */
export const classOf = ({ id, identical }: DeckStackItem): string =>
  identical === undefined ? `item ${id}` : `identical ${identical}`;

/** "steel plate, 1.8 mm" */
export function plateName({ name, kind, thickness }: DeckStackItem): Phrase {
  const what = name === undefined ? say(`plate.${kind}`) : say('text', { text: name });
  return thickness ? say('plate.thick', { what, thickness: thickness.value, unit: thickness.unit }) : what;
}

const names = new WeakMap<DeckStackItem, string>();

function nameKey(item: DeckStackItem): string {
  const known = names.get(item);
  if (known !== undefined) return known;
  const thickness = item.thickness && exactIn(item.thickness, 'mm').toFraction();
  const key = JSON.stringify([item.name ?? item.kind, thickness]);
  names.set(item, key);
  return key;
}

/** Whether two plates, of whatever packs, are called the same. */
export const calledAlike = (one: DeckStackItem, other: DeckStackItem): boolean =>
  nameKey(one) === nameKey(other);

/** Whether whatever is called the same may change places, so that no two answers look alike. */
const isLegible = ({ items }: DeckStack): boolean =>
  items.every((item) =>
    items.every((other) => !calledAlike(item, other) || classOf(item) === classOf(other)),
  );

/** Packs with every plate verified, in which plates that are called the same are the same. */
export const sureStacks = perUnit((unit) =>
  (unit.deck.stacks ?? []).filter((stack) => unit.sure(`stack:${stack.id}`) && isLegible(stack)),
);

/** The plates of each class, in the order they are met from the floor. */
function classesIn(items: readonly DeckStackItem[]): DeckStackItem[][] {
  const classes = new Map<string, DeckStackItem[]>();
  for (const item of items) {
    const met = classes.get(classOf(item));
    if (met) met.push(item);
    else classes.set(classOf(item), [item]);
  }
  return [...classes.values()];
}

/** One plate of each class. */
export const kindsIn = (items: readonly DeckStackItem[]): DeckStackItem[] =>
  classesIn(items).map(([first]) => first!);

/** Plates put together by class, each class where the first of it lies. */
export const likesTogether = (items: readonly DeckStackItem[]): DeckStackItem[] => classesIn(items).flat();

/** Groups of two or more that may change places. */
export const likesIn = (items: readonly DeckStackItem[]): string[][] =>
  classesIn(items)
    .filter((group) => group.length > 1)
    .map((group) => group.map(({ id }) => id));

/** Plates and rings with a thickness that take room in the pack. */
export const platesIn = ({ items }: DeckStack): DeckStackItem[] =>
  items.filter((item) => isInPack(item) && item.thickness);

export const SPRUNG: readonly StackKind[] = ['waved', 'dished'];

/** "drum floor, at the front" */
export const floorName = ({ floor, floorAt }: DeckStack): Phrase =>
  say('stack.floor', { floor: say('text', { text: floor }), end: floorAt });

interface Run {
  readonly times: number;
  readonly items: readonly DeckStackItem[];
}

/** The pack with what repeats told once: six times steel and friction, one after the other. */
function runsIn(items: readonly DeckStackItem[]): Run[] {
  const runs: Run[] = [];
  const alike = (a: DeckStackItem | undefined, b: DeckStackItem | undefined) =>
    a !== undefined && b !== undefined && classOf(a) === classOf(b);
  for (let at = 0; at < items.length; ) {
    let times = 1;
    while (alike(items[at], items[at + 2 * times]) && alike(items[at + 1], items[at + 2 * times + 1]))
      times++;
    const size = times > 1 ? 2 : 1;
    runs.push({ times, items: items.slice(at, at + size) });
    at += size * times;
  }
  return runs;
}

/** The pack in one sentence, from the floor up. */
export const stackLine = (stack: DeckStack): Phrase =>
  say('stack.line', {
    stack: stackName(stack),
    floor: floorName(stack),
    plates: runsIn(stack.items).map(({ times, items: [first, second] }) =>
      second
        ? say('stack.run', { times, first: plateName(first!), second: plateName(second) })
        : plateName(first!),
    ),
  });
