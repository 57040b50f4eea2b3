import { describe, expect, test } from 'vitest';
import { joinReports } from '../../../src/core/assign/merge-reports.ts';
import { compareBeforeAfter, LEAST_PEOPLE } from '../../../src/core/group/before-after.ts';
import { MAKE_UP_FACTS, openBoard } from '../../../src/core/group/board.ts';
import { digestLog, type LearnerDigest } from '../../../src/core/group/digest.ts';
import { likelyReady, readinessByAnswers } from '../../../src/core/group/readiness-by-answers.ts';
import type { Attempt } from '../../../src/core/memory/attempt.ts';
import type { Fact } from '../../../src/core/questions/facts.ts';
import { anAttempt } from '../../attempts.ts';
import { anAssignment, aReport, sealed } from '../../reports.ts';

const CLASS_DAY = 20_010;

/** Twenty facts of the chart; the last two carry a caution. */
const facts: readonly Fact[] = Array.from({ length: 20 }, (_, index) => ({
  id: `range:${index + 1}/elements`,
  families: [index < 10 ? 'range-elements' : 'unplugged'],
  level: 'read',
  cautioned: index >= 18,
}));

const digestOf = (name: string, attempts: readonly Attempt[]): LearnerDigest => {
  const log = joinReports([sealed(aReport({ id: name, learner: { id: `id-${name}`, name }, attempts }))])
    .learners[0]!;
  return digestLog({ log, voids: new Set(), classDay: CLASS_DAY, confusedIn: () => [] });
};

/** One answer a fact on a day: the first `right` of `tried` right. */
const answered = (name: string, right: number, tried: number, day = 20_000, from = 0): Attempt[] =>
  Array.from({ length: tried }, (_, index) =>
    anAttempt({
      device: name,
      id: `${name}-${day}-${index + from}`,
      sequence: (day - 19_900) * 100 + index,
      day,
      fact: facts[index + from]!.id,
      right: index < right,
      slipUps: index < right ? [] : ['neighbour-range'],
    }),
  );

const open = (digests: readonly LearnerDigest[], roster: readonly string[] = []) =>
  openBoard({ assignment: anAssignment(), facts, digests, today: 20_005, classDay: CLASS_DAY, roster });

describe('likely readiness', () => {
  // Wilson's interval at 95 %: 10 of 10 gives 0.722 to 1, 8 of 10 gives 0.490 to 0.943 (Newcombe 1998 has the method;
  // these two by the formula on paper).
  test.each([
    ['ten of ten asked, ten never asked', 10, 10, { share: (10 + 3) / 20, low: 0.7225 * 0.5, high: 1, tried: 10, right: 10 }],
    ['eight of ten', 8, 10, { share: (8 + 3) / 20, low: 0.4902 * 0.5, high: (0.9433 * 10 + 10) / 20, tried: 10, right: 8 }],
    ['nothing asked', 0, 0, { share: 0.3, low: 0, high: 1, tried: 0, right: 0 }],
    ['all of all', 20, 20, { share: 1, low: 0.8389, high: 1, tried: 20, right: 20 }],
  ])('G7 %s', (_, right, tried, expected) => {
    const own = readinessByAnswers(digestOf('ada', answered('ada', right, tried)), facts);
    expect(own.tried).toBe(expected.tried);
    expect(own.right).toBe(expected.right);
    for (const name of ['share', 'low', 'high'] as const) expect(own[name]).toBeCloseTo(expected[name], 3);
  }); // biome-ignore format: a table reads across

  test('G7 the latest first try counts, not the average', () => {
    const attempts = [...answered('ada', 0, 20), ...answered('ada', 20, 20, 20_001)];
    expect(readinessByAnswers(digestOf('ada', attempts), facts).right).toBe(20);
  });

  test('G8 likely, unlikely, or not to be said yet', () => {
    const of = (right: number, tried: number) =>
      likelyReady(readinessByAnswers(digestOf('ada', answered('ada', right, tried)), facts), {
        share: 0.8,
        cautioned: true,
      });
    expect([of(20, 20), of(8, 20), of(10, 10), of(0, 0)]).toEqual(['likely', 'unlikely', 'open', 'open']);
  });

  test('G8 a cautioned fact missed the last time rules likely out, where the threshold asks for it', () => {
    const own = readinessByAnswers(digestOf('ada', answered('ada', 19, 20)), facts);
    expect([own.cautionedRight, own.cautionedOf]).toEqual([1, 2]);
    expect(likelyReady(own, { share: 0.7, cautioned: true })).toBe('open');
    expect(likelyReady(own, { share: 0.7, cautioned: false })).toBe('likely');
  });
});

