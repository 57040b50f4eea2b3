/**
 * Elements for a skeleton. Every brake and clutch it could have is a line through its motions; a row of a chart is
 * as many of them as leave one motion, and its ratio is read off that motion at once. So sets of elements can be
 * gone through by the hundred, each with all its rows, and only the chart of the best is solved exactly.
 */
import type { Random } from '../random.ts';
import { type Falling, fallingRows, SLOWEST_FIRST } from './falling.ts';
import { echelon, INPUT, OUTPUT, type Skeleton, TINY } from './skeleton.ts';

export const HOUSING = -1;
/** The two shafts an element joins; a brake joins one to the housing. */
export type Join = readonly [number, number];

export interface LayoutRow {
  /** Elements that are on, a bit for each. */
  readonly mask: number;
  readonly ratio: number;
}

export interface Layout {
  readonly joins: readonly Join[];
  /** Falling. */
  readonly forward: readonly LayoutRow[];
  readonly reverse: LayoutRow;
}

/** No shaft of a row turns faster than this many times the input. */
const FASTEST = 5;
/** Ratios of a chart; a reverse reduces no more than the highest. */
const [HIGHEST, LOWEST] = [5.5, 0.55];
/** Reverse, as a share of the first range. */
const [LEAST_REVERSE, MOST_REVERSE] = [0.55, 1.4];
/** Sets of elements tried on one skeleton. */
const TRIES = 400;

/** Every brake and clutch the skeleton could have. Not on the output, and not input to output. */
function joinsOf({ shafts }: Skeleton): Join[] {
  const joins: Join[] = [];
  for (let a = 0; a < shafts; a++) {
    if (a !== INPUT && a !== OUTPUT) joins.push([a, HOUSING]);
    for (let b = 0; b < a; b++) if (!(a === OUTPUT && b === INPUT)) joins.push([b, a]);
  }
  return joins;
}

/** The one motion these lines leave; null where they leave more. */
function motionLeft(lines: readonly (readonly number[])[], freedoms: number): number[] | null {
  const rows = lines.map((line) => [...line]);
  const pivots = echelon(rows, freedoms);
  if (pivots.length < freedoms - 1) return null;
  const free = [...Array(freedoms).keys()].find((column) => !pivots.includes(column))!;
  const motion = new Array<number>(freedoms).fill(0);
  motion[free] = 1;
  for (const [row, column] of pivots.entries()) motion[column] = -rows[row]![free]!;
  return motion;
}

/** Picks of `size` out of `count`, as lists of places. */
function picksOf(count: number, size: number): number[][] {
  if (size === 0) return [[]];
  if (count < size) return [];
  return [...picksOf(count - 1, size), ...picksOf(count - 1, size - 1).map((pick) => [...pick, count - 1])];
}

/** The ratio of a row, worked out once for each set of elements; 0 where it does not drive as a chart's row may. */
class Ratios {
  /** By row, as a number whose digits are the elements; NaN is not yet worked out. */
  private readonly known: Float64Array;
  private readonly lines: readonly (readonly number[])[];
  private readonly freedoms: number;

  constructor(
    private readonly skeleton: Skeleton,
    private readonly joins: readonly Join[],
  ) {
    const { motions } = skeleton;
    this.freedoms = motions[0]!.length;
    this.known = new Float64Array(joins.length ** (this.freedoms - 1)).fill(Number.NaN);
    this.lines = joins.map(([a, b]) =>
      b === HOUSING ? motions[a]! : motions[a]!.map((speed, column) => speed - motions[b]![column]!),
    );
  }

  /** `row` in rising order. */
  of(row: readonly number[]): number {
    let key = 0;
    for (const join of row) key = key * this.joins.length + join;
    if (Number.isNaN(this.known[key])) this.known[key] = this.workOut(row);
    return this.known[key]!;
  }

