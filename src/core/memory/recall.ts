/**
 * What is left of a memory after some days, and what an answer makes of it. ts-fsrs is used as a calculator
 * and known to this file alone: fuzz off, no steps, whole local days in, two outcomes only (recalled, or not),
 * default weights of the FSRS-6 model (docs/sources.md [FSRS-6]). Numbers the calculator would accept in silence
 * (NaN, part days, days that run backwards) are refused or clamped here. docs/spec/memory.md M2 to M4.
 */
import { fsrs } from 'ts-fsrs';

/** Name and weights of the model: every export states them, since states are worth nothing without. */
export const MODEL = 'fsrs6';
export const WEIGHTS: readonly number[] = [
  0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796, 1.4835, 0.0614, 0.2629,
  1.6483, 0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542,
];

export interface MemoryState {
  /** Days after which recall has fallen to 0.9. */
  readonly stability: number;
  /** 1 to 10. */
  readonly difficulty: number;
  /** Local day of the last answer. */
  readonly lastDay: number;
}

/** Where one answer can lead: the fact was recalled, or it was not. */
export interface Outcomes {
  readonly recalled: MemoryState;
  readonly forgotten: MemoryState;
}

const MODEL_LENGTH = 21;
const [RECALLED, FORGOTTEN] = [3, 1];

/** The calculator for given weights; a wrong length would be replaced in silence, so it throws here. */
export function calculatorFor(weights: readonly number[]) {
  if (weights.length !== MODEL_LENGTH || !weights.every(Number.isFinite))
    throw new RangeError(`expected ${MODEL_LENGTH} finite weights`);
  return fsrs({
    w: weights,
    enable_fuzz: false,
    enable_short_term: true,
    learning_steps: [],
    relearning_steps: [],
  });
}

export type Calculator = ReturnType<typeof calculatorFor>;

const usual = calculatorFor(WEIGHTS);

/** Whole days from one local day to another; a clock set back gives 0. Throws on what is no whole day. */
export function daysBetween(lastDay: number, day: number): number {
  if (!Number.isSafeInteger(lastDay) || !Number.isSafeInteger(day))
    throw new RangeError(`not whole days: ${lastDay}, ${day}`);
  return Math.max(0, day - lastDay);
}

/** Share expected to be recalled after `days` (fractions allowed): recallAfter(s, s) → 0.9, recallAfter(s, 0) → 1. */
export function recallAfter(stability: number, days: number, calculator: Calculator = usual): number {
  if (!(stability > 0) || !(days >= 0)) throw new RangeError(`no recall for ${stability}, ${days}`);
  return calculator.forgetting_curve(days, stability);
}

/** Share expected to be recalled on a local day. */
export function recallOn(state: MemoryState, day: number, calculator: Calculator = usual): number {
  return recallAfter(state.stability, daysBetween(state.lastDay, day), calculator);
}

/** Both ways an answer on `day` can leave a memory; no state means the fact was never asked. */
export function outcomesOn(
  state: MemoryState | undefined,
  day: number,
  calculator: Calculator = usual,
): Outcomes {
  const days = daysBetween(state?.lastDay ?? day, day);
  const before = state ? { stability: state.stability, difficulty: state.difficulty } : null;
  if (before && !(before.stability > 0 && before.difficulty >= 1))
    throw new RangeError(`not a memory: ${before.stability}, ${before.difficulty}`);
  const lastDay = Math.max(state?.lastDay ?? day, day);
  const after = (grade: number): MemoryState => {
    const { stability, difficulty } = calculator.next_state(before, days, grade);
    return { stability, difficulty, lastDay };
  };
  return { recalled: after(RECALLED!), forgotten: after(FORGOTTEN!) };
}
