/**
 * What a benchmark is: one subject of ours and the baselines it is held against in the same run. Times come
 * and go with the machine; only the ratios within one run are claimed.
 */

export interface Contender {
  readonly name: string;
  /** How many units one run does, where it is not as many as the suite says. */
  readonly count?: number;
  /** One whole piece of work; what it returns keeps the work from being optimised away. */
  run(): unknown;
}

export interface Baseline extends Contender {
  /** The subject must be at least this many times as fast, or the run fails; only reported when left out. */
  readonly atLeast?: number;
}

export interface Suite {
  readonly title: string;
  /** How many of `unit` one run does: times are shown for one. */
  readonly count: number;
  readonly unit: string;
  readonly subject: Contender;
  readonly baselines: readonly Baseline[];
  /** Throws when the contenders do not come to the same result: a comparison would mean nothing. */
  agree(): void;
}
