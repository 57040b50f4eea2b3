/** What a self-check is to hold: how many questions, in which areas, how long, and what the person aims at. */
import { fail, pass, type Result } from '../result.ts';
import { AREAS, type Area, USUAL_WEIGHTS } from './areas.ts';

export interface Blueprint {
  /** 5 to 200. */
  readonly questions: number;
  /** Weight of each area, any unit, 0 or more. Safety is asked whatever its weight. */
  readonly weights: Readonly<Record<Area, number>>;
  /** Time limit, 1 to 600; null is none. */
  readonly minutes: number | null;
  /** Share right that the person wants to reach, over 0 to 1. */
  readonly threshold: number;
  /** Share of the questions asked on units never studied, their chart shown, 0 to 1. */
  readonly unseenShare: number;
  /** Whether the clock stands while the page is hidden. */
  readonly pauses: boolean;
}

export const USUAL_BLUEPRINT: Blueprint = {
  questions: 40,
  weights: USUAL_WEIGHTS,
  minutes: 40,
  threshold: 0.7,
  unseenShare: 0.25,
  pauses: true,
};

export type BlueprintFault =
  | 'questions-out-of-range'
  | 'minutes-out-of-range'
  | 'threshold-out-of-range'
  | 'weights-unusable';

/** Every fault at once, or the blueprint as it was. */
export function checkBlueprint(blueprint: Blueprint): Result<Blueprint, readonly BlueprintFault[]> {
  const { questions, minutes, threshold, weights } = blueprint;
  const faults: BlueprintFault[] = [];
  if (!Number.isInteger(questions) || questions < 5 || questions > 200) faults.push('questions-out-of-range');
  if (minutes !== null && !(minutes >= 1 && minutes <= 600)) faults.push('minutes-out-of-range');
  if (!(threshold > 0 && threshold <= 1)) faults.push('threshold-out-of-range');
  const all = AREAS.map((area) => weights[area]);
  if (all.some((weight) => !(weight >= 0 && Number.isFinite(weight))) || !all.some((weight) => weight > 0))
    faults.push('weights-unusable');
  return faults.length === 0 ? pass(blueprint) : fail(faults);
}

/**
 * Questions for each area that can be asked at all: by largest remainders (Hamilton's method), then at least
 * one of safety where it can be asked, taken from the largest area. Sums to `questions` when any area can ask.
 */
export function shareOut({ questions, weights }: Blueprint, able: ReadonlySet<Area>): Map<Area, number> {
  const open = AREAS.filter((area) => able.has(area));
  const weighed = open.filter((area) => weights[area] > 0);
  // With no weight on anything that can be asked, all that can be asked weighs alike.
  const asked = weighed.length > 0 ? weighed : open;
  const weightOf = (area: Area) => (weighed.length > 0 ? weights[area] : 1);
  const total = asked.reduce((sum, area) => sum + weightOf(area), 0);
  const exact = asked.map((area) => ({ area, quota: (questions * weightOf(area)) / total }));
  const shares = new Map(exact.map(({ area, quota }) => [area, Math.floor(quota)]));
  let left = questions - [...shares.values()].reduce((sum, count) => sum + count, 0);
  const byRemainder = exact.toSorted((a, b) => (b.quota % 1) - (a.quota % 1));
  for (const { area } of byRemainder) if (left-- > 0) shares.set(area, shares.get(area)! + 1);
  if (able.has('safety') && !shares.get('safety')) {
    const [largest] = [...shares].toSorted((a, b) => b[1] - a[1])[0]!;
    shares.set(largest, shares.get(largest)! - 1);
    shares.set('safety', 1);
  }
  return shares;
}
