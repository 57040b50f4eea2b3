/**
 * A self-check under way: plain JSON, every change a pure step, so that a killed page goes on exactly where it
 * was. No answer is judged before the end. Times are milliseconds since 1970, given by the caller.
 */
import type { Draft } from '../questions/draft.ts';
import type { Blueprint } from './blueprint.ts';
import type { FormItem } from './form.ts';

export interface SelfCheck {
  readonly id: string;
  readonly deck: string;
  readonly revision: number;
  readonly blueprint: Blueprint;
  readonly seed: number;
  readonly items: readonly FormItem[];
  readonly startedAt: number;
  readonly index: number;
  /** What has been entered, by item. */
  readonly drafts: Readonly<Record<number, Draft>>;
  /** Items marked to come back to. */
  readonly marked: readonly number[];
  /** How sure the person said to be, where he said. */
  readonly sure: Readonly<Record<number, boolean>>;
  readonly spentMs: number;
  /** Since when the clock runs; null while it stands. */
  readonly shownAt: number | null;
  readonly finishedAt: number | null;
}

export type CheckEvent =
  | { readonly kind: 'entered'; readonly draft: Draft; readonly at: number }
  | { readonly kind: 'said-sure'; readonly sure: boolean; readonly at: number }
  | { readonly kind: 'marked'; readonly at: number }
  | { readonly kind: 'went-to'; readonly index: number; readonly at: number }
  | { readonly kind: 'hidden'; readonly at: number }
  | { readonly kind: 'shown'; readonly at: number }
  | { readonly kind: 'finished'; readonly at: number };

/** Time used so far. A clock that was set back counts nothing. */
export const spentAt = (check: SelfCheck, at: number): number =>
  check.spentMs + (check.shownAt === null ? 0 : Math.max(0, at - check.shownAt));

/** Time left, never below 0; null without a limit. */
export const leftAt = (check: SelfCheck, at: number): number | null =>
  check.blueprint.minutes === null
    ? null
    : Math.max(0, check.blueprint.minutes * 60_000 - spentAt(check, at));

const isLate = (check: SelfCheck, at: number) => leftAt(check, at) === 0;

/** The check after an event. Out of time, every event finishes it; after the end nothing changes it. */
export function advance(check: SelfCheck, event: CheckEvent): SelfCheck {
  if (check.finishedAt !== null) return check;
  const { at } = event;
  const spentMs = spentAt(check, at);
  const running = { ...check, spentMs, shownAt: at };
  if (event.kind === 'shown' && check.blueprint.pauses) return { ...check, shownAt: at };
  if (event.kind === 'finished' || isLate(check, at))
    return { ...check, spentMs, shownAt: null, finishedAt: at };
  switch (event.kind) {
    case 'entered':
      return { ...running, drafts: { ...check.drafts, [check.index]: event.draft } };
    case 'said-sure':
      return { ...running, sure: { ...check.sure, [check.index]: event.sure } };
    case 'marked':
      return {
        ...running,
        marked: check.marked.includes(check.index)
          ? check.marked.filter((index) => index !== check.index)
          : [...check.marked, check.index],
      };
    case 'went-to':
      return event.index >= 0 && event.index < check.items.length
        ? { ...running, index: event.index }
        : running;
    case 'hidden':
      return check.blueprint.pauses ? { ...check, spentMs, shownAt: null } : running;
    case 'shown':
      return running;
  }
}