  private workOut(row: readonly number[]): number {
    const motion = motionLeft(
      row.map((join) => this.lines[join]!),
      this.freedoms,
    );
    if (!motion) return 0;
    const speed = (shaft: number) =>
      this.skeleton.motions[shaft]!.reduce((sum, share, column) => sum + share * motion[column]!, 0);
    const [input, output] = [speed(INPUT), speed(OUTPUT)];
    if (Math.abs(input) < TINY || Math.abs(output) < TINY) return 0;
    for (let shaft = 0; shaft < this.skeleton.shafts; shaft++)
      if (Math.abs(speed(shaft) / input) > FASTEST) return 0;
    return input / output;
  }
}

/** Each shaft that one gear alone sits on needs an element. */
function joinsLooseEnds({ sets, shafts }: Skeleton, joins: readonly Join[]): boolean {
  const uses = new Array<number>(shafts).fill(0);
  for (const { sun, ring, carrier } of sets) for (const shaft of [sun, ring, carrier]) uses[shaft]!++;
  for (const join of joins) for (const shaft of join) if (shaft !== HOUSING) uses[shaft]!++;
  uses[INPUT]!++;
  uses[OUTPUT]!++;
  return uses.every((count) => count >= 2);
}

/** The chart of these elements; null where they make none. */
function chartOf(
  ratios: Ratios,
  chosen: readonly number[],
  picks: readonly number[][],
): (Falling & Pick<Layout, 'reverse'>) | null {
  const [forward, backward]: [LayoutRow[], LayoutRow[]] = [[], []];
  for (const pick of picks) {
    const ratio = ratios.of(pick.map((place) => chosen[place]!));
    const mask = pick.reduce((sum, place) => sum | (1 << place), 0);
    if (ratio > LOWEST && ratio < HIGHEST) forward.push({ mask, ratio });
    else if (ratio < 0 && -ratio < HIGHEST) backward.push({ mask, ratio });
  }
  if (backward.length === 0) return null;
  const falling = fallingRows(forward);
  const first = falling?.rows[0];
  if (!falling || !first || first.ratio < SLOWEST_FIRST) return null;
  const used = falling.rows.reduce((mask, row) => mask | row.mask, 0);
  const all = 2 ** chosen.length - 1;
  const near = ({ ratio }: LayoutRow) => Math.abs(Math.abs(ratio) - first.ratio);
  const [reverse] = backward
    .filter(({ mask, ratio }) => {
      const share = -ratio / first.ratio;
      return share > LEAST_REVERSE && share < MOST_REVERSE && (used | mask) === all;
    })
    .sort((a, b) => near(a) - near(b));
  return reverse ? { ...falling, reverse } : null;
}

/** Some of the places at random, in rising order; shuffles no more of the list than it needs. */
function drawPlaces(places: number[], count: number, random: Random): number[] {
  for (let i = 0; i < count; i++) {
    const j = random.int(i, places.length - 1);
    [places[i], places[j]] = [places[j]!, places[i]!];
  }
  return places.slice(0, count).sort((a, b) => a - b);
}

/** The best chart among sets of this many elements, drawn at random; null where none of them makes one. */
export function findLayout(skeleton: Skeleton, count: number, random: Random): Layout | null {
  const joins = joinsOf(skeleton);
  const ratios = new Ratios(skeleton, joins);
  const picks = picksOf(count, skeleton.motions[0]!.length - 1);
  const places = [...joins.keys()];
  let best: (Layout & Falling) | null = null;
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const chosen = drawPlaces(places, count, random);
    const own = chosen.map((place) => joins[place]!);
    if (!own.some(([, b]) => b === HOUSING) || !joinsLooseEnds(skeleton, own)) continue;
    const chart = chartOf(ratios, chosen, picks);
    if (chart && (!best || chart.worth > best.worth))
      best = {
        joins: own,
        forward: chart.rows,
        reverse: chart.reverse,
        worth: chart.worth,
        rows: chart.rows,
      };
  }
  return best;
}
