/**
 * A train's equations as plain matrices, for solvers that know nothing of gears. Both forms are square for
 * the ranges measured here: a general solver needs that.
 */
import { CASE, elementOf, MEMBERS, shaftsOf, type Train, willis } from '../../src/core/gears/train.ts';

export interface Equations {
  readonly matrix: number[][];
  readonly right: number[];
  /** Column of the output's speed. */
  readonly output: number;
}

/** Every shaft a column; Willis for each set, two equal speeds for each element, and the input at 1. */
export function allEquations(train: Train, applied: readonly string[]): Equations {
  const shafts = shaftsOf(train);
  const row = (terms: readonly (readonly [string, number])[]) => {
    const out = new Array<number>(shafts.length).fill(0);
    for (const [shaft, factor] of terms) if (shaft !== CASE) out[shafts.indexOf(shaft)]! += factor;
    return out;
  };
  const sets = train.gearsets.map((set) => {
    const factors = willis(set);
    return row(MEMBERS.map((member) => [set[member].shaft, Number(factors[member])]));
  });
  const elements = applied.map((id) => {
    const [first, second] = elementOf(train, id).between;
    return row([
      [first, 1],
      [second, -1],
    ]);
  });
  const matrix = [...sets, ...elements, row([[train.input, 1]])];
  return {
    matrix,
    right: matrix.map((_, r) => (r === matrix.length - 1 ? 1 : 0)),
    output: shafts.indexOf(train.output),
  };
}

/** The same with joined shafts as one column and the known ones (case 0, input 1) put in: one row for each set. */
export function joinedEquations(train: Train, applied: readonly string[]): Equations {
  const group = new Map(shaftsOf(train).map((shaft) => [shaft, shaft]));
  group.set(CASE, CASE);
  for (const id of applied) {
    const [first, second] = elementOf(train, id).between.map((shaft) => group.get(shaft)!) as [
      string,
      string,
    ];
    const kept = [first, second].find((name) => name === CASE || name === group.get(train.input)) ?? first;
    for (const [shaft, name] of group) if (name === first || name === second) group.set(shaft, kept);
  }
  const input = group.get(train.input)!;
  const columns = [...new Set(group.values())].filter((name) => name !== CASE && name !== input);
  const right: number[] = [];
  const matrix = train.gearsets.map((set) => {
    const row = new Array<number>(columns.length).fill(0);
    const factors = willis(set);
    let known = 0;
    for (const member of MEMBERS) {
      const name = group.get(set[member].shaft)!;
      if (name === input) known -= Number(factors[member]);
      else if (name !== CASE) row[columns.indexOf(name)]! += Number(factors[member]);
    }
    right.push(known);
    return row;
  });
  return { matrix, right, output: columns.indexOf(group.get(train.output)!) };
}

/** Plain elimination with partial pivoting, in floating point; NaN where there is no one solution. */
export function solveFloats({ matrix, right }: Equations): number[] {
  const size = matrix.length;
  const rows = matrix.map((row, r) => [...row, right[r]!]);
  for (let column = 0; column < size; column++) {
    let best = column;
    for (let r = column + 1; r < size; r++)
      if (Math.abs(rows[r]![column]!) > Math.abs(rows[best]![column]!)) best = r;
    const pivotRow = rows[best]!;
    rows[best] = rows[column]!;
    rows[column] = pivotRow;
    for (let r = column + 1; r < size; r++) {
      const row = rows[r]!;
      const factor = row[column]! / pivotRow[column]!;
      for (let c = column; c <= size; c++) row[c]! -= factor * pivotRow[c]!;
    }
  }
  const solution = new Array<number>(size).fill(0);
  for (let r = size - 1; r >= 0; r--) {
    let rest = rows[r]![size]!;
    for (let c = r + 1; c < size; c++) rest -= rows[r]![c]! * solution[c]!;
    solution[r] = rest / rows[r]![r]!;
  }
  return solution;
}
