/**
 * The speeds of a train by a second route, so that a family can prove its answers without the solver that made
 * them: every shaft an unknown of its own, the input among them, plain floating point, Gauss-Jordan with the
 * largest pivot. Never shown and never an answer; it only says whether an answer holds.
 */
import { CASE, elementOf, MEMBERS, shaftsOf, type Train, willis } from '../gears/train.ts';

/** Below this share of the largest coefficient a number counts as 0. */
const NOTHING = 1e-9;

/** Speed of each shaft per turn of the input, null where it is open; null for all when the input cannot turn. */
export function floatSpeeds(
  train: Train,
  applied: readonly string[],
): ReadonlyMap<string, number | null> | null {
  const others = shaftsOf(train).filter((shaft) => shaft !== train.input);
  const columns = [...others, train.input];
  const last = columns.length - 1;
  const rowOf = (terms: readonly (readonly [string, number])[]) => {
    const row = columns.map(() => 0);
    for (const [shaft, coefficient] of terms) if (shaft !== CASE) row[columns.indexOf(shaft)]! += coefficient;
    return row;
  };
  const rows = [
    ...train.gearsets.map((set) => {
      const coefficients = willis(set);
      const scale = set.sun.teeth + set.ring.teeth;
      return rowOf(MEMBERS.map((member) => [set[member].shaft, Number(coefficients[member]) / scale]));
    }),
    ...applied.map((id) => {
      const [first, second] = elementOf(train, id).between;
      return rowOf([
        [first, 1],
        [second, -1],
      ]);
    }),
  ];

  const pivotRows = new Map<number, number[]>();
  let rank = 0;
  for (let column = 0; column <= last && rank < rows.length; column++) {
    let best = rank;
    for (let r = rank; r < rows.length; r++)
      if (Math.abs(rows[r]![column]!) > Math.abs(rows[best]![column]!)) best = r;
    const pivotRow = rows[best]!;
    const pivot = pivotRow[column]!;
    if (Math.abs(pivot) < NOTHING) continue;
    rows[best] = rows[rank]!;
    rows[rank] = pivotRow;
    for (let c = 0; c <= last; c++) pivotRow[c]! /= pivot;
    for (const row of rows) {
      if (row === pivotRow) continue;
      const factor = row[column]!;
      for (let c = 0; c <= last; c++) row[c]! -= factor * pivotRow[c]!;
    }
    pivotRows.set(column, pivotRow);
    rank++;
  }

  if (pivotRows.has(last)) return null;
  return new Map(
    columns.map((shaft, column) => {
      if (column === last) return [shaft, 1];
      const row = pivotRows.get(column);
      const settled = row?.every((value, c) => c === column || c === last || Math.abs(value) < NOTHING);
      return [shaft, settled ? -row![last]! : null];
    }),
  );
}

/** Output speed per turn of the input by the second route; null when open or when the input cannot turn. */
export function floatOutput(train: Train, applied: readonly string[]): number | null {
  return floatSpeeds(train, applied)?.get(train.output) ?? null;
}
