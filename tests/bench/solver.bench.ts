/**
 * The gear solver against general ones, on trains of four gearsets, all ranges. Ours reads the train, joins
 * shafts, eliminates and tells the state; the baselines are given their matrices ready-made and only solve.
 * "Every shaft a column" is the same equations in full. "Given joined shafts" hands the baseline our own
 * reduction for nothing, so it is reported without a floor.
 */
import { type Fraction, fraction, lusolve } from 'mathjs';
import { solveSpeeds } from '../../src/core/gears/solve.ts';
import type { Train } from '../../src/core/gears/train.ts';
import { PUBLISHED, shippedDecks } from '../units.ts';
import { allEquations, type Equations, joinedEquations, solveFloats } from './equations.ts';
import type { Suite } from './suite.ts';

/** How many times faster our solver must be than mathjs on the same equations. */
const FASTER_THAN_MATHJS = 10;

type FractionMatrix = Fraction[][];
/** mathjs types its solver for numbers; it takes its own fractions as well. */
const solveFractions = lusolve as unknown as (matrix: FractionMatrix, right: Fraction[]) => FractionMatrix;

const inFractions = ({ matrix, right, output }: Equations) => ({
  matrix: matrix.map((row) => row.map((value) => fraction(value))),
  right: right.map((value) => fraction(value)),
  output,
});

function suiteOf(title: string, train: Train, rows: readonly (readonly string[])[]): Suite {
  const all = rows.map((applied) => inFractions(allEquations(train, applied)));
  const joined = rows.map((applied) => inFractions(joinedEquations(train, applied)));
  const floats = rows.map((applied) => joinedEquations(train, applied));
  const exact = () => rows.map((applied) => solveSpeeds(train, applied));
  const byMathjs = (systems: typeof all) => systems.map(({ matrix, right }) => solveFractions(matrix, right));

  return {
    title,
    count: rows.length,
    unit: 'range',
    subject: { name: 'our solver, from train to state and ratio', run: exact },
    baselines: [
      {
        name: 'mathjs lusolve in fractions, every shaft a column',
        run: () => byMathjs(all),
        atLeast: FASTER_THAN_MATHJS,
      },
      { name: 'mathjs lusolve in fractions, given joined shafts', run: () => byMathjs(joined) },
      { name: 'floating-point elimination, given joined shafts', run: () => floats.map(solveFloats) },
    ],
    agree() {
      const ratios = exact().map(({ ratio }) => ratio!);
      const [first, second] = [all, joined].map(byMathjs);
      const float = floats.map(solveFloats);
      for (const [index, ratio] of ratios.entries()) {
        const speed = ratio.inverse().toFraction();
        const direct = joined[index]!.output < 0;
        const found = [
          first![index]![all[index]!.output]![0]!.toFraction(),
          direct ? '1' : second![index]![joined[index]!.output]![0]!.toFraction(),
        ];
        if (found.some((other) => other !== speed))
          throw new Error(`${title}, row ${index + 1}: ${speed} here, ${found.join(' and ')} there`);
        const near = direct ? 1 : float[index]![floats[index]!.output]!;
        if (!(Math.abs(near * ratio.valueOf() - 1) < 1e-9))
          throw new Error(`${title}, row ${index + 1}: ${speed} here, ${near} in floating point`);
      }
    },
  };
}

const published = PUBLISHED.find((train) => train.id === 'seven-speed-reversed-ravigneaux')!;
const invented = shippedDecks().find((deck) => deck.id === 'dunlin-9')!;

export const solver: readonly Suite[] = [
  suiteOf(
    'published seven-speed, 4 gearsets, 9 ranges',
    published,
    published.chart.map((row) => row.applied),
  ),
  suiteOf(
    'invented nine-speed, 4 gearsets, 10 ranges',
    invented.train,
    invented.chart.ranges.map((row) => row.applied),
  ),
];
