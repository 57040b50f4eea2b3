import { describe, expect, test } from 'vitest';
import { bestTests, compareChoices, isFound, rankTests, weigh } from '../../../src/core/diagnosis/choose.ts';
import { bestStrategy, MOST_SUSPECTS, pathOf } from '../../../src/core/diagnosis/strategy.ts';
import { areAlike, separates, type Table } from '../../../src/core/diagnosis/table.ts';
import { testId } from '../../../src/core/diagnosis/test.ts';
import type { Fault } from '../../../src/core/faults/fault.ts';
import { randomFrom } from '../../../src/core/random.ts';
import { test as asked, randomTable, suspect, tableFrom } from './tables.ts';

const names = (choices: readonly { test: ReturnType<typeof asked> }[]) =>
  choices.map(({ test }) => testId(test));

describe('worked by hand', () => {
  // six suspects; t0 splits 3-3, t1 1-5, t2 2-2-2, t3 not at all
  const table = tableFrom({ A: 'aaaa', B: 'abaa', C: 'abba', D: 'bbba', E: 'bbca', F: 'bbca' });
  const all = table.suspects;
  const one = () => 1;

  test.each([
    ['t0', '3', 3, 1], // (9 + 9)/6; log2 2
    ['t1', '13/3', 5, 0.65], // (1 + 25)/6; 1/6 log2 6 + 5/6 log2 6/5
    ['t2', '2', 2, 1.585], // (4 + 4 + 4)/6; log2 3
    ['t3', '6', 6, 0],
  ])('D8 D9 %s leaves %s on average, %i at worst, and tells %d bits', (name, remaining, worst, bits) => {
    const choice = weigh(table, asked(name), all)!;
    expect(choice.remaining.toFraction()).toBe(remaining);
    expect(choice.worst).toBe(worst);
    expect(choice.bits).toBeCloseTo(bits, 3);
  });

  test('D8 cost divides: at 2 points t2 strikes out 4/2, less than t0 with 3/1', () => {
    const cost = ({ row }: { row?: string }) => (row === 't2' ? 2 : 1);
    expect(names(rankTests(table, all, 'remaining', one))).toEqual(['road:t2', 'road:t0', 'road:t1']);
    expect(names(rankTests(table, all, 'remaining', cost as never))).toEqual([
      'road:t0',
      'road:t2',
      'road:t1',
    ]);
    // by information 1.585/2 = 0.79 still loses to 1, and beats 0.65
    expect(names(rankTests(table, all, 'entropy', cost as never))).toEqual(['road:t0', 'road:t2', 'road:t1']);
  });

  test('the two rules can differ', () => {
    // of 8: t0 gives 4-4 (4 left, 1 bit), t1 gives 5-1-1-1 (28/8 = 3.5 left, 1.549 bits) at 1.2 times the cost
    const rows = { A: 'aa', B: 'aa', C: 'aa', D: 'aa', E: 'ba', F: 'bb', G: 'bc', H: 'bd' };
    const eight = tableFrom(rows);
    const cost = ({ row }: { row?: string }) => (row === 't0' ? 5 : 6);
    expect(names(bestTests(eight, eight.suspects, 'remaining', cost as never))).toEqual(['road:t0']); // 4/5 > 4.5/6
    expect(names(bestTests(eight, eight.suspects, 'entropy', cost as never))).toEqual(['road:t1']); // 1/5 < 1.549/6
  });

  test('D10 equals are all named, what is unsettled or tells nothing is not', () => {
    const tied = tableFrom({ A: 'aaa?', B: 'aba?', C: 'bba?', D: 'bab?' });
    expect(names(bestTests(tied, tied.suspects, 'remaining', one))).toEqual(['road:t0', 'road:t1']);
    expect(names(rankTests(tied, tied.suspects, 'entropy', one))).toEqual(['road:t0', 'road:t1', 'road:t2']);
  });

  test('D11 the best strategy, on average and at worst', () => {
    // t2 first (cost 1): A | B stay together, C | D, E = F. A, B need t1; C, D need t0; E, F are alike.
    // 6 × 1 + 2 × 1 + 2 × 1 + 0 = 10 over 6; at worst 2
    expect(bestStrategy(table, all, 'average', one)!.cost.toFraction()).toBe('5/3');
    expect(bestStrategy(table, all, 'worst', one)!.cost.toFraction()).toBe('2');
    expect(pathOf(table, bestStrategy(table, all, 'average', one)!, suspect('A')).map(testId)).toEqual([
      'road:t2',
      'road:t1',
    ]);
  });
});

