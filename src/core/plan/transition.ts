/**
 * How one fact's memory moves when it is asked, as plain arithmetic on numbers: the two-outcome part of the
 * FSRS-6 model, for loops that run it millions of times. Stability is in days (recall is 0.9 after that long),
 * difficulty 1 to 10, elapsed time in whole days of at least 1. tests hold it to ts-fsrs, which rounds every
 * step to eight decimals; here nothing is rounded. Source: docs/sources.md [FSRS-6].
 */
export interface Transition {
  /** The 21 parameters it was made from. */
  readonly w: readonly number[];
  readonly decay: number;
  readonly factor: number;
  /** First answer known, first answer not known. */
  readonly first: { readonly known: Memory; readonly missed: Memory };
  readonly growth: number;
  readonly lapseCeiling: number;
  /** Difficulty that every answer pulls towards, not clamped. */
  readonly restingDifficulty: number;
}

export interface Memory {
  readonly stability: number;
  readonly difficulty: number;
}

export const LEAST_STABILITY = 0.001;
export const MOST_STABILITY = 36500;

const clamp = (x: number, low: number, high: number) => Math.min(Math.max(x, low), high);

/** Prepares a parameter set. Throws when it is not 21 finite numbers: a caller's mistake, never a learner's. */
export function transitionOf(w: readonly number[]): Transition {
  if (w.length !== 21 || !w.every(Number.isFinite)) throw new Error('FSRS-6 takes 21 finite parameters');
  const firstDifficulty = (grade: number) => w[4]! - Math.exp((grade - 1) * w[5]!) + 1;
  const first = (grade: 1 | 3): Memory => ({
    stability: Math.max(w[grade - 1]!, 0.1),
    difficulty: clamp(firstDifficulty(grade), 1, 10),
  });
  return {
    w,
    decay: -w[20]!,
    factor: 0.9 ** (-1 / w[20]!) - 1,
    first: { known: first(3), missed: first(1) },
    growth: Math.exp(w[8]!),
    lapseCeiling: Math.exp(-w[17]! * w[18]!),
    restingDifficulty: firstDifficulty(4),
  };
}

/** Probability of recall after so many days; 1 after none. */
export function recallAfter(m: Transition, days: number, stability: number): number {
  return (1 + (m.factor * days) / stability) ** m.decay;
}

/** Stability after the fact was recalled with this much recall predicted. */
export function stabilityKnown(m: Transition, stability: number, difficulty: number, recall: number): number {
  const rise = m.growth * (11 - difficulty) * stability ** -m.w[9]! * Math.expm1(m.w[10]! * (1 - recall));
  return clamp(stability * (1 + rise), LEAST_STABILITY, MOST_STABILITY);
}

/** Stability after the fact was not recalled. */
export function stabilityMissed(
  m: Transition,
  stability: number,
  difficulty: number,
  recall: number,
): number {
  const { w } = m;
  const left =
    w[11]! * difficulty ** -w[12]! * ((stability + 1) ** w[13]! - 1) * Math.exp(w[14]! * (1 - recall));
  return Math.min(
    Math.max(stability * m.lapseCeiling, LEAST_STABILITY),
    clamp(left, LEAST_STABILITY, MOST_STABILITY),
  );
}

/** Difficulty after an answer; it depends on the old difficulty alone. */
export function difficultyAfter(m: Transition, difficulty: number, known: boolean): number {
  const moved = known ? difficulty : difficulty + (2 * m.w[6]! * (10 - difficulty)) / 9;
  return clamp(m.w[7]! * m.restingDifficulty + (1 - m.w[7]!) * moved, 1, 10);
}

/** The memory after an answer `days` whole days (at least 1) after the last one. */
export function after(m: Transition, memory: Memory, days: number, known: boolean): Memory {
  const recall = recallAfter(m, days, memory.stability);
  const stability = (known ? stabilityKnown : stabilityMissed)(
    m,
    memory.stability,
    memory.difficulty,
    recall,
  );
  return { stability, difficulty: difficultyAfter(m, memory.difficulty, known) };
}
