/**
 * Whose this tab is, kept through a reload of the tab and no longer: two tabs can be two learners'. With the time of
 * the last touch, so that a tab that was left open over night does not open on somebody's answers.
 */

const KEY = 'detent-tab-learner';

export interface TabLearner {
  readonly id: string;
  /** Of the last touch, in milliseconds since 1970. */
  readonly at: number;
}

/** Where the browser keeps nothing for a tab, it lasts until the tab is loaded again. */
let held: TabLearner | null = null;

export function tabLearner(): TabLearner | null {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
    const { id, at } = (kept ?? {}) as { id?: unknown; at?: unknown };
    return typeof id === 'string' && typeof at === 'number' ? { id, at } : null;
  } catch {
    return held;
  }
}

export function keepTabLearner(learner: TabLearner | null): void {
  held = learner;
  try {
    if (learner) sessionStorage.setItem(KEY, JSON.stringify(learner));
    else sessionStorage.removeItem(KEY);
  } catch {
    // Held above.
  }
}

/** Whether he may still be sitting there; null minutes: nobody is ever left for being idle. */
export const isStillThere = ({ at }: TabLearner, now: number, idleMinutes: number | null): boolean =>
  idleMinutes === null || Math.abs(now - at) < idleMinutes * 60_000;
