/**
 * Gearsets on shafts at random, with no element yet: the skeleton of a never-seen train. Shafts are numbers here,
 * 0 the input and 1 the output. Floats only: they look for trains, and what is found is solved exactly afterwards.
 */
import type { GearsetKind } from '../gears/train.ts';
import type { Random } from '../random.ts';

export const INPUT = 0;
export const OUTPUT = 1;

export interface SkeletonSet {
  readonly kind: GearsetKind;
  readonly sun: number;
  readonly ring: number;
  readonly carrier: number;
  readonly sunTeeth: number;
  readonly ringTeeth: number;
  /** Of a simple set: it divides the teeth of sun and ring together. */
  readonly planets: number | undefined;
}

export interface Skeleton {
  readonly sets: readonly SkeletonSet[];
  readonly shafts: number;
  /** Speeds of each shaft in motions that no gearset forbids; each of these can be chosen by itself. */
  readonly motions: readonly (readonly number[])[];
}

/** Below this a float counts as 0. */
export const TINY = 1e-9;

/** Teeth of a set: sun 26 to 52, ring 1.45 to 2.9 times it, planets of 14 teeth or more that go together. */
function drawTeeth(
  random: Random,
  kind: GearsetKind,
): Pick<SkeletonSet, 'sunTeeth' | 'ringTeeth' | 'planets'> {
  for (;;) {
    const planets = random.pick([3, 4]);
    const sunTeeth = random.int(26, 52);
    const ringTeeth = random.int(Math.ceil(sunTeeth * 1.45), Math.floor(sunTeeth * 2.9));
    if (ringTeeth > 120 || ringTeeth - sunTeeth < 28 || (ringTeeth - sunTeeth) % 2 !== 0) continue;
    if (kind === 'double-pinion') return { sunTeeth, ringTeeth, planets: undefined };
    if ((sunTeeth + ringTeeth) % planets === 0) return { sunTeeth, ringTeeth, planets };
  }
}

const membersOf = ({ sun, ring, carrier }: SkeletonSet) => [sun, ring, carrier];

/** Two sets may share a shaft, or two of them crosswise; like members on the same two shafts could not be built. */
function clash(a: SkeletonSet, b: SkeletonSet): boolean {
  const shared = membersOf(a).filter((shaft) => membersOf(b).includes(shaft)).length;
  const alike = a.sun === b.sun || a.ring === b.ring || a.carrier === b.carrier;
  return shared === 3 || (shared === 2 && alike);
}

/** What no gearset forbids: the null space of their equations, one column for each freedom. */
function motionsOf(sets: readonly SkeletonSet[], shafts: number): number[][] {
  const rows = sets.map(({ kind, sun, ring, carrier, sunTeeth, ringTeeth }) => {
    const row = new Array<number>(shafts).fill(0);
    const signed = kind === 'simple' ? sunTeeth : -sunTeeth;
    row[sun] = signed;
    row[ring] = ringTeeth;
    row[carrier] = -(signed + ringTeeth);
    return row;
  });
  const pivots = echelon(rows, shafts);
  const free = Array.from({ length: shafts }, (_, shaft) => shaft).filter((shaft) => !pivots.includes(shaft));
  return Array.from({ length: shafts }, (_, shaft) =>
    free.map((column) => {
      if (shaft === column) return 1;
      const row = rows[pivots.indexOf(shaft)];
      return row ? -row[column]! : 0;
    }),
  );
}

/** Brings rows to reduced echelon form where they stand and gives the columns of their pivots. */
export function echelon(rows: number[][], width: number): number[] {
  const pivots: number[] = [];
  for (let column = 0; column < width && pivots.length < rows.length; column++) {
    const rank = pivots.length;
    let best = rank;
    for (let r = rank + 1; r < rows.length; r++)
      if (Math.abs(rows[r]![column]!) > Math.abs(rows[best]![column]!)) best = r;
    const pivotRow = rows[best]!;
    const pivot = pivotRow[column]!;
    if (Math.abs(pivot) < TINY) continue;
    rows[best] = rows[rank]!;
    rows[rank] = pivotRow;
    for (let c = 0; c < width; c++) pivotRow[c]! /= pivot;
    for (const row of rows) {
      const factor = row[column]!;
      if (row === pivotRow || factor === 0) continue;
      for (let c = 0; c < width; c++) row[c]! -= factor * pivotRow[c]!;
    }
    pivots.push(column);
  }
  return pivots;
}

/** A skeleton with this many sets and freedoms; null where the draw could not be built. */
export function drawSkeleton(random: Random, count: number, freedoms: number): Skeleton | null {
  const shafts = count + freedoms;
  const every = Array.from({ length: shafts }, (_, shaft) => shaft);
  const more = Array.from({ length: 3 * count - shafts }, () => random.int(0, shafts - 1));
  const places = random.shuffle([...every, ...more]);
  const sets: SkeletonSet[] = [];
  for (let index = 0; index < count; index++) {
    const [sun, ring, carrier] = places.slice(3 * index, 3 * index + 3) as [number, number, number];
    if (sun === ring || ring === carrier || carrier === sun) return null;
    const kind: GearsetKind = random.int(0, 4) === 0 ? 'double-pinion' : 'simple';
    const set = { kind, sun, ring, carrier, ...drawTeeth(random, kind) };
    if (sets.some((other) => clash(set, other))) return null;
    sets.push(set);
  }
  const motions = motionsOf(sets, shafts);
  return motions[0]!.length === freedoms ? { sets, shafts, motions } : null;
}
