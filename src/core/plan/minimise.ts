/**
 * Minimises a smooth convex function of some dozens of variables from its value and gradient: limited-memory
 * quasi-Newton steps (two-loop recursion) with a backtracking search. Source: docs/sources.md [NW], ch. 7.2.
 */
export interface Point {
  readonly value: number;
  readonly gradient: Float64Array;
}

/** Pairs of steps and gradient changes that are remembered. */
const MEMORY = 12;
/** Longest step of any variable: these are logarithms of prices. */
const FIRST_STEP = 0.15;
const LONGEST_STEP = 0.5;

export interface Search {
  /** Calls at most. */
  readonly evaluations: number;
  /** Guess at one over the curvature along each variable; without it the first step is as long as is allowed. */
  readonly inverse?: Float64Array;
  /** Whether a point will do. */
  readonly enough?: (gradient: Float64Array, x: Float64Array) => boolean;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

interface Pair {
  readonly step: Float64Array;
  readonly change: Float64Array;
  readonly inverse: number;
}

function direction(
  gradient: Float64Array,
  pairs: readonly Pair[],
  inverse: Float64Array | undefined,
): Float64Array {
  const d = gradient.map((x) => -x);
  const factors = pairs.map(() => 0);
  for (let p = pairs.length - 1; p >= 0; p--) {
    const { step, change, inverse } = pairs[p]!;
    const factor = inverse * dot(step, d);
    factors[p] = factor;
    for (let i = 0; i < d.length; i++) d[i]! -= factor * change[i]!;
  }
  const last = pairs.at(-1);
  if (inverse) for (let i = 0; i < d.length; i++) d[i]! *= inverse[i]!;
  if (last) {
    const { change } = last;
    const guessed = inverse ? change.map((value, i) => value * inverse[i]!) : change;
    const scale = 1 / (last.inverse * dot(change, guessed));
    for (let i = 0; i < d.length; i++) d[i]! *= scale;
  }
  for (const [p, { step, change, inverse }] of pairs.entries()) {
    const factor = factors[p]! - inverse * dot(change, d);
    for (let i = 0; i < d.length; i++) d[i]! += factor * step[i]!;
  }
  return d;
}

/** The best point found; it stops early where the gradient vanishes or is `enough`. */
export function minimise(
  at: (x: Float64Array) => Point,
  start: Float64Array,
  { evaluations, inverse, enough = () => false }: Search,
): Float64Array {
  let x = start;
  let here = at(x);
  let used = 1;
  const pairs: Pair[] = [];
  while (used < evaluations && !enough(here.gradient, x)) {
    const d = direction(here.gradient, pairs, inverse);
    const slope = dot(d, here.gradient);
    const longest = d.reduce((most, step) => Math.max(most, Math.abs(step)), 0);
    if (!(slope < -1e-16) || longest < 1e-9) return x;
    const most = pairs.length === 0 ? FIRST_STEP : LONGEST_STEP;
    const full = pairs.length === 0 && !inverse;
    let scale = full || longest > most ? most / longest : 1;
    let next = x;
    let there = here;
    let lower = false;
    while (!lower && used < evaluations) {
      next = x.map((value, i) => value + scale * d[i]!);
      there = at(next);
      used++;
      lower = there.value <= here.value + 1e-4 * scale * slope;
      scale *= 0.4;
    }
    const step = next.map((value, i) => value - x[i]!);
    const change = there.gradient.map((value, i) => value - here.gradient[i]!);
    const curvature = dot(step, change);
    if (curvature > 0) pairs.push({ step, change, inverse: 1 / curvature });
    if (pairs.length > MEMORY) pairs.shift();
    if (there.value < here.value) [x, here] = [next, there];
  }
  return x;
}
