import { default_w, fsrs } from 'ts-fsrs';
import { expect, test } from 'vitest';
import { after, type Memory, recallAfter, transitionOf } from '../../../src/core/plan/transition.ts';
import { randomFrom } from '../../../src/core/random.ts';

const calculator = (w: readonly number[]) =>
  fsrs({ w: [...w], enable_fuzz: false, enable_short_term: true, learning_steps: [], relearning_steps: [] });

/** A parameter set near the default, inside the ranges the calculator would otherwise clip to. */
function perturbed(seed: number): number[] {
  const random = randomFrom(seed);
  const w = default_w.map((x) => x * Math.exp(0.25 * (random.unit() - 0.5)));
  w[0] = Math.max(w[0]!, 0.12);
  return [...calculator(w).parameters.w];
}

test('1,000 random histories move exactly as in ts-fsrs, which rounds each step to eight decimals', () => {
  let worst = 0;
  for (let seed = 0; seed < 1000; seed++) {
    const w = seed % 2 ? perturbed(seed) : default_w;
    const ours = transitionOf(w);
    const theirs = calculator(w);
    const random = randomFrom(seed);
    let known = random.unit() < 0.4;
    let state = theirs.next_state(null, 0, known ? 3 : 1);
    let memory: Memory = known ? ours.first.known : ours.first.missed;
    for (let step = 0; step < 8; step++) {
      const days = random.int(1, 40);
      const gap = Math.abs(
        recallAfter(ours, days, memory.stability) - theirs.forgetting_curve(days, state.stability),
      );
      expect(gap).toBeLessThan(1e-7);
      known = random.unit() < 0.7;
      // Both step from the calculator's state: rounding does not pile up, a wrong formula does show.
      memory = after(ours, state, days, known);
      state = theirs.next_state(state, days, known ? 3 : 1);
      worst = Math.max(
        worst,
        Math.abs(memory.stability - state.stability) / Math.max(1, state.stability),
        Math.abs(memory.difficulty - state.difficulty),
      );
    }
  }
  expect(worst).toBeLessThan(5e-7);
});

test('recall is 1 at once, 0.9 after one stability, and falls with time', () => {
  const m = transitionOf(default_w);
  for (const stability of [0.1, 1, 7, 90, 3000]) {
    expect(recallAfter(m, 0, stability)).toBe(1);
    expect(recallAfter(m, stability, stability)).toBeCloseTo(0.9, 12);
    for (let day = 1; day < 60; day++)
      expect(recallAfter(m, day + 1, stability)).toBeLessThan(recallAfter(m, day, stability));
  }
});

test('a parameter set that is not 21 finite numbers is refused', () => {
  expect(() => transitionOf(default_w.slice(0, 19))).toThrow('21 finite parameters');
  expect(() => transitionOf([...default_w.slice(0, 20), Number.NaN])).toThrow('21 finite parameters');
});
