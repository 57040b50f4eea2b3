/**
 * How fast the output can turn at all with the input at 1, by Fourier and Motzkin's elimination: gearsets and
 * friction elements are equations, each one-way is an inequality. It knows nothing of torques or of trying
 * combinations. In drive the load holds the output as near to standing as the range lets it; in coast it
 * drives it as far from standing.
 */
import { CASE, type Train, willis } from '../../../src/core/gears/train.ts';
import { type Rational, rational } from '../../../src/core/rational.ts';

/** factors × speeds + constant, to be = 0 or >= 0. */
interface Condition {
  readonly factors: readonly bigint[];
  readonly equal: boolean;
}

/** Null for an end that is not there. */
export interface Range {
  readonly low: Rational | null;
  readonly high: Rational | null;
}

const signOf = (value: bigint) => (value > 0n ? 1n : value < 0n ? -1n : 0n);

/** a × |b at column| + b × |a at column|, with the sign that cancels the column; `a` must be an equation or both opposed. */
function cancel(a: Condition, b: Condition, column: number): Condition {
  const [x, y] = [a.factors[column]!, b.factors[column]!];
  const timesA = -signOf(x) * y;
  const timesB = x * signOf(x);
  const factors = a.factors.map((value, c) => value * timesA + b.factors[c]! * timesB);
  return { factors, equal: a.equal && b.equal };
}

/** "none" when the input cannot turn. */
export function outputRange(train: Train, friction: readonly string[]): Range | 'none' {
  const shafts = [...new Set([...train.gearsets.flatMap((s) => [s.sun.shaft, s.ring.shaft, s.carrier.shaft]),
    ...train.elements.flatMap((element) => element.between), train.output])]
    .filter((shaft) => shaft !== CASE && shaft !== train.input); // biome-ignore format: one expression
  const last = shafts.length;
  const condition = (terms: readonly (readonly [string, bigint])[], equal: boolean): Condition => {
    const factors = new Array<bigint>(last + 1).fill(0n);
    for (const [shaft, factor] of terms)
      if (shaft !== CASE) factors[shaft === train.input ? last : shafts.indexOf(shaft)]! += factor;
    return { factors, equal };
  };
  let conditions = train.gearsets.map((set) => {
    const { sun, ring, carrier } = willis(set);
    return condition([[set.sun.shaft, sun], [set.ring.shaft, ring], [set.carrier.shaft, carrier]], true); // biome-ignore format: one line
  });
  for (const { id, kind, between, overruns } of train.elements) {
    const sense = overruns === 'backward' ? -1n : 1n;
    const slip = [[between[0], sense], [between[1], -sense]] as const; // biome-ignore format: one line
    if (kind === 'one-way') conditions.push(condition(slip, false));
    else if (friction.includes(id)) conditions.push(condition(slip, true));
  }
  for (let column = 0; column < last; column++) {
    if (shafts[column] === train.output) continue;
    const [uses, rest] = [true, false].map((used) =>
      conditions.filter(({ factors }) => (factors[column] !== 0n) === used),
    ) as [Condition[], Condition[]];
    const equation = uses.find(({ equal }) => equal);
    const made = equation
      ? uses.filter((other) => other !== equation).map((other) => cancel(equation, other, column))
      : uses
          .filter(({ factors }) => factors[column]! > 0n)
          .flatMap((a) =>
            uses.filter(({ factors }) => factors[column]! < 0n).map((b) => cancel(a, b, column)),
          );
    conditions = [...rest, ...made];
  }
  const out = shafts.indexOf(train.output);
  let [low, high]: [Rational | null, Rational | null] = [null, null];
  for (const { factors, equal } of conditions) {
    const [factor, constant] = [factors[out]!, factors[last]!];
    if (factor === 0n) {
      if (equal ? constant !== 0n : constant < 0n) return 'none';
      continue;
    }
    const end = rational(-constant, factor);
    if ((equal || factor > 0n) && (!low || end.gt(low))) low = end;
    if ((equal || factor < 0n) && (!high || end.lt(high))) high = end;
  }
  return low && high && low.gt(high) ? 'none' : { low, high };
}
