/**
 * The rows of a forward chart out of all that drive forward: the longest way down in ratio, each step plausible
 * and each shift made by one element for another, or at most once by two for two.
 */
import type { LayoutRow } from './layout.ts';

/** A step is the ratio of a range over that of the next. */
const [LEAST_STEP, MOST_STEP] = [1.15, 2.2];
export const FEWEST_FORWARD = 4;
const MOST_FORWARD = 9;
/** The first range reduces at least this much. */
export const SLOWEST_FIRST = 2.2;
const MOST_DOUBLE = 1;

export interface Falling {
  readonly rows: readonly LayoutRow[];
  /** For choosing among charts: many ranges, few double shifts, an overdrive. */
  readonly worth: number;
}

const countOf = (mask: number): number => {
  let count = 0;
  for (let rest = mask; rest !== 0; rest &= rest - 1) count++;
  return count;
};

/** Elements that come off in a shift. */
const swaps = (from: LayoutRow, to: LayoutRow): number => countOf(from.mask & ~to.mask);

interface Way {
  readonly rows: readonly LayoutRow[];
  readonly doubles: number;
}

const better = (a: Way, b: Way) =>
  a.rows.length !== b.rows.length ? a.rows.length > b.rows.length : a.doubles < b.doubles;

/** The longest way down from a row that reduces enough; null where it has fewer than four ranges. */
export function fallingRows(forward: readonly LayoutRow[]): Falling | null {
  if (forward.length < FEWEST_FORWARD) return null;
  const sorted = [...forward].sort((a, b) => b.ratio - a.ratio);
  const ways: Way[] = [];
  for (const row of sorted) {
    let best: Way | null = row.ratio >= SLOWEST_FIRST ? { rows: [row], doubles: 0 } : null;
    for (const way of ways) {
      const last = way.rows.at(-1)!;
      const step = last.ratio / row.ratio;
      const changes = swaps(last, row);
      const doubles = way.doubles + (changes === 2 ? 1 : 0);
      if (step < LEAST_STEP || step > MOST_STEP || changes > 2 || doubles > MOST_DOUBLE) continue;
      if (way.rows.length >= MOST_FORWARD) continue;
      const longer = { rows: [...way.rows, row], doubles };
      if (!best || better(longer, best)) best = longer;
    }
    if (best) ways.push(best);
  }
  const longest = ways.reduce<Way | null>((best, way) => (!best || better(way, best) ? way : best), null);
  if (!longest || longest.rows.length < FEWEST_FORWARD) return null;
  const overdrive = longest.rows.some(({ ratio }) => ratio < 0.95) ? 1 : 0;
  return { rows: longest.rows, worth: 2 * longest.rows.length - longest.doubles + overdrive };
}
