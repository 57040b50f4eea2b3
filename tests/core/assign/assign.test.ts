import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, assignedFacts, laterIssue, weightsOf } from '../../../src/core/assign/assignment.ts';
import {
  correctionBetween,
  joinCorrections,
  noticesFor,
  voidsOf,
} from '../../../src/core/assign/corrections.ts';
import { joinReports, whomToTell } from '../../../src/core/assign/merge-reports.ts';
import { makeReport, type SealedReport } from '../../../src/core/assign/report.ts';
import { foldAttempts } from '../../../src/core/memory/fold.ts';
import { factsOf } from '../../../src/core/questions/facts.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { anAttempt } from '../../attempts.ts';
import { aCorrection, aFlag, anAssignment, aReport, sealed } from '../../reports.ts';
import { shippedDecks } from '../../units.ts';

const kestrel = shippedDecks().find((deck) => deck.id === 'kestrel-7')!;
const unit = makeUnit(kestrel);
const facts = factsOf(unit);

describe('what is assigned', () => {
  test('H1 the whole deck, some areas, or facts by name, in the order of the deck', () => {
    expect(assignedFacts({ scope: { kind: 'deck' } }, facts)).toEqual({ facts, missing: [] });
    const flow = assignedFacts({ scope: { kind: 'areas', areas: ['hydraulics'] } }, facts).facts.map(
      ({ id }) => id,
    );
    expect(flow).toContain('solenoid:SA/pressure');
    expect(flow).not.toContain('range:1/elements');
    const named = {
      kind: 'facts',
      facts: ['range:2/elements', 'range:99/elements', 'range:1/elements'],
    } as const;
    const { facts: found, missing } = assignedFacts({ scope: named }, facts);
    expect(found.map(({ id }) => id)).toEqual(['range:1/elements', 'range:2/elements']);
    expect(missing).toEqual(['range:99/elements']);
  });

  test('H11 facts of an area count double or half where the assignment says so, all others as usual', () => {
    const weights = weightsOf({ counting: { hydraulics: 'double', safety: 'half' } }, facts);
    for (const fact of facts) {
      const area = areaOf(fact);
      const expected = area === 'hydraulics' ? 2 : area === 'safety' ? 0.5 : undefined;
      expect(weights.get(fact.id)).toBe(expected);
    }
    expect(new Set(weights.values())).toEqual(new Set([2, 0.5]));
    expect(weightsOf({}, facts).size).toBe(0);
  });

  test('H4 the higher issue counts, whichever comes first; equal ones by when they were made', () => {
    const [first, second] = [anAssignment({ issue: 1, madeAt: 9 }), anAssignment({ issue: 2, madeAt: 5 })];
    expect(laterIssue(first, second)).toBe(second);
    expect(laterIssue(second, first)).toBe(second);
    const [early, late] = [anAssignment({ madeAt: 1 }), anAssignment({ madeAt: 2 })];
    expect(laterIssue(late, early)).toBe(late);
    expect(laterIssue(early, late)).toBe(late);
    expect(() => laterIssue(first, anAssignment({ id: 'other' }))).toThrow('not one');
  });
});

describe('a report', () => {
  const given = {
    id: 'report-1',
    assignment: anAssignment(),
    facts: new Set(['range:1/elements']),
    learner: { id: 'learner-1', name: 'Ada' },
    flags: [aFlag(), aFlag({ id: 'flag-2', deck: 'other' })],
    corrections: ['correction-1'],
    madeAt: 5,
  };
  const attempts = [
    anAttempt({ sequence: 1 }),
    anAttempt({ sequence: 2, fact: 'range:9/elements' }),
    anAttempt({ sequence: 3, deck: 'other' }),
    anAttempt({ sequence: 4, fact: 'range:9/elements', facts: ['range:9/elements', 'range:1/elements'] }),
  ];

  test('H5 holds the attempts that needed an assigned fact of this deck, and nothing else', () => {
    const report = makeReport({ ...given, attempts });
    expect(report.attempts.map(({ sequence }) => sequence)).toEqual([1, 4]);
    expect(report.flags.map(({ id }) => id)).toEqual(['flag-1']);
  });

  test('H5 a short report and the one before it join to the long one', () => {
    const cut = attempts[0]!.at;
    const [before, after, all] = [
      makeReport({ ...given, id: 'r1', attempts: attempts.filter(({ at }) => at <= cut), madeAt: 5 }),
      makeReport({ ...given, id: 'r2', attempts, after: cut, madeAt: 6 }),
      makeReport({ ...given, id: 'r3', attempts, madeAt: 6 }),
    ];
    const logOf = (...reports: SealedReport[]) => joinReports(reports).learners[0]!.attempts;
    expect(logOf(sealed(before), sealed(after))).toEqual(logOf(sealed(all)));
  });
});

