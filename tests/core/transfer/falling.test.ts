import { describe, expect, test } from 'vitest';
import { type Random, randomFrom } from '../../../src/core/random.ts';
import { fallingRows } from '../../../src/core/transfer/falling.ts';
import type { LayoutRow } from '../../../src/core/transfer/layout.ts';

const row = (mask: number, ratio: number): LayoutRow => ({ mask, ratio });
const ratios = (rows: readonly LayoutRow[] | undefined) => rows?.map(({ ratio }) => ratio);

describe('U3 U4 the rows of a chart, worked by hand', () => {
  test.each<[string, readonly LayoutRow[], readonly number[] | undefined]>([
    [
      'four steps of one swap',
      [row(0b0011, 3), row(0b0101, 2), row(0b1001, 1.5), row(0b1010, 1)],
      [3, 2, 1.5, 1],
    ],
    [
      'a row too near its neighbour is left out',
      [row(0b0011, 3), row(0b0101, 2), row(0b0110, 1.9), row(0b1001, 1.5), row(0b1010, 1)],
      [3, 2, 1.5, 1], // 2/1.9 is below 1.15, and 1.9/1.5 after two double shifts would be no better
    ],
    [
      'a step too large breaks it off',
      [row(0b0011, 5), row(0b0101, 2), row(0b1001, 1.5), row(0b1010, 1)],
      undefined, // 5/2; from 2 on the first range would not reduce enough
    ],
    [
      'two double shifts are too many',
      [row(0b0011, 3), row(0b1100, 2), row(0b0110, 1.5), row(0b1001, 1)],
      undefined,
    ],
    ['too few rows', [row(0b0011, 3), row(0b0101, 2), row(0b1001, 1.5)], undefined],
  ])('%s', (_, rows, expected) => {
    expect(ratios(fallingRows(rows)?.rows)).toEqual(expected);
  });
});

/** The most ranges any choice of rows gives, by trying all of them. */
function most(rows: readonly LayoutRow[]): number {
  let best = 0;
  for (let mask = 0; mask < 2 ** rows.length; mask++) {
    const picked = rows.filter((_, bit) => mask & (1 << bit)).sort((a, b) => b.ratio - a.ratio);
    if (picked.length < 4 || picked.length <= best || picked[0]!.ratio < 2.2) continue;
    const bits = (value: number) => value.toString(2).replaceAll('0', '').length;
    const shifts = picked.slice(1).map((to, index) => ({
      step: picked[index]!.ratio / to.ratio,
      swaps: bits(picked[index]!.mask & ~to.mask),
    }));
    const fine = shifts.every(({ step, swaps }) => step >= 1.15 && step <= 2.2 && swaps <= 2);
    if (fine && shifts.filter(({ swaps }) => swaps === 2).length <= 1) best = picked.length;
  }
  return best;
}

const randomRows = (random: Random): LayoutRow[] => {
  const masks = random.sample([0b00011, 0b00101, 0b01001, 0b10001, 0b00110, 0b01010, 0b10010, 0b01100, 0b10100, 0b11000], random.int(4, 9));
  return masks.map((mask) => row(mask, random.int(60, 500) / 100));
}; // biome-ignore format: one list

test('no choice of rows has more ranges, where double shifts do not come in the way', () => {
  let met = 0;
  for (let seed = 0; seed < 300; seed++) {
    const rows = randomRows(randomFrom(seed));
    const found = fallingRows(rows)?.rows.length ?? 0;
    const best = most(rows);
    expect(found).toBeLessThanOrEqual(best);
    // the longest way to a row may have spent the one double shift that a longer way on would need
    if (found === best) met++;
  }
  expect(met).toBeGreaterThan(280);
});