describe('the board', () => {
  const digests = [
    digestOf('Di', answered('Di', 20, 20)),
    digestOf('Ada', answered('Ada', 4, 18)),
    digestOf('Bo', answered('Bo', 3, 4)),
    digestOf('Cy', []),
    digestOf('Ed', [...answered('Ed', 20, 20), ...answered('Ed', 1, 2, 20_002, 18)]),
  ];
  const board = open(digests, ['ada ', 'Bo', 'Flo']);

  test('G9 people stand in the order of their names; who sent nothing is named', () => {
    expect(board.people.map(({ name }) => name)).toEqual(['Ada', 'Bo', 'Cy', 'Di', 'Ed']);
    expect(board.notHeardFrom).toEqual(['Flo']);
    expect(board.started).toBe(4);
    expect(board.likely).toEqual({ likely: 0, unlikely: 1, open: 4 });
  });

  test('G9 make-up drills: nobody for whom there is no reason, and each with its reason', () => {
    const reasons = Object.fromEntries(board.people.map(({ name, makeUp }) => [name, makeUp?.reason ?? null]));
    expect(reasons).toEqual({ Ada: 'likely-not-ready', Bo: 'little-answered', Cy: 'nothing-answered', Di: null, Ed: 'caution-missed' });
  }); // biome-ignore format: names and reasons

  test('G9 a make-up drill asks what was missed first, cautions before all, then what was never asked', () => {
    const of = (name: string) => board.people.find((person) => person.name === name)!.makeUp!.facts;
    expect(of('Ed')).toEqual(['range:20/elements']);
    expect(of('Bo').slice(0, 3)).toEqual(['range:4/elements', 'range:5/elements', 'range:6/elements']);
    expect(of('Ada')).toHaveLength(MAKE_UP_FACTS);
    expect(of('Ada')[0]).toBe('range:5/elements');
  });

  test('G9 slip-ups by person and group', () => {
    expect(board.people[0]!.slipUps).toEqual([{ slipUp: 'neighbour-range', times: 14, people: 1 }]);
    expect(board.slipUps).toEqual([{ slipUp: 'neighbour-range', times: 14 + 1 + 1, people: 3 }]);
  });

  test('G9 facts nobody holds: held means right on two days since the last miss', () => {
    const two = digestOf('Gil', [...answered('Gil', 5, 5), ...answered('Gil', 5, 5, 20_003)]);
    const unheld = open([...digests, two]).nobodyHolds.map(({ fact }) => fact);
    // Ed was right on the nineteenth on two days.
    const held = [...facts.slice(0, 5), facts[18]!];
    expect(unheld).toEqual(facts.filter((fact) => !held.includes(fact)).map(({ id }) => id));
    expect(open([]).nobodyHolds).toHaveLength(20);
  });

  test('G9 what would be kept without practice lies between nothing and all, and is 0.3 for who knows nothing', () => {
    for (const { kept } of board.people) expect(kept > 0 && kept < 1).toBe(true);
    expect(board.people.find(({ name }) => name === 'Cy')!.kept).toBeCloseTo(0.3, 9);
  });
});

describe('before and after class', () => {
  const both = (name: string, before: number, after: number) =>
    digestOf(name, [...answered(name, before, 10), ...answered(name, after, 10, CLASS_DAY + 1)]);

  test('G12 the same people and facts on both sides, no name anywhere', () => {
    const digests = ['a', 'b', 'c', 'd', 'e'].map((name) => both(name, 4, 9));
    const once = digestOf('f', answered('f', 10, 10));
    const { areas, withheld } = compareBeforeAfter([...digests, once], facts);
    expect(areas).toHaveLength(1);
    expect(areas[0]).toMatchObject({ area: 'power-flow', people: 5, before: { right: 20, asked: 50 }, after: { right: 45, asked: 50 }, beyondChance: true });
    expect(areas[0]!.rise.low).toBeGreaterThan(0.3);
    expect(areas[0]!.rise.high).toBeLessThan(0.65);
    expect(withheld).toEqual([]);
    expect(JSON.stringify(areas)).not.toMatch(/id-|"name"/);
  }); // biome-ignore format: one row

  test('G12 fewer than five people are not shown', () => {
    const digests = ['a', 'b', 'c', 'd'].map((name) => both(name, 4, 9));
    expect(LEAST_PEOPLE).toBe(5);
    expect(compareBeforeAfter(digests, facts)).toEqual({ areas: [], withheld: ['power-flow'] });
  });

  test('G12 a small rise is not beyond chance', () => {
    const digests = ['a', 'b', 'c', 'd', 'e'].map((name) => both(name, 7, name === 'a' ? 9 : 7));
    expect(compareBeforeAfter(digests, facts).areas[0]!.beyondChance).toBe(false);
  });
});
