/**
 * Before and after class, without names: for each area how many of the group's first tries were right, before the
 * day of class and from it on, over the same people and facts on both sides. Where fewer people stand behind a
 * figure than `LEAST_PEOPLE` it is not given: it could be told whose it is. Interval of the difference by Newcombe
 * (docs/sources.md [I2]); it takes answers for independent, so it is rather too narrow.
 */
import { areaOf } from '../assign/assignment.ts';
import type { Fact } from '../questions/facts.ts';
import type { Area } from '../self-check/areas.ts';
import { change, exceedsError, type Interval, type Score } from '../self-check/interval.ts';
import { type LearnerDigest, TRIES } from './digest.ts';
import { placesOf } from './readiness-by-answers.ts';

export const LEAST_PEOPLE = 5;

export interface BeforeAfter {
  readonly area: Area;
  readonly people: number;
  /** Latest first tries of the same people on the same facts. */
  readonly before: Score;
  readonly after: Score;
  /** By how much the share rose, with its interval. */
  readonly rise: Interval;
  readonly beyondChance: boolean;
}

export interface Comparison {
  readonly areas: readonly BeforeAfter[];
  /** Areas with answers on both sides, but from too few people to be shown. */
  readonly withheld: readonly Area[];
}

/** Areas in the order of their first fact. */
export function compareBeforeAfter(digests: readonly LearnerDigest[], facts: readonly Fact[]): Comparison {
  const areas = new Map<Area, { people: Set<string>; before: number; after: number; asked: number }>();
  for (const digest of digests)
    for (const [index, place] of placesOf(digest, facts).entries()) {
      const area = areaOf(facts[index]!);
      const [before, after] = [digest.columns.before[place], digest.columns.after[place]];
      if (area === undefined || before === undefined || after === undefined) continue;
      if (before === TRIES.none || after === TRIES.none) continue;
      const own = areas.get(area) ?? { people: new Set<string>(), before: 0, after: 0, asked: 0 };
      areas.set(area, own);
      own.people.add(digest.learner);
      own.asked++;
      if (before === TRIES.right) own.before++;
      if (after === TRIES.right) own.after++;
    }
  const order = [...new Set(facts.map(areaOf))].filter(
    (area) => area !== undefined && areas.has(area),
  ) as Area[];
  const shown = (area: Area) => areas.get(area)!.people.size >= LEAST_PEOPLE;
  return {
    areas: order.filter(shown).map((area): BeforeAfter => {
      const { people, before, after, asked } = areas.get(area)!;
      const scores = [
        { right: before, asked },
        { right: after, asked },
      ] as const;
      const rise = change(...scores);
      return {
        area,
        people: people.size,
        before: scores[0],
        after: scores[1],
        rise,
        beyondChance: exceedsError(rise),
      };
    }),
    withheld: order.filter((area) => !shown(area)),
  };
}
