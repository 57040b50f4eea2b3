/**
 * States of memory beside those of fsrs-rs (rust.ts): a table it once gave, everywhere; thousands of fresh
 * histories where its build is to be had. It computes in 32-bit floats: agreement to
 * 1e-5, relative, and of stabilities under a day to 1e-5 days (ts-fsrs rounds those to eight decimals).
 */
import { describe, expect, test } from 'vitest';
import { calculatorFor, WEIGHTS } from '../../../src/core/memory/recall.ts';
import { after, type Memory, transitionOf } from '../../../src/core/plan/transition.ts';
import { type Random, randomFrom } from '../../../src/core/random.ts';
import { Rust, type RustState } from './rust.ts';
import frozen from './rust-states.json' with { type: 'json' };

const HISTORIES = 2000;
const LENGTH = 8;

/** Parameters near the usual ones; first stabilities stay over the floor of 0.1 that fsrs-rs does not have. */
function perturbed(random: Random): number[] {
  const w = WEIGHTS.map((x) => x * Math.exp(0.3 * (random.unit() - 0.5)));
  w[0] = Math.max(0.12, w[0]!);
  return [...calculatorFor(w).parameters.w];
}

const relative = (a: number, b: number) => Math.abs(a - b) / Math.max(1, Math.abs(b));

/** The largest relative differences over histories whose gaps start at `leastGap`; both sides go their own way. */
function worst(leastGap: number, grades: readonly (1 | 3)[], weights: (random: Random) => readonly number[]) {
  let [stability, difficulty] = [0, 0];
  for (let seed = 1; seed <= HISTORIES; seed++) {
    const random = randomFrom(seed);
    const w = weights(random);
    const [ours, theirs] = [calculatorFor(w), new Rust!([...w])];
    let mine: Memory | null = null;
    let rust: RustState | null = null;
    for (let step = 0; step < LENGTH; step++) {
      const days = mine ? random.int(leastGap, 45) : 0;
      const grade = random.pick(grades);
      mine = ours.next_state(mine, days, grade);
      const next = theirs.nextStates(rust, 0.9, days);
      rust = (grade === 3 ? next.good : next.again).memory;
      stability = Math.max(stability, relative(mine.stability, rust.stability));
      difficulty = Math.max(difficulty, relative(mine.difficulty, rust.difficulty));
    }
  }
  return { stability, difficulty };
}

test.each(frozen)('a history as fsrs-rs 0.5.0 gave it: $history', ({ history, states }) => {
  const ours = calculatorFor(WEIGHTS);
  let mine: Memory | null = null;
  for (const [step, answer] of history.entries()) {
    mine = ours.next_state(mine, answer[1]!, answer[0] as 1 | 3);
    expect(relative(mine.stability, states[step]![0]!)).toBeLessThan(1e-5);
    expect(relative(mine.difficulty, states[step]![1]!)).toBeLessThan(1e-5);
  }
});

describe.runIf(Rust)(
  `the calculator and fsrs-rs over ${HISTORIES} random histories of ${LENGTH} answers`,
  () => {
    test('usual parameters, days apart', () => {
      const { stability, difficulty } = worst(1, [1, 3, 3], () => WEIGHTS);
      expect(stability).toBeLessThan(1e-5);
      expect(difficulty).toBeLessThan(1e-5);
    });

    test('usual parameters, with answers on the same day', () => {
      const { stability, difficulty } = worst(0, [1, 3, 3], () => WEIGHTS);
      expect(stability).toBeLessThan(1e-5);
      expect(difficulty).toBeLessThan(1e-5);
    });

    test('other parameters, with answers on the same day', () => {
      const { stability, difficulty } = worst(0, [1, 3], perturbed);
      expect(stability).toBeLessThan(1e-5);
      expect(difficulty).toBeLessThan(1e-5);
    });
  },
);

test.runIf(Rust)(`the planner’s transitions and fsrs-rs over ${HISTORIES} random histories`, () => {
  let [stability, difficulty] = [0, 0];
  for (let seed = 1; seed <= HISTORIES; seed++) {
    const random = randomFrom(seed);
    const w = seed % 2 ? WEIGHTS : perturbed(random);
    const m = transitionOf(w);
    const rust = new Rust!([...w]);
    let known = random.unit() < 0.4;
    let mine: Memory = known ? m.first.known : m.first.missed;
    const first = rust.nextStates(null, 0.9, 0);
    let state = (known ? first.good : first.again).memory;
    for (let step = 0; step < LENGTH; step++) {
      const days = random.int(1, 45);
      known = random.unit() < 0.7;
      mine = after(m, mine, days, known);
      const next = rust.nextStates(state, 0.9, days);
      state = (known ? next.good : next.again).memory;
      stability = Math.max(stability, relative(mine.stability, state.stability));
      difficulty = Math.max(difficulty, relative(mine.difficulty, state.difficulty));
    }
  }
  expect(stability).toBeLessThan(1e-5);
  expect(difficulty).toBeLessThan(1e-5);
});

test.runIf(Rust)(
  'where they differ: a first stability under 0.1 is lifted to it by the calculator alone',
  () => {
    const w = WEIGHTS.with(0, 0.02);
    const first = calculatorFor(w).next_state(null, 0, 1).stability;
    expect(first).toBe(0.1);
    expect(new Rust!(w).nextStates(null, 0.9, 0).again.memory.stability).toBeCloseTo(0.02, 6);
  },
);
