import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { benchGroups, type Weakness } from '../../../src/core/group/bench-groups.ts';
import type { Area } from '../../../src/core/self-check/areas.ts';

const AREAS: readonly Area[] = ['power-flow', 'hydraulics', 'measuring'];

/** Missed of tried in each area. */
const person = (
  learner: string,
  ...counts: readonly (readonly [missed: number, tried: number])[]
): Weakness => ({
  learner,
  areas: new Map(counts.map(([missed, tried], place) => [AREAS[place]!, { missed, tried }])),
});

const people = fc.array(
  fc.array(fc.tuple(fc.nat(6), fc.nat(8)), { minLength: 3, maxLength: 3 }),
  { minLength: 1, maxLength: 14 },
).map((rows) => rows.map((row, index) => person(`p${index}`, ...row.map(([a, b]) => [Math.min(a, b), b] as const)))); // biome-ignore format: one chain

describe('groups for the bench', () => {
  test('G10 people with the same weak spot come together', () => {
    const crowd = [
      person('ada', [9, 10], [1, 10], [1, 10]),
      person('bo', [1, 10], [8, 10], [1, 10]),
      person('cy', [8, 10], [1, 10], [2, 10]),
      person('di', [1, 10], [9, 10], [1, 10]),
    ];
    const { groups } = benchGroups(crowd, AREAS, 2);
    expect(groups.map(({ area, learners }) => [area, ...learners])).toEqual([
      ['power-flow', 'ada', 'cy'],
      ['hydraulics', 'di', 'bo'],
    ]);
    // 17 of 20 missed in the group; 19 of 40 by all.
    expect(groups[0]).toMatchObject({ missedShare: 17 / 20, missedByAll: 19 / 40, tried: 20 });
  });

  test('G10 what everybody misses is nobody’s own weak spot', () => {
    const crowd = ['a', 'b', 'c', 'd'].map((name, index) =>
      person(name, [9, 10], index < 2 ? [5, 10] : [0, 10], index < 2 ? [0, 10] : [5, 10]),
    );
    expect(benchGroups(crowd, AREAS, 2).groups.map(({ area }) => area)).toEqual(['hydraulics', 'measuring']);
  });

  test('G10 one answer missed weighs less than many', () => {
    const crowd = [
      person('one', [1, 1], [6, 10], [0, 10]),
      person('sure', [0, 10], [0, 10], [0, 10]),
      person('much', [9, 10], [0, 10], [0, 10]),
      person('also', [0, 10], [0, 10], [0, 10]),
    ];
    const group = benchGroups(crowd, AREAS, 2).groups.find(({ learners }) => learners.includes('much'))!;
    expect(group.area).toBe('power-flow');
    expect(group.learners[0]).toBe('much');
  });

  test('G11 everybody who answered is in one group, sizes differ by one at most', () => {
    fc.assert(
      fc.property(people, fc.integer({ min: 2, max: 5 }), (crowd, size) => {
        const { groups, unplaced } = benchGroups(crowd, AREAS, size);
        const all = [...groups.flatMap(({ learners }) => learners), ...unplaced];
        expect([...all].sort()).toEqual(crowd.map(({ learner }) => learner).sort());
        for (const { learner, areas } of crowd)
          expect(unplaced.includes(learner)).toBe([...areas.values()].every(({ tried }) => tried === 0));
        const sizes = groups.map(({ learners }) => learners.length);
        if (sizes.length > 0) expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
        expect(Math.max(0, ...sizes)).toBeLessThanOrEqual(size === 2 ? 3 : size);
        if (sizes.length > 1) expect(Math.min(...sizes)).toBeGreaterThanOrEqual(2);
      }),
    );
  });

  test('G11 the order in which people come makes no difference', () => {
    fc.assert(
      fc.property(people, fc.integer({ min: 2, max: 4 }), (crowd, size) => {
        expect(benchGroups([...crowd].reverse(), AREAS, size)).toEqual(benchGroups(crowd, AREAS, size));
      }),
    );
  });

  /** Weakness as the header of the module states it, worked here by itself. */
  function ownWeakness(crowd: readonly Weakness[]): Map<string, number[]> {
    const score = ({ areas }: Weakness, area: Area) => {
      const { missed, tried } = areas.get(area)!;
      return (missed + 1) / (tried + 2);
    };
    const placed = crowd.filter(({ areas }) => [...areas.values()].some(({ tried }) => tried > 0));
    const mean = (area: Area) => placed.reduce((total, own) => total + score(own, area), 0) / placed.length;
    return new Map(placed.map((own) => [own.learner, AREAS.map((area) => score(own, area) - mean(area))]));
  }

  test('G11 no two people could change places for the better', () => {
    fc.assert(
      fc.property(people, fc.integer({ min: 2, max: 4 }), (crowd, size) => {
        const own = ownWeakness(crowd);
        const { groups } = benchGroups(crowd, AREAS, size);
        const at = groups.flatMap(({ area, learners }) =>
          learners.map((learner) => ({ learner, place: AREAS.indexOf(area) })),
        );
        for (const a of at)
          for (const b of at) {
            const now = own.get(a.learner)![a.place]! + own.get(b.learner)![b.place]!;
            const then = own.get(a.learner)![b.place]! + own.get(b.learner)![a.place]!;
            expect(then).toBeLessThanOrEqual(now + 1e-6);
          }
      }),
      { numRuns: 60 },
    );
  });

  test('a group of one, or of none, is refused', () => {
    expect(() => benchGroups([], AREAS, 1)).toThrow(RangeError);
    expect(benchGroups([], AREAS, 3)).toEqual({ groups: [], unplaced: [] });
  });
});
