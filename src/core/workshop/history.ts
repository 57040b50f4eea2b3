/**
 * States one after the other, back and forth. Changes that belong together (the letters of one word) are one step:
 * they name the same run. Going back keeps what lay ahead until something else is done.
 */

/** Steps that can be taken back. */
export const STEPS_KEPT = 500;

export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  /** Nearest first. */
  readonly future: readonly T[];
  /** What the last change belongs to; null when the next one is a step of its own. */
  readonly run: string | null;
}

export const startHistory = <T>(present: T): History<T> => ({ past: [], present, future: [], run: null });

/** A new state. With the run of the change before it, it takes that one's place. No change is no step. */
export function record<T>(history: History<T>, present: T, run: string | null = null): History<T> {
  if (Object.is(present, history.present)) return history;
  const joins = run !== null && run === history.run;
  return {
    past: joins ? history.past : [...history.past, history.present].slice(-STEPS_KEPT),
    present,
    future: [],
    run,
  };
}

/** What follows is another step, though it should name the same run. */
export const endRun = <T>(history: History<T>): History<T> =>
  history.run === null ? history : { ...history, run: null };

export function undo<T>({ past, present, future, ...history }: History<T>): History<T> {
  const before = past.at(-1);
  return before === undefined
    ? { ...history, past, present, future }
    : { past: past.slice(0, -1), present: before, future: [present, ...future], run: null };
}

export function redo<T>({ past, present, future, ...history }: History<T>): History<T> {
  const [next, ...rest] = future;
  return next === undefined
    ? { ...history, past, present, future }
    : { past: [...past, present], present: next, future: rest, run: null };
}
