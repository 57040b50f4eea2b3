/** Heights of packs, worked in the unit that their plates are written in, and the table they are worked from. */
import type { Plate, Waves } from '../../../measure/stack.ts';
import { decimalsOf } from '../../../rational.ts';
import { exactIn, type Length } from '../../../unit/record.ts';
import type { DeckStack, DeckStackItem } from '../../../unit/stacks.ts';
import { say } from '../../phrase.ts';
import type { Drawing } from '../../question.ts';
import { classOf, kindsIn, plateName, platesIn, SPRUNG } from './stack-parts.ts';

/** The unit of the pack's plates; mm where they are written in several. */
export function lengthUnit(stack: DeckStack): Length['unit'] {
  const units = new Set(platesIn(stack).map(({ thickness }) => thickness!.unit));
  return units.size === 1 ? [...units][0]! : 'mm';
}

/** Places that the pack's lengths are written with. */
export const placesOf = (stack: DeckStack): number =>
  Math.max(
    ...platesIn(stack).flatMap(({ thickness, free }) =>
      [thickness, free].flatMap((length) => (length ? [decimalsOf(length.value)] : [])),
    ),
  );

/** Half of the last place, as text: half of 0.01 is "0.005". */
export const halfPlace = (places: number): string => (places === 0 ? '0.5' : `0.${'0'.repeat(places)}5`);

/** The plates as src/core/measure takes them; what kind each is makes no difference to a height. */
export const heightPlates = (stack: DeckStack): Plate[] =>
  platesIn(stack).map(({ id, thickness, free }) => ({
    id,
    kind: 'steel',
    thickness: exactIn(thickness!, lengthUnit(stack)),
    free: free && exactIn(free, lengthUnit(stack)),
  }));

/** How many plates of the pack are like this one. */
export const countLike = (stack: DeckStack, item: DeckStackItem): number =>
  platesIn(stack).filter((other) => classOf(other) === classOf(item)).length;

/** The height by plain floating point, for a second look. */
export const floatHeight = (stack: DeckStack, waves: Waves): number => {
  const unit = lengthUnit(stack);
  let sum = 0;
  for (const item of platesIn(stack)) {
    const counted = (waves === 'free' && item.free) || item.thickness!;
    sum += exactIn(counted, unit).valueOf();
  }
  return sum;
};

export const isSprung = (stack: DeckStack): boolean =>
  platesIn(stack).some(({ kind }) => SPRUNG.includes(kind));

const length = (amount: Length | undefined) =>
  amount ? say('stack.length', { value: amount.value, unit: amount.unit }) : say('stack.no-length');

/** Each kind of plate once: how many, how thick, how high with no load. */
export function plateTable(stack: DeckStack): Drawing {
  return {
    kind: 'table',
    columns: [say('stack.column-count'), say('stack.column-thickness'), say('stack.column-free')],
    rows: kindsIn(platesIn(stack)).map((item) => ({
      head: plateName({ ...item, thickness: undefined }),
      cells: [
        say('stack.count', { count: countLike(stack, item) }),
        length(item.thickness),
        length(item.free),
      ],
    })),
  };
}
