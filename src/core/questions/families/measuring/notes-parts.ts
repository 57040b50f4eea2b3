/**
 * Notes of a fit as somebody wrote them down, sound or with one flaw: limits, a reading, and a second reading
 * after the part was changed. Only for fits whose part closes the play.
 */
import { type Impossible, impossibilities } from '../../../measure/impossible.ts';
import { type Limits, limitsOf } from '../../../measure/limits.ts';
import { windowFor } from '../../../measure/play.ts';
import type { Part } from '../../../measure/select.ts';
import type { Random } from '../../../random.ts';
import type { Rational } from '../../../rational.ts';
import { type AskedFit, HAIR } from './fit-parts.ts';

/** sound, out of limits and read with none in are possible; the others are not. */
export const SORTS = [
  'sound',
  'out',
  'none-in',
  'swapped',
  'wrong-way',
  'wrong-sum',
  'no-room',
  'too-tight',
] as const;
export type Sort = (typeof SORTS)[number];

export const POSSIBLE: readonly Sort[] = ['sound', 'out', 'none-in'];

/** Sorts of fits that are read with no part in. */
export const NONE_IN: readonly Sort[] = ['none-in', 'too-tight'];

export interface Note {
  readonly low: Rational;
  readonly high: Rational;
  readonly first: Rational;
  /** The part that was in at the first reading; null for none. */
  readonly part: Part | null;
  /** The part put in then, and the play read with it. */
  readonly second: { readonly part: Part; readonly play: Rational } | null;
}

/** Draws for one note before it is given up. */
const TRIES = 16;

function tryNote(asked: AskedFit, sort: Sort, random: Random): Note | undefined {
  const { limits, step, parts } = asked;
  const [was, put] = random.sample(parts, 2);
  if (!was || !put) return undefined;
  const width = Number(limits.high.sub(limits.low).div(step).floor().toFraction());
  const steps = (count: number | bigint) => step.mul(BigInt(count));
  const within = limits.low.add(steps(random.int(0, width)));
  const off = steps(random.int(4, 4 + width));
  const outside = random.int(0, 1) === 0 ? limits.low.sub(off) : limits.high.add(off);
  const gained = was.thickness.sub(put.thickness);
  const noted = (play: Rational, first = play.sub(gained)): Note => ({
    ...limits,
    first,
    part: was,
    second: { part: put, play },
  });
  const sound = noted(within);
  switch (sort) {
    case 'sound':
      return sound;
    case 'out':
      return noted(outside);
    case 'none-in':
      return { ...limits, first: within.add(put.thickness), part: null, second: null };
    case 'too-tight':
      return { ...limits, first: limits.low.sub(off), part: null, second: null };
    case 'swapped':
      return { ...sound, low: limits.high, high: limits.low };
    case 'wrong-way':
      return noted(sound.first.sub(gained), sound.first);
    case 'wrong-sum':
      return noted(within.add(off).add(off), sound.first);
    case 'no-room':
      return noted(within, gained.neg().sub(off));
  }
}

/** Why a note cannot be right, by the calculators of core; empty when it can. */
export function flawsOf(note: Note, step: Rational): (Impossible | 'bare-below-limits')[] {
  const { low, high, first, part, second } = note;
  if (part && second)
    return impossibilities({
      low,
      high,
      play: second.play,
      depth: first.add(part.thickness),
      stack: second.part.thickness,
      tolerance: step,
    });
  const limits = limitsOf(low, high);
  if (!limits.ok) return ['limits-swapped'];
  const window = windowFor(first, 'closes', limits.value);
  return window.ok ? [] : ['bare-below-limits'];
}

/** A note of this sort, nothing in it below zero; undefined when none is found. */
export function drawNote(asked: AskedFit, sort: Sort, random: Random): Note | undefined {
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const note = tryNote(asked, sort, random);
    if (!note || note.first.lte(0n) || note.second?.play.lte(0n)) continue;
    if ((flawsOf(note, asked.step).length === 0) === POSSIBLE.includes(sort)) return note;
  }
  return undefined;
}

/** The same by plain floating point, from the figures alone. */
export function floatFlawed({ low, high, first, part, second }: Note, step: Rational): boolean {
  if (low.valueOf() > high.valueOf()) return true;
  if (!part || !second) return first.valueOf() < low.valueOf();
  const expected = first.valueOf() + part.thickness.valueOf() - second.part.thickness.valueOf();
  return Math.abs(expected - second.play.valueOf()) > step.valueOf() + HAIR;
}

export const limitsAreSwapped = ({ low, high }: Note): boolean => high.lt(low);

/** The play last read lies outside limits that are not swapped. */
export const isOutside = ({ low, high, first, second }: Note): boolean => {
  const limits: Limits = { low, high };
  const play = second?.play ?? first;
  return low.lte(high) && (play.lt(limits.low) || play.gt(limits.high));
};
