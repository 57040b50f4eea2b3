import { describe, expect, test } from 'vitest';
import { eliminate } from '../../../src/core/gears/elimination.ts';
import { type Random, randomFrom } from '../../../src/core/random.ts';
import { makeRational } from '../../../src/core/rational.ts';

type Matrix = readonly (readonly bigint[])[];

const read = (rows: readonly (readonly number[])[], unknowns: number) =>
  eliminate(
    rows.map((row) => row.map(BigInt)),
    unknowns,
  )?.map((value) => value && makeRational(value)) ?? 'contradiction';

// Worked by hand; each row is the coefficients, then the right side.
const WORKED: readonly [name: string, rows: number[][], unknowns: number, reading: unknown][] = [
  ['one equation', [[2, 3]], 1, ['3/2']],
  ['two equations', [[1, 1, 3], [1, -1, 1]], 2, ['2', '1']],
  ['rows in need of a swap', [[0, 2, 4], [3, 1, 5]], 2, ['1', '2']],
  ['one unknown settled, two open', [[1, 1, 0, 5], [0, 0, 4, 2]], 3, [null, null, '1/2']],
  ['an unknown that nothing mentions', [[0, 7, 14]], 2, [null, '2']],
  ['settled although another is open', [[1, 1, 1, 6], [1, 1, 2, 9]], 3, [null, null, '3']],
  ['the same equation twice', [[1, 2, 3], [2, 4, 6]], 2, [null, null]],
  ['a contradiction', [[1, 2, 3], [2, 4, 7]], 2, 'contradiction'],
  ['a contradiction beside a settled unknown', [[1, 0, 1], [0, 0, 1]], 2, 'contradiction'],
  ['more equations than unknowns, agreeing', [[1, 2], [2, 4], [3, 6]], 1, ['2']],
  ['no equations', [], 2, [null, null]],
  ['no unknowns, agreeing', [[0]], 0, []],
  ['no unknowns, contradicting', [[1]], 0, 'contradiction'],
  ['negative numbers', [[-2, 4, -2], [3, 3, 12]], 2, ['3', '1']],
]; // biome-ignore format: a table reads across

test.each(WORKED)('reads %s', (_, rows, unknowns, reading) => {
  expect(read(rows, unknowns)).toEqual(reading);
});

/** Leibniz's expansion: slow, and nothing like elimination. */
function determinant(m: Matrix): bigint {
  if (m.length === 0) return 1n;
  const [top, ...rest] = m;
  return top!.reduce((sum, value, column) => {
    if (value === 0n) return sum;
    const minor = determinant(rest.map((row) => row.filter((_, c) => c !== column)));
    return sum + (column % 2 === 0 ? value : -value) * minor;
  }, 0n);
}

function choices(count: number, size: number): number[][] {
  if (size === 0) return [[]];
  if (count < size) return [];
  const withLast = choices(count - 1, size - 1).map((set) => [...set, count - 1]);
  return [...choices(count - 1, size), ...withLast];
}

/** The size of the largest minor that is not 0. */
function rankOf(m: Matrix, columns: number): number {
  for (let size = Math.min(m.length, columns); size > 0; size--)
    for (const rows of choices(m.length, size))
      for (const picked of choices(columns, size))
        if (determinant(rows.map((r) => picked.map((c) => m[r]![c]!))) !== 0n) return size;
  return 0;
}

function randomRows(random: Random, unknowns: number): bigint[][] {
  const rows = Array.from({ length: random.int(1, 4) }, () =>
    Array.from({ length: unknowns + 1 }, () => BigInt(random.pick([0, 0, 0, 1, -1, 2, -3, 5]))),
  );
  // Often a row that follows from the others, so that ranks fall short.
  if (random.int(0, 1) === 1) {
    const [a, b] = [random.pick(rows), random.pick(rows)];
    rows.push(a.map((value, c) => 2n * value - b[c]!));
  }
  return rows;
}

describe('over 400 random systems', () => {
  const systems = Array.from({ length: 400 }, (_, seed) => {
    const random = randomFrom(seed);
    const unknowns = random.int(1, 4);
    const rows = randomRows(random, unknowns);
    const reading = eliminate(
      rows.map((row) => [...row]),
      unknowns,
    );
    return { rows, unknowns, reading };
  });

  test('contradiction exactly where the right side raises the rank (Rouché and Capelli)', () => {
    for (const { rows, unknowns, reading } of systems)
      expect(reading === null).toBe(rankOf(rows, unknowns + 1) > rankOf(rows, unknowns));
    expect(systems.some(({ reading }) => reading === null)).toBe(true);
  });

  test('an unknown is open exactly where asking for it alone would raise the rank', () => {
    for (const { rows, unknowns, reading } of systems)
      reading?.forEach((value, c) => {
        const alone = Array.from({ length: unknowns }, (_, column) => (column === c ? 1n : 0n));
        expect(value === null).toBe(rankOf([...rows, alone], unknowns) > rankOf(rows, unknowns));
      });
  });

  test('a settled unknown is the quotient of determinants (Cramer)', () => {
    let compared = 0;
    for (const { rows, unknowns, reading } of systems) {
      if (!reading?.every((value) => value !== null)) continue;
      const picked = choices(rows.length, unknowns).find(
        (set) => determinant(set.map((r) => rows[r]!.slice(0, unknowns))) !== 0n,
      )!;
      const square = picked.map((r) => rows[r]!);
      const below = determinant(square.map((row) => row.slice(0, unknowns)));
      reading.forEach((value, c) => {
        const above = determinant(
          square.map((row) => row.slice(0, unknowns).map((x, column) => (column === c ? row[unknowns]! : x))),
        );
        expect(value!.mul(below).equals(above)).toBe(true);
        compared++;
      });
    }
    expect(compared).toBeGreaterThan(100);
  });
});

test('large whole numbers stay exact', () => {
  const big = 10n ** 40n + 1n;
  const reading = eliminate(
    [
      [big, 1n, big],
      [1n, big, 1n],
    ],
    2,
  );
  expect(reading!.map((value) => makeRational(value!))).toEqual(['1', '0']);
});
