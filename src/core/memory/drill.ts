/**
 * A drill under way: plain JSON, so that a killed page goes on where it stopped. Every change is a pure step
 * (`progress`); times are milliseconds since 1970, given by the caller. docs/spec/memory.md M27 to M32.
 */
import type { Draft } from '../questions/draft.ts';
import type { Verdict } from '../questions/judge.ts';
import type { FactId } from '../questions/question.ts';

/** One question of a drill: `ask` makes it again from family, fact and seed. The seed after it asks as well. */
export interface DrillItem {
  readonly fact: FactId;
  readonly family: string;
  readonly seed: number;
}

export interface Drill {
  readonly id: string;
  readonly deck: string;
  readonly revision: number;
  /** Local day it was started on. */
  readonly day: number;
  readonly minutes: number;
  readonly startedAt: number;
  readonly items: readonly DrillItem[];
  /** The item at hand; items.length when the drill is over. */
  readonly index: number;
  /** What has been entered so far; kept beside the verdict until the next question. */
  readonly draft: Draft | null;
  /** Null until the answer at hand was checked. */
  readonly verdict: Verdict | null;
  /** Answering time of the question at hand, up to `shownAt`. */
  readonly spentMs: number;
  /** Since when the clock runs; null while it stands. */
  readonly shownAt: number | null;
  readonly answered: number;
  readonly right: number;
}

export type DrillEvent =
  | { readonly kind: 'draft-changed'; readonly draft: Draft; readonly at: number }
  | { readonly kind: 'checked'; readonly verdict: Verdict; readonly at: number }
  | { readonly kind: 'next'; readonly at: number }
  | { readonly kind: 'paused'; readonly at: number }
  | { readonly kind: 'resumed'; readonly at: number };

/** Other questions between a miss and the second try, where there are as many left. */
const PLACES_LATER = 3;

/** A fact comes at most this often in one drill. */
const MOST_TIMES = 3;

export function startDrill(given: {
  readonly id: string;
  readonly deck: { readonly id: string; readonly revision: number };
  readonly day: number;
  readonly minutes: number;
  readonly items: readonly DrillItem[];
  readonly at: number;
}): Drill {
  return {
    id: given.id,
    deck: given.deck.id,
    revision: given.deck.revision,
    day: given.day,
    minutes: given.minutes,
    startedAt: given.at,
    items: given.items,
    index: 0,
    draft: null,
    verdict: null,
    spentMs: 0,
    shownAt: given.at,
    answered: 0,
    right: 0,
  };
}

/** How far a drill has come: two steps a question, answered and gone on. Of two copies the further one counts. */
export const stepOf = ({ index, verdict }: Drill): number => 2 * index + (verdict ? 1 : 0);

export const isOver = (drill: Drill): boolean => drill.index >= drill.items.length;

/** Answering time of the question at hand; hidden time and a clock set back count nothing. */
export const answeringMs = (drill: Drill, at: number): number =>
  drill.spentMs + (drill.shownAt === null ? 0 : Math.max(0, at - drill.shownAt));

/** The item another time: the seed beside the last one, so it looks new and surely asks. */
const another = (items: readonly DrillItem[], item: DrillItem): DrillItem => {
  const last = items.findLast((candidate) => candidate.fact === item.fact) ?? item;
  const first = items.find((candidate) => candidate.fact === item.fact) ?? item;
  return { ...item, seed: last.seed === first.seed ? first.seed + 1 : first.seed };
};

/**
 * The items with the missed fact once more, three places later or at the end, never next to itself. At the
 * very end an earlier fact comes in between. Unchanged when the fact still comes, has come three times, was
 * not in the drill, or is alone in it.
 */
export function askAgain(items: readonly DrillItem[], index: number, fact: FactId): DrillItem[] {
  const asked = items.slice(0, index + 1);
  const coming = items.slice(index + 1);
  const own = asked.findLast((item) => item.fact === fact);
  const wornOut = (id: FactId) => items.filter((item) => item.fact === id).length >= MOST_TIMES;
  if (!own || wornOut(fact) || coming.some((item) => item.fact === fact)) return [...items];
  const again = another(items, own);
  const atHand = items[index]!.fact === fact;
  if (coming.length === 0 && atHand) {
    const between = asked.find((item) => item.fact !== fact && !wornOut(item.fact));
    return between ? [...items, another(items, between), again] : [...items];
  }
  return items.toSpliced(index + 1 + Math.min(PLACES_LATER, coming.length), 0, again);
}

/** After a miss: the facts a slip-up named, where the drill can ask them, else the one at hand. */
function withSecondTry(drill: Drill, verdict: Verdict): readonly DrillItem[] {
  const { fact } = drill.items[drill.index]!;
  let items: DrillItem[] = [...drill.items];
  for (const missed of verdict.missed) items = askAgain(items, drill.index, missed);
  const comes = items.slice(drill.index + 1).some((item) => verdict.missed.includes(item.fact));
  return comes ? items : askAgain(items, drill.index, fact);
}

/** The drill after an event; an event that does not fit (a second check, anything after the end) changes nothing. */
export function progress(drill: Drill, event: DrillEvent): Drill {
  if (isOver(drill)) return drill;
  const spentMs = answeringMs(drill, event.at);
  switch (event.kind) {
    case 'draft-changed':
      if (drill.verdict) return drill;
      return { ...drill, draft: event.draft, spentMs, shownAt: event.at };
    case 'checked':
      if (drill.verdict) return drill;
      return {
        ...drill,
        verdict: event.verdict,
        spentMs,
        shownAt: null,
        answered: drill.answered + 1,
        right: drill.right + (event.verdict.right ? 1 : 0),
        items: event.verdict.right ? drill.items : withSecondTry(drill, event.verdict),
      };
    case 'next': {
      if (!drill.verdict) return drill;
      const after = { ...drill, index: drill.index + 1, draft: null, verdict: null, spentMs: 0 };
      return { ...after, shownAt: isOver(after) ? null : event.at };
    }
    case 'paused':
      return { ...drill, spentMs, shownAt: null };
    case 'resumed':
      // A clock still running here belongs to a page that was killed: what lies between is not answering time.
      return drill.verdict ? drill : { ...drill, shownAt: event.at };
  }
}
