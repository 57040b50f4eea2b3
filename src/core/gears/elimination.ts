/**
 * Exact elimination of integer equations. Fraction-free (Bareiss, docs/sources.md [B1]): every division is
 * exact, so no fraction is ever normalised on the way, which is what makes it quick.
 */
import { type Rational, rational } from '../rational.ts';

/** What the equations say of each unknown: its value, or null where they leave it open. */
export type Reading = readonly (Rational | null)[];

/**
 * Reads every unknown out of `rows`; each row holds the coefficients of the unknowns, then the right side.
 * Null when the equations contradict each other. The rows are used up.
 */
export function eliminate(rows: bigint[][], unknowns: number): Reading | null {
  let previous = 1n;
  let rank = 0;
  const pivots: number[] = [];
  for (let column = 0; column < unknowns && rank < rows.length; column++) {
    let found = rank;
    while (found < rows.length && rows[found]![column] === 0n) found++;
    if (found === rows.length) continue;
    const pivotRow = rows[found]!;
    rows[found] = rows[rank]!;
    rows[rank] = pivotRow;
    const pivot = pivotRow[column]!;
    for (let r = 0; r < rows.length; r++) {
      if (r === rank) continue;
      const row = rows[r]!;
      const factor = row[column]!;
      for (let c = 0; c <= unknowns; c++) {
        const value = row[c]!;
        if (factor === 0n && value === 0n) continue;
        row[c] = (pivot * value - factor * pivotRow[c]!) / previous;
      }
    }
    previous = pivot;
    pivots.push(column);
    rank++;
  }
  for (let r = rank; r < rows.length; r++) if (rows[r]![unknowns] !== 0n) return null;

  const reading: (Rational | null)[] = new Array(unknowns).fill(null);
  for (const [r, column] of pivots.entries()) {
    const row = rows[r]!;
    const settled = row.every((value, c) => c === column || c === unknowns || value === 0n);
    if (settled) reading[column] = rational(row[unknowns]!, row[column]!);
  }
  return reading;
}