describe('joining reports', () => {
  /** Reports of three learners whose attempts overlap in every way. */
  const someReports = fc.array(
    fc.record({
      id: fc.constantFrom('r1', 'r2', 'r3', 'r4', 'r5', 'r6'),
      learner: fc.constantFrom('ada', 'bo', 'cy'),
      madeAt: fc.integer({ min: 1, max: 9 }),
      attempts: fc.subarray([1, 2, 3, 4, 5, 6, 7, 8]),
      key: fc.constantFrom('phone', 'tablet', null),
    }),
    { maxLength: 8 },
  );
  const built = (
    rows: readonly { id: string; learner: string; madeAt: number; attempts: number[]; key: string | null }[],
  ) =>
    rows.map(({ id, learner, madeAt, attempts, key }) =>
      sealed(
        aReport({
          id: `${id} ${learner} ${madeAt} ${attempts}`,
          learner: { id: learner, name: `${learner} ${madeAt}` },
          madeAt,
          attempts: attempts.map((sequence) => anAttempt({ sequence, device: learner })),
        }),
        key,
      ),
    );

  test('H6 the order and the number of copies make no difference', () => {
    fc.assert(
      fc.property(someReports, fc.integer(), (rows, seed) => {
        const reports = built(rows);
        const mixed = [...reports, ...reports.slice(0, seed & 3)].sort(
          (a, b) => ((a.report.madeAt * 7919 + seed) % 13) - ((b.report.madeAt * 7919 + seed) % 13),
        );
        const strip = ({ learners, disputed }: ReturnType<typeof joinReports>) => ({ learners, disputed });
        expect(strip(joinReports(mixed))).toEqual(strip(joinReports(reports)));
      }),
    );
  });

  test('H6 every attempt of a learner is there once, and none of another’s', () => {
    fc.assert(
      fc.property(someReports, (rows) => {
        for (const { learner, attempts } of joinReports(built(rows)).learners) {
          const own = rows.filter((row) => row.learner === learner).flatMap((row) => row.attempts);
          expect(attempts.map(({ id }) => id)).toEqual(
            [...new Set(own)].sort().map((n) => `${learner}-${n}`),
          );
        }
      }),
    );
  });

  test('H6 the latest name counts, an old report brings no old name back', () => {
    const reports = [
      sealed(aReport({ id: 'new', madeAt: 9, learner: { id: 'l', name: 'Ada L.' } })),
      sealed(aReport({ id: 'old', madeAt: 1, learner: { id: 'l', name: 'A.' } })),
    ];
    expect(joinReports(reports).learners[0]).toMatchObject({ name: 'Ada L.', reports: 2, lastReport: 9 });
  });

  test('H7 one attempt with two contents is told, and the one handed in first counts', () => {
    const honest = sealed(aReport({ id: 'a', madeAt: 1, attempts: [anAttempt({ right: false })] }));
    const changed = sealed(aReport({ id: 'b', madeAt: 2, attempts: [anAttempt({ right: true })] }));
    for (const order of [[honest, changed], [changed, honest]]) {
      const { learners, disputed } = joinReports(order);
      expect(learners[0]!.attempts[0]!.right).toBe(false);
      expect(disputed).toEqual([{ attempt: 'phone-1', learners: ['learner-1'], kind: 'changed' }]);
    }
  }); // biome-ignore format: two orders

  test('H7 one attempt handed in by two people is told', () => {
    const copy = sealed(aReport({ id: 'b', learner: { id: 'learner-2', name: 'Bo' } }));
    expect(joinReports([sealed(aReport()), copy]).disputed).toEqual([
      { attempt: 'phone-1', learners: ['learner-1', 'learner-2'], kind: 'shared' },
      { attempt: 'phone-2', learners: ['learner-1', 'learner-2'], kind: 'shared' },
    ]);
  });

  test('H7 each device’s key is kept; a report without a seal shows as null', () => {
    const reports = [
      sealed(aReport()),
      sealed(aReport({ id: 'b' }), 'key-2'),
      sealed(aReport({ id: 'c' }), null),
    ];
    expect(joinReports(reports).learners[0]!.keys).toEqual([null, 'key-1', 'key-2']);
  });
});

