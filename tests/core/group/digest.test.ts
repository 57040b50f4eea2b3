import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { joinReports, type LearnerLog } from '../../../src/core/assign/merge-reports.ts';
import type { Confusion } from '../../../src/core/group/confusions.ts';
import { digestLog, type LearnerDigest, memoryAt, TRIES } from '../../../src/core/group/digest.ts';
import type { Attempt } from '../../../src/core/memory/attempt.ts';
import { foldAttempts } from '../../../src/core/memory/fold.ts';
import { say } from '../../../src/core/questions/phrase.ts';
import { anAttempt } from '../../attempts.ts';
import { aReport, sealed } from '../../reports.ts';

const logOf = (attempts: readonly Attempt[]): LearnerLog =>
  joinReports([sealed(aReport({ attempts }))]).learners[0]!;

const digest = (attempts: readonly Attempt[], changes: Partial<Parameters<typeof digestLog>[0]> = {}) =>
  digestLog({ log: logOf(attempts), voids: new Set(), classDay: 20_010, confusedIn: () => [], ...changes });

const column = (own: LearnerDigest, fact: string, name: keyof LearnerDigest['columns']) =>
  own.columns[name][own.facts.indexOf(fact)];

describe('a learner’s digest', () => {
  test('G1 first tries of a day are counted; what is asked again that day is not', () => {
    const at = (sequence: number, day: number, right: boolean) => anAttempt({ sequence, day, right });
    const own = digest([
      at(1, 20_000, false),
      at(2, 20_000, true),
      at(3, 20_001, true),
      at(4, 20_001, false),
      at(5, 20_010, false),
      at(6, 20_011, true),
    ]);
    const told = ['tries', 'triesRight', 'latest', 'before', 'after'] as const;
    expect(told.map((name) => column(own, 'range:1/elements', name))).toEqual([
      4,
      2,
      TRIES.right,
      TRIES.right,
      TRIES.right,
    ]);
    expect(own).toMatchObject({ answers: 6, days: 4, firstDay: 20_000, lastDay: 20_011, voided: 0 });
  });

  test('G1 the day of class itself is after: class has begun by then', () => {
    const own = digest([anAttempt({ day: 20_009, right: false }), anAttempt({ sequence: 2, day: 20_010 })]);
    expect(column(own, 'range:1/elements', 'before')).toBe(TRIES.missed);
    expect(column(own, 'range:1/elements', 'after')).toBe(TRIES.right);
  });

  test('G1 a fact that was only needed, never asked for, has a memory but no try', () => {
    const own = digest([anAttempt({ fact: 'shift:1>2', facts: ['shift:1>2', 'range:1/elements'] })]);
    expect(column(own, 'range:1/elements', 'asked')).toBe(1);
    expect(column(own, 'range:1/elements', 'latest')).toBe(TRIES.none);
  });

  test('G2 voided answers count nowhere but as voided', () => {
    const attempts = [
      anAttempt({ right: false, slipUps: ['neighbour-range'] }),
      anAttempt({ sequence: 2, day: 20_001 }),
    ];
    const own = digest(attempts, { voids: new Set(['phone-1']) });
    expect(own).toMatchObject({ answers: 1, voided: 1, days: 1, slipUps: [] });
    expect(column(own, 'range:1/elements', 'triesRight')).toBe(1);
  });

  test('G3 memories are those of the fold, over random logs in any order', () => {
    const random = fc.array(
      fc.record({
        fact: fc.constantFrom('a', 'b', 'c'),
        also: fc.constantFrom('a', 'b', 'c', 'd'),
        right: fc.boolean(),
        day: fc.integer({ min: 20_000, max: 20_030 }),
      }),
      { maxLength: 40 },
    );
    fc.assert(
      fc.property(random, (rows) => {
        const attempts = rows.map(({ fact, also, right, day }, index) =>
          anAttempt({ sequence: index + 1, fact, facts: [...new Set([fact, also])], right, day }),
        );
        const own = digest(attempts);
        const memory = foldAttempts(attempts);
        expect(own.facts).toEqual([...memory.keys()].sort());
        for (const [place, fact] of own.facts.entries())
          expect(memoryAt(own, place)).toEqual(memory.get(fact));
        expect(JSON.parse(JSON.stringify(own))).toEqual(own);
        expect(digest([...attempts].reverse())).toEqual(own);
      }),
      { numRuns: 60 },
    );
  });

  test('G4 wrong answers are opened once: made anew, the digest asks only about new ones', () => {
    const confusion: Confusion = { about: null, right: say('a'), given: say('b'), swapped: false };
    const attempts = [1, 2, 3].map((sequence) => anAttempt({ sequence, right: sequence === 1 }));
    const opened: string[] = [];
    const confusedIn = (attempt: Attempt) => {
      opened.push(attempt.id);
      return attempt.id === 'phone-2' ? [confusion] : [];
    };
    const first = digest(attempts, { confusedIn });
    expect(opened).toEqual(['phone-2', 'phone-3']);
    expect(first.confusions).toEqual([['phone-2', [confusion]], ['phone-3', []]]);
    const more = [...attempts, anAttempt({ sequence: 4, right: false })];
    const next = digest(more, { confusedIn, known: first });
    expect(opened).toEqual(['phone-2', 'phone-3', 'phone-4']);
    expect(next).toEqual(digest(more, { confusedIn }));
  }); // biome-ignore format: pairs
});
