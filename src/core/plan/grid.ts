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
  /** Stability points from 0.02 to 36500 days. */
  readonly stabilities: number;
  /** Rows put between the difficulties that histories reach from the first answer. */
  readonly finerDifficulty: boolean;
}

/** Enough for choosing; values are then within 0.001 of the fine grid's (P3). */
export const PLANNING: GridSize = { stabilities: 40, finerDifficulty: false };
/** For bounds and forecasts that are shown. */
export const FINE: GridSize = { stabilities: 96, finerDifficulty: true };

const LOW = Math.log(0.02);
const HIGH = Math.log(36500);

export interface Grid {
  readonly transition: Transition;
  readonly columns: number;
  readonly rows: number;
  readonly step: number;
  readonly stabilities: Float64Array;
  readonly difficulties: Float64Array;
  readonly maxGap: number;
  /** Recall after a gap: [gap][column]. */
  readonly recall: Float64Array;
  /** Column below the stability after an answer, and how far towards the next one: [gap][row][column]. */
  readonly knownColumn: Int32Array;
  readonly knownPart: Float64Array;
  readonly missedColumn: Int32Array;
  readonly missedPart: Float64Array;
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
  const rows = new Set<number>([1, 10]);
  for (const start of [m.first.known.difficulty, m.first.missed.difficulty]) {
    let difficulty = start;
    for (let misses = 0; misses < (finer ? 4 : 2); misses++) {
      rows.add(difficulty);
      difficulty = difficultyAfter(m, difficulty, false);
    }
  }
  rows.add((m.first.known.difficulty + m.first.missed.difficulty) / 2);
  const sorted = [...rows].sort((a, b) => a - b);
  const apart = sorted.filter((x, i) => i === 0 || x - sorted[i - 1]! > 0.05);
  if (apart.at(-1) !== 10) apart[apart.length - 1] = 10;
  return Float64Array.from(apart);
}

export function columnOf(grid: Pick<Grid, 'columns' | 'step'>, stability: number): Place {
  const x = (Math.log(stability) - LOW) / grid.step;
  const at = Math.min(Math.max(Math.floor(x), 0), grid.columns - 2);
  return { at, part: Math.min(Math.max(x - at, 0), 1) };
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
  const columns = size.stabilities;
  const rows = difficulties.length;
  const step = (HIGH - LOW) / (columns - 1);
  const cells = rows * columns;
  const stabilities = Float64Array.from({ length: columns }, (_, c) => Math.exp(LOW + c * step));
  const recall = new Float64Array((maxGap + 1) * columns);
  const knownColumn = new Int32Array((maxGap + 1) * cells);
  const knownPart = new Float64Array((maxGap + 1) * cells);
  const missedColumn = new Int32Array((maxGap + 1) * cells);
  const missedPart = new Float64Array((maxGap + 1) * cells);
  for (let gap = 0; gap <= maxGap; gap++)
    for (let c = 0; c < columns; c++) {
      const stability = stabilities[c]!;
      const r = recallAfter(transition, gap, stability);
      recall[gap * columns + c] = r;
      for (let row = 0; row < rows; row++) {
        const at = gap * cells + row * columns + c;
        const difficulty = difficulties[row]!;
        const known = columnOf({ columns, step }, stabilityKnown(transition, stability, difficulty, r));
        const missed = columnOf({ columns, step }, stabilityMissed(transition, stability, difficulty, r));
        knownColumn[at] = known.at;
        knownPart[at] = known.part;
        missedColumn[at] = missed.at;
        missedPart[at] = missed.part;
      }
    }
  const rowAfter = (known: boolean) =>
    Array.from(difficulties, (d) => rowOf(difficulties, difficultyAfter(transition, d, known)));
  return {
    transition,
    columns,
    rows,
    step,
    stabilities,
    difficulties,
    maxGap,
    recall,
    knownColumn,
    knownPart,
    missedColumn,
    missedPart,
    knownRow: rowAfter(true),
    missedRow: rowAfter(false),
  };
}
