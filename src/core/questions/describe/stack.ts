/** A pack as it is drawn: its plates from the floor up, some covered, turned or out of another pack; and in words. */
import type { Deck } from '../../unit/deck.ts';
import { exactIn } from '../../unit/record.ts';
import type { DeckStack, DeckStackItem } from '../../unit/stacks.ts';
import type { StackDrawing } from '../drawing.ts';
import { type Phrase, say } from '../phrase.ts';

export interface ShownPlate {
  /** As the drawing names it: "steel-2", or "C1/steel-2" where it comes out of another pack. */
  readonly id: string;
  readonly item: DeckStackItem;
  readonly isCovered: boolean;
  readonly isLit: boolean;
  /** Which way its one-sided feature looks as drawn. */
  readonly looks: DeckStackItem['looks'];
  /** Its number among the drawing's places, from 1. */
  readonly place: number | null;
}

/** The stack with this id; an unknown id is a mistake of the caller and throws. */
export function stackOf(deck: Deck, id: string): DeckStack {
  const stack = deck.stacks?.find((candidate) => candidate.id === id);
  if (!stack) throw new Error(`no stack "${id}"`);
  return stack;
}

function itemOf(deck: Deck, stack: DeckStack, name: string): DeckStackItem {
  const [first = '', second] = name.split('/');
  const holder = second === undefined ? stack : stackOf(deck, first);
  const item = holder.items.find(({ id }) => id === (second ?? first));
  if (!item) throw new Error(`no plate "${name}" in stack "${stack.id}"`);
  return item;
}

export function platesShown(deck: Deck, drawing: StackDrawing): ShownPlate[] {
  const stack = stackOf(deck, drawing.stack);
  const names = drawing.items ?? stack.items.map(({ id }) => id);
  return names.map((id) => {
    const item = itemOf(deck, stack, id);
    const place = drawing.places?.indexOf(id) ?? -1;
    const isTurned = drawing.turned?.includes(id) ?? false;
    return {
      id,
      item,
      isCovered: drawing.covered?.includes(id) ?? false,
      isLit: drawing.lit?.includes(id) ?? false,
      looks:
        item.looks && isTurned
          ? { ...item.looks, towards: item.looks.towards === 'floor' ? 'opening' : 'floor' }
          : item.looks,
      place: place < 0 ? null : place + 1,
    };
  });
}

/** What the plate is called on the drawing: the shop's name, else its kind. */
export const plateName = ({ name, kind }: DeckStackItem): Phrase =>
  name === undefined ? say(`plate.${kind}`) : say('text', { text: name });

/** "1.80 mm", or "1.60 mm flat, 2.10 mm free" of a waved plate. */
export function plateSize({ thickness, free }: DeckStackItem): Phrase | null {
  if (!thickness) return null;
  const size = `${thickness.value} ${thickness.unit}`;
  return free
    ? say('drawing.stack.free', { flat: size, free: `${free.value} ${free.unit}` })
    : say('text', { text: size });
}

/** The unit that the pack is measured in: that of its first thickness. */
export const unitOf = ({ items }: DeckStack): 'mm' | 'in' =>
  items.find(({ thickness }) => thickness)?.thickness?.unit ?? 'mm';

/** The size without its unit, for a drawing that states it once; in another unit it keeps its own. */
export function bareSize(item: DeckStackItem, unit: 'mm' | 'in'): Phrase | null {
  const { thickness, free } = item;
  if (!thickness || thickness.unit !== unit || (free && free.unit !== unit)) return plateSize(item);
  return free
    ? say('drawing.stack.free', { flat: thickness.value, free: free.value })
    : say('text', { text: thickness.value });
}

export function describeStack(deck: Deck, drawing: StackDrawing): Phrase[] {
  const stack = stackOf(deck, drawing.stack);
  const hidesNames = drawing.hideNames ?? false;
  return [
    say('drawing.stack.floor', { floor: stack.floor, end: say(`drawing.end.${stack.floorAt}`) }),
    ...platesShown(deck, drawing).map(({ item, isCovered, isLit, looks, place }, index) => {
      const size = drawing.showThickness && !isCovered ? plateSize(item) : null;
      return say('drawing.stack.plate', {
        position: index + 1,
        place: place ?? 0,
        // Where the name is hidden the shape and lining are still seen, and so is what they mean.
        name: isCovered
          ? say('drawing.stack.covered')
          : hidesNames
            ? say(`plate.${item.kind}`)
            : plateName(item),
        size: size ?? say('text', { text: '' }),
        sized: size ? 'yes' : 'no',
        looks: isCovered || !looks ? 'none' : looks.feature,
        towards: looks?.towards ?? 'none',
        lit: isLit ? 'yes' : 'no',
      });
    }),
  ];
}

/** Thickness in mm as drawn: free where the plate stands free. Null where the deck states none. */
export function thicknessMm({ thickness, free }: DeckStackItem): { flat: number; free: number } | null {
  if (!thickness) return null;
  const flat = exactIn(thickness, 'mm').valueOf();
  return { flat, free: free ? exactIn(free, 'mm').valueOf() : flat };
}
