/**
 * What a device keeps of self-checks: the one under way and the scores of past ones, for the retest. Private:
 * nothing of it enters the log of attempts or a report, and it can be wiped as a whole.
 */
import type { FactId } from '../questions/question.ts';
import type { Area } from './areas.ts';
import type { SelfCheck } from './check.ts';
import { change, exceedsError, type Interval, type Score } from './interval.ts';
import type { Outcome } from './outcome.ts';

export interface PastCheck {
  readonly id: string;
  readonly deck: string;
  readonly finishedAt: number;
  readonly areas: readonly (Score & { readonly area: Area })[];
  /** Facts it asked, so that the next one takes others first. */
  readonly facts: readonly FactId[];
}

export interface CheckBook {
  readonly current: SelfCheck | null;
  /** Oldest first. */
  readonly past: readonly PastCheck[];
}

export const EMPTY_BOOK: CheckBook = { current: null, past: [] };

const KEPT = 20;

/** Facts of the last two checks of the deck. */
export function recentFacts(book: CheckBook, deck: string): Set<FactId> {
  return new Set(
    book.past
      .filter((past) => past.deck === deck)
      .slice(-2)
      .flatMap((past) => past.facts),
  );
}

/** The book with the finished check's scores added, once. */
export function noteOutcome(book: CheckBook, check: SelfCheck, outcome: Outcome): CheckBook {
  if (check.finishedAt === null || book.past.some(({ id }) => id === check.id)) return book;
  const past: PastCheck = {
    id: check.id,
    deck: check.deck,
    finishedAt: check.finishedAt,
    areas: outcome.areas.map(({ area, right, asked }) => ({ area, right, asked })),
    facts: [...new Set(check.items.map(({ fact }) => fact))],
  };
  return { ...book, past: [...book.past, past].slice(-KEPT) };
}

/** The books of two devices as one: the check under way here stays, past ones are there once each. */
export function joinBooks(here: CheckBook, other: CheckBook): CheckBook {
  const known = new Set(here.past.map(({ id }) => id));
  const past = [...here.past, ...other.past.filter(({ id }) => !known.has(id))];
  return {
    current: here.current ?? other.current,
    past: past.sort((a, b) => a.finishedAt - b.finishedAt || (a.id < b.id ? -1 : 1)).slice(-KEPT),
  };
}

export interface Compared {
  readonly before: Score;
  readonly after: Score;
  readonly rise: Interval;
  /** Whether the change is more than chance would explain. */
  readonly beyondError: boolean;
}

const sumOf = (scores: readonly Score[]): Score => ({
  right: scores.reduce((sum, { right }) => sum + right, 0),
  asked: scores.reduce((sum, { asked }) => sum + asked, 0),
});

/** The check beside the last earlier one of the same deck; null when it is the first. */
export function compareWithLast(book: CheckBook, check: SelfCheck, outcome: Outcome): Compared | null {
  const last = book.past.findLast((past) => past.deck === check.deck && past.id !== check.id);
  if (!last) return null;
  const [before, after] = [sumOf(last.areas), sumOf(outcome.areas)];
  const rise = change(before, after);
  return { before, after, rise, beyondError: exceedsError(rise) };
}