describe('corrections', () => {
  const attempts = [
    anAttempt({ sequence: 1 }),
    anAttempt({ sequence: 2, fact: 'range:2/elements' }),
    anAttempt({ sequence: 3, revision: 2 }),
    anAttempt({ sequence: 4, fact: 'range:2/elements', facts: ['range:2/elements', 'element:B1/ranges'] }),
    anAttempt({ sequence: 5, deck: 'other' }),
  ];

  test('H8 void earlier attempts on what they correct: not other facts, not other decks, not later revisions', () => {
    expect(voidsOf(attempts, [aCorrection()])).toEqual(new Set(['phone-1', 'phone-4']));
    expect(voidsOf(attempts, [])).toEqual(new Set());
    expect(voidsOf(attempts, [aCorrection({ revision: 3 })])).toEqual(
      new Set(['phone-1', 'phone-3', 'phone-4']),
    );
  });

  test('H8 a fact whose only answers are voided is as if never asked', () => {
    const memory = foldAttempts(attempts, voidsOf(attempts, [aCorrection({ revision: 3, deck: 'demo' })]));
    expect(memory.get('range:2/elements')!.asked).toBe(1);
    const others = attempts.filter(({ deck }) => deck === 'demo');
    expect(
      foldAttempts(others, voidsOf(others, [aCorrection({ revision: 3 })])).has('range:1/elements'),
    ).toBe(false);
  });

  test('H9 a learner is told of what he answered, and of nothing else', () => {
    const [notice, ...rest] = noticesFor(attempts, [
      aCorrection(),
      aCorrection({ id: 'elsewhere', facts: ['range:7/elements'] }),
    ]);
    expect(rest).toEqual([]);
    expect(notice!.facts).toEqual([
      { fact: 'range:1/elements', answers: 1 },
      { fact: 'element:B1/ranges', answers: 1 },
    ]);
  });

  test('H9 the instructor sees whom to tell, and who was told by his own device', () => {
    const logs = joinReports([
      sealed(aReport({ learner: { id: 'a', name: 'Ada' }, attempts, corrections: ['correction-1'] })),
      sealed(aReport({ id: 'b', learner: { id: 'b', name: 'Bo' }, attempts: [anAttempt({ device: 'b', day: 20_003 })] })),
      sealed(aReport({ id: 'c', learner: { id: 'c', name: 'Cy' }, attempts: [anAttempt({ device: 'c', fact: 'x' })] })),
    ]).learners;
    expect(whomToTell(aCorrection(), logs)).toEqual([
      { learner: 'b', name: 'Bo', answers: 1, lastDay: 20_003, told: false },
      { learner: 'a', name: 'Ada', answers: 2, lastDay: 20_000, told: true },
    ]);
  }); // biome-ignore format: one report a line

  test('H10 lists of corrections that travelled apart join by id', () => {
    const [one, two] = [aCorrection(), aCorrection({ id: 'correction-2', revision: 3 })];
    expect(joinCorrections([two], [one, two])).toEqual([one, two]);
    expect(joinCorrections([one], [], [two])).toEqual([one, two]);
  });

  test('H8 a wrong cell, put right, names the facts that came out otherwise', () => {
    const wrong = structuredClone(kestrel) as { -readonly [K in keyof Deck]: Deck[K] };
    const later = { ...kestrel, revision: kestrel.revision + 1 };
    wrong.chart = {
      ...wrong.chart,
      ranges: wrong.chart.ranges.map((row) =>
        row.id === '3' ? { ...row, applied: ['B1', 'C1'], ratio: undefined } : row,
      ),
    };
    const said = { id: 'c', note: 'Range 3 has C2, not C1.', at: 5 };
    const correction = correctionBetween(makeUnit(wrong), makeUnit(later), said);
    expect(correction).toMatchObject({ deck: 'kestrel-7', revision: kestrel.revision + 1 });
    expect(correction.refs).toEqual(['cell:3/C1', 'cell:3/C2', 'range:3']);
    for (const fact of ['range:3/elements', 'element:C1/ranges', 'element:C2/ranges'])
      expect(correction.facts).toContain(fact);
    expect(correction.facts).not.toContain('range:1/elements');
    expect(() => correctionBetween(unit, unit, said)).toThrow('later revision');
  });

  test('H8 a new name corrects nothing', () => {
    const renamed = { ...kestrel, revision: kestrel.revision + 1, title: 'Kestrel' };
    const { refs, facts: touched } = correctionBetween(unit, makeUnit(renamed), { id: 'c', note: '', at: 5 });
    expect([refs, touched]).toEqual([[], []]);
  });
});
