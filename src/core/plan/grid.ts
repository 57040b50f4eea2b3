/**
 * The states of one fact, laid on a grid: logarithmic in stability, a few rows of difficulty. An answer leads
 * between grid points; its value is interpolated linearly, which is the same as moving to the neighbours by
 * chance, so values and probabilities stay consistent. Everything here depends on the memory parameters and the
 * gaps in days alone, never on prices, and is reckoned once per plan.
 */
import {
  difficultyAfter,
  recallAfter,
  stabilityKnown,
  stabilityMissed,
  type Transition,
} from './transition.ts';

export interface GridSize {
  /** Stability points from 0.02 to 36500 days, if none were spared. */
  readonly stabilities: number;
  /** Rows put between the difficulties that histories reach from the first answer. */
  readonly finerDifficulty: boolean;
  /** Stabilities above so many times the longest gap hardly fade: their points stand three times as far apart. */
  readonly sparseAbove?: number;
}

/** Enough for choosing; values are then within 0.001 of the fine grid's (P3). */
export const PLANNING: GridSize = { stabilities: 36, finerDifficulty: false, sparseAbove: 8 };
/** For bounds that are shown. */
export const FINE: GridSize = { stabilities: 96, finerDifficulty: true };
const SPARSE = 3;

const LOW = Math.log(0.02);
const HIGH = Math.log(36500);

export interface Grid {
  readonly transition: Transition;
  readonly columns: number;
  readonly rows: number;
  readonly step: number;
  /** Column from which on steps are longer. */
  readonly sparseFrom: number;
  readonly stabilities: Float64Array;
  readonly difficulties: Float64Array;
  readonly maxGap: number;
  /** Recall after a gap: [gap][column]. */
  readonly recall: Float64Array;
  /** Where the stability after an answer lies, column and part of the way to the next one: [gap][row][column]. */
  readonly knownAt: Float64Array;
  readonly missedAt: Float64Array;
  /** The same for the difficulty after an answer: [row]. */
  readonly knownRow: Place[];
  readonly missedRow: Place[];
}

/** Between index `at` and `at + 1`, `part` of the way. */
export interface Place {
  readonly at: number;
  readonly part: number;
}

function rowsFor(m: Transition, finer: boolean): Float64Array {
  const { known, missed } = m.first;
  const rows = new Set<number>([known.difficulty, missed.difficulty, 10]);
  const misses = (start: number, most: number) => {
    let difficulty = start;
    for (let i = 0; i < most; i++) {
      difficulty = difficultyAfter(m, difficulty, false);
      rows.add(difficulty);
    }
  };
  if (finer) {
    rows.add(1);
    rows.add((known.difficulty + missed.difficulty) / 2);
    misses(known.difficulty, 3);
    misses(missed.difficulty, 3);
  } else misses(missed.difficulty, 1);
  const sorted = [...rows].sort((a, b) => a - b);
  const apart = sorted.filter((x, i) => i === 0 || x - sorted[i - 1]! > 0.05);
  if (apart.at(-1) !== 10) apart[apart.length - 1] = 10;
  return Float64Array.from(apart);
}

type Scale = Pick<Grid, 'columns' | 'step' | 'sparseFrom'>;

/** Kept below the last column, so that there always is a next one. */
const SHORT_OF_LAST = 1e-9;

/** Where a stability lies: 3.25 is a quarter of the way from column 3 to column 4. */
export function along({ columns, step, sparseFrom }: Scale, stability: number): number {
  const x = (Math.log(stability) - LOW) / step;
  const column = x > sparseFrom ? sparseFrom + (x - sparseFrom) / SPARSE : x;
  return Math.min(Math.max(column, 0), columns - 1 - SHORT_OF_LAST);
}

export function columnOf(grid: Scale, stability: number): Place {
  const x = along(grid, stability);
  const at = Math.floor(x);
  return { at, part: x - at };
}

export function rowOf(difficulties: Float64Array, difficulty: number): Place {
  let at = 0;
  while (at < difficulties.length - 2 && difficulties[at + 1]! <= difficulty) at++;
  const [low, high] = [difficulties[at]!, difficulties[at + 1]!];
  return { at, part: Math.min(Math.max((difficulty - low) / (high - low), 0), 1) };
}

/** Lays the grid for gaps of 1 to `maxGap` days. */
export function layGrid(transition: Transition, maxGap: number, size: GridSize): Grid {
  const difficulties = rowsFor(transition, size.finerDifficulty);
  const step = (HIGH - LOW) / (size.stabilities - 1);
  const last = size.stabilities - 1;
  const dense = size.sparseAbove ? Math.ceil((Math.log(size.sparseAbove * maxGap) - LOW) / step) : last;
  const sparseFrom = Math.min(last, Math.max(1, dense));
  const columns = sparseFrom + Math.ceil((last - sparseFrom) / SPARSE) + 1;
  const scale = { columns, step, sparseFrom };
  const rows = difficulties.length;
  const cells = rows * columns;
  const stabilities = Float64Array.from({ length: columns }, (_, c) =>
    Math.exp(LOW + step * (c + (SPARSE - 1) * Math.max(0, c - sparseFrom))),
  );
  const recall = new Float64Array((maxGap + 1) * columns);
  const knownAt = new Float64Array((maxGap + 1) * cells);
  const missedAt = new Float64Array((maxGap + 1) * cells);
  for (let gap = 0; gap <= maxGap; gap++)
    for (let c = 0; c < columns; c++) {
      const stability = stabilities[c]!;
      const r = recallAfter(transition, gap, stability);
      recall[gap * columns + c] = r;
      for (let row = 0; row < rows; row++) {
        const at = gap * cells + row * columns + c;
        const difficulty = difficulties[row]!;
        knownAt[at] = along(scale, stabilityKnown(transition, stability, difficulty, r));
        missedAt[at] = along(scale, stabilityMissed(transition, stability, difficulty, r));
      }
    }
  const rowAfter = (known: boolean) =>
    Array.from(difficulties, (d) => rowOf(difficulties, difficultyAfter(transition, d, known)));
  return {
    transition,
    columns,
    rows,
    step,
    sparseFrom,
    stabilities,
    difficulties,
    maxGap,
    recall,
    knownAt,
    missedAt,
    knownRow: rowAfter(true),
    missedRow: rowAfter(false),
  };
}