/** The least cost over every decision tree there is, by plain recursion: no memory, no cutting short. */
function bruteBest(
  table: Table,
  suspects: readonly Fault[],
  cost: (test: Table['tests'][number]) => number,
  aim: 'average' | 'worst',
): number {
  let best = Number.POSITIVE_INFINITY;
  for (const test of table.tests) {
    const readings = suspects.map((one) => table.reading(one, test));
    if (readings.includes(null) || new Set(readings).size < 2) continue;
    const parts = [...new Set(readings)].map((reading) =>
      suspects.filter((_, index) => readings[index] === reading),
    );
    const rest = parts.map((part) => bruteBest(table, part, cost, aim));
    const total =
      aim === 'worst'
        ? cost(test) + Math.max(...rest)
        : cost(test) * suspects.length + rest.reduce((sum, value) => sum + value, 0);
    best = Math.min(best, total);
  }
  return Number.isFinite(best) ? best : 0;
}

describe('against trying everything, on random small tables', () => {
  const cases = Array.from({ length: 300 }, (_, seed) => {
    const random = randomFrom(seed);
    return randomTable(random, random.int(1, 6), random.int(1, 5), seed % 3 === 0);
  });

  test('D11 no strategy is better', () => {
    for (const { table, cost } of cases)
      for (const aim of ['average', 'worst'] as const) {
        const brute = bruteBest(table, table.suspects, cost, aim);
        const { cost: least } = bestStrategy(table, table.suspects, aim, cost)!;
        const share = aim === 'average' ? brute / table.suspects.length : brute;
        expect(least.valueOf()).toBeCloseTo(share, 9);
      }
  });

  test('D11 walking the strategy costs what it says, and ends where nothing more can be told apart', () => {
    for (const { table, cost } of cases) {
      const average = bestStrategy(table, table.suspects, 'average', cost)!;
      const worst = bestStrategy(table, table.suspects, 'worst', cost)!;
      const walk = (strategy: typeof average, cause: Fault) =>
        pathOf(table, strategy, cause).reduce((sum, one) => sum + cost(one), 0);
      const costs = table.suspects.map((cause) => walk(average, cause));
      expect(costs.reduce((sum, value) => sum + value, 0) / costs.length).toBeCloseTo(
        average.cost.valueOf(),
        9,
      );
      expect(Math.max(...table.suspects.map((cause) => walk(worst, cause)))).toBe(worst.cost.valueOf());
      for (const cause of table.suspects) {
        const made = pathOf(table, average, cause);
        const left = table.suspects.filter((other) =>
          made.every((one) => !separates(table, one, cause, other)),
        );
        expect(isFound(table, left)).toBe(true);
      }
    }
  });

  test('D8 D9 the order is that of the formulas in floating point', () => {
    for (const { table, cost } of cases) {
      const total = table.suspects.length;
      const value = (rule: string, sizes: readonly number[], points: number) =>
        rule === 'remaining'
          ? (total - sizes.reduce((sum, k) => sum + (k * k) / total, 0)) / points
          : (Math.log(total) - sizes.reduce((sum, k) => sum + (k / total) * Math.log(k), 0)) / points;
      for (const rule of ['remaining', 'entropy'] as const) {
        const ranked = rankTests(table, table.suspects, rule, cost);
        const values = ranked.map(({ branches, cost: points }) =>
          value(rule, [...branches.values()].map(({ length }) => length), points),
        ); // biome-ignore format: one expression
        for (const [index, one] of values.entries())
          if (index > 0) {
            expect(one).toBeLessThanOrEqual(values[index - 1]! + 1e-9);
            const tied = compareChoices(ranked[index]!, ranked[index - 1]!, rule) === 0;
            expect(tied).toBe(Math.abs(one - values[index - 1]!) < 1e-9);
          }
      }
    }
  });

  test('D6 alike suspects are those that no test separates', () => {
    for (const { table } of cases)
      for (const a of table.suspects)
        for (const b of table.suspects)
          expect(areAlike(table, a, b)).toBe(
            table.tests.every((one) => {
              const [x, y] = [table.reading(a, one), table.reading(b, one)];
              return x === null || y === null || x === y;
            }),
          );
  });
});

test('D11 too many suspects to try, or none, have no strategy', () => {
  const { table, cost } = randomTable(randomFrom(1), MOST_SUSPECTS + 1, 3);
  expect(bestStrategy(table, table.suspects, 'average', cost)).toBeNull();
  expect(bestStrategy(table, [], 'average', cost)).toBeNull();
  expect(bestStrategy(table, table.suspects.slice(1), 'average', cost)).not.toBeNull();
});

test('a suspect or a test that the table lacks is refused', () => {
  const table = tableFrom({ A: 'a' });
  expect(() => table.reading(suspect('B'), asked('t0'))).toThrow('element-fails:B');
  expect(() => table.reading(suspect('A'), asked('t9'))).toThrow('road:t9');
});
