/**
 * A second solver, written apart from the first: floating point, every shaft its own unknown, Willis as the
 * quotient (ws - wc) / (wr - wc), elimination with full pivoting, and states read off the null space.
 */
import { CASE, elementOf, type Train } from '../../../src/core/gears/train.ts';

const TINY = 1e-9;

export interface FloatSolution {
  readonly state: 'drives' | 'free' | 'output-held' | 'tied-up';
  readonly speeds: ReadonlyMap<string, number | null>;
  /** How many speeds can be chosen at will when the input is not driven. */
  readonly freedoms: number;
}

interface Echelon {
  /** Columns in the order they were pivoted. */
  readonly pivots: number[];
  readonly rows: number[][];
}

/** Reduced echelon form; the columns from `width` on are carried along but never pivoted. */
function reduce(matrix: number[][], width: number): Echelon {
  const rows = matrix.map((row) => {
    const size = Math.max(...row.map(Math.abs), TINY);
    return row.map((value) => value / size);
  });
  const pivots: number[] = [];
  for (let rank = 0; rank < rows.length; rank++) {
    let [best, at, column] = [TINY, -1, -1];
    for (let r = rank; r < rows.length; r++)
      for (let c = 0; c < width; c++)
        if (Math.abs(rows[r]![c]!) > best) [best, at, column] = [Math.abs(rows[r]![c]!), r, c];
    if (at < 0) break;
    [rows[rank], rows[at]] = [rows[at]!, rows[rank]!];
    const pivot = rows[rank]![column]!;
    rows[rank] = rows[rank]!.map((value) => value / pivot);
    for (let r = 0; r < rows.length; r++) {
      const factor = rows[r]![column]!;
      if (r !== rank) rows[r] = rows[r]!.map((value, c) => value - factor * rows[rank]![c]!);
    }
    pivots.push(column);
  }
  return { pivots, rows };
}

/** `slips` makes the two shafts of an applied element differ: first - second. */
export function solveInFloats(
  train: Train,
  applied: readonly string[],
  slips: Readonly<Record<string, number>> = {},
): FloatSolution {
  const names = new Set([train.input, train.output]);
  for (const { sun, ring, carrier } of train.gearsets)
    for (const { shaft } of [sun, ring, carrier]) names.add(shaft);
  for (const { between } of train.elements) for (const shaft of between) names.add(shaft);
  names.delete(CASE);
  const shafts = [...names];
  const width = shafts.length;
  const row = (terms: readonly (readonly [string, number])[], right: number) => {
    const out = new Array<number>(width + 1).fill(0);
    for (const [shaft, factor] of terms) if (shaft !== CASE) out[shafts.indexOf(shaft)]! += factor;
    out[width] = right;
    return out;
  };
  const equations = train.gearsets.map(({ kind, sun, ring, carrier }) => {
    const held = (kind === 'simple' ? -1 : 1) * (ring.teeth / sun.teeth);
    // (ws - wc) = held × (wr - wc)
    return row([[sun.shaft, 1], [carrier.shaft, held - 1], [ring.shaft, -held]], 0); // biome-ignore format: one line
  });
  for (const id of applied) {
    const [first, second] = elementOf(train, id).between;
    equations.push(row([[first, 1], [second, -1]], slips[id] ?? 0)); // biome-ignore format: one line
  }
  const freedoms = width - reduce(equations, width).pivots.length;
  const driven = reduce([...equations, row([[train.input, 1]], 1)], width);
  const rank = driven.pivots.length;
  if (driven.rows.slice(rank).some((rest) => Math.abs(rest[width]!) > TINY))
    return { state: 'tied-up', speeds: new Map(), freedoms };

  const open = shafts.map((_, c) => c).filter((c) => !driven.pivots.includes(c));
  const speeds = new Map(
    shafts.map((shaft, c) => {
      const pivotRow = driven.rows[driven.pivots.indexOf(c)];
      const settled = pivotRow && open.every((other) => Math.abs(pivotRow[other]!) < TINY);
      return [shaft, settled ? pivotRow[width]! : null];
    }),
  );
  const out = speeds.get(train.output)!;
  const state = out === null ? 'free' : Math.abs(out) < TINY ? 'output-held' : 'drives';
  return { state, speeds, freedoms };
}
