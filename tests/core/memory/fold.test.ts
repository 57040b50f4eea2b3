import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Attempt } from '../../../src/core/memory/attempt.ts';
import { foldAttempts } from '../../../src/core/memory/fold.ts';
import { outcomesOn } from '../../../src/core/memory/recall.ts';
import { anAttempt } from '../../attempts.ts';

const DAY = 20_000;
const FACTS = ['a', 'b', 'c', 'd'];

/** A log of one to three devices, each counting its own answers at times that mostly go forward. */
const logs = fc
  .array(
    fc.record({
      device: fc.constantFrom('phone', 'tablet', 'desk'),
      hours: fc.integer({ min: -30, max: 80 }),
      facts: fc.uniqueArray(fc.constantFrom(...FACTS), { minLength: 1, maxLength: 3 }),
      right: fc.boolean(),
      named: fc.boolean(),
      guessRate: fc.constantFrom(0, 0.1, 0.25, 0.5),
    }),
    { minLength: 1, maxLength: 40 },
  )
  .map((steps) => {
    const clocks = new Map<string, { sequence: number; hour: number }>();
    return steps.map(({ device, hours, facts, right, named, guessRate }): Attempt => {
      const last = clocks.get(device) ?? { sequence: 0, hour: DAY * 24 };
      const clock = { sequence: last.sequence + 1, hour: last.hour + hours };
      clocks.set(device, clock);
      return anAttempt({
        device,
        sequence: clock.sequence,
        facts,
        fact: facts[0]!,
        right,
        guessRate,
        missed: !right && named ? [facts[0]!] : [],
        at: clock.hour * 3_600_000,
        day: Math.floor(clock.hour / 24),
      });
    });
  });

describe('M10 a fold of the log', () => {
  test('shuffled, doubled and merged from parts, it gives the same memories', () => {
    fc.assert(
      fc.property(logs, fc.infiniteStream(fc.nat()), (log, chance) => {
        const expected = foldAttempts(log);
        const shuffled = log
          .map((attempt) => ({ attempt, key: chance.next().value }))
          .sort((a, b) => a.key - b.key)
          .map(({ attempt }) => attempt);
        expect(foldAttempts(shuffled)).toEqual(expected);
        expect(foldAttempts([...shuffled, ...log.map((attempt) => ({ ...attempt }))])).toEqual(expected);
        const half = shuffled.slice(0, log.length >> 1);
        expect(foldAttempts([...half, ...shuffled.slice(half.length >> 1)])).toEqual(expected);
      }),
    );
  });

  test('every memory is finite, in range, and counts no more than was asked', () => {
    fc.assert(
      fc.property(logs, (log) => {
        for (const [fact, memory] of foldAttempts(log)) {
          expect(memory.stability).toBeGreaterThan(0);
          expect(memory.difficulty).toBeGreaterThanOrEqual(1);
          expect(memory.difficulty).toBeLessThanOrEqual(10);
          expect(Number.isSafeInteger(memory.lastDay)).toBe(true);
          expect(memory.firstDay).toBeLessThanOrEqual(memory.lastDay);
          expect(memory.asked).toBe(log.filter((attempt) => attempt.facts.includes(fact)).length);
          expect(memory.missed + memory.rightDays).toBeLessThanOrEqual(memory.asked);
        }
      }),
    );
  });

  test('the same id is the same attempt', () => {
    const attempt = anAttempt();
    expect(foldAttempts([attempt, attempt])).toEqual(foldAttempts([attempt]));
  });

  test('an empty log gives no memories', () => {
    expect(foldAttempts([]).size).toBe(0);
  });
});

describe('by hand', () => {
  test('M5 M8 a first answer that cannot be guessed, right, is the outcome "recalled"', () => {
    const memory = foldAttempts([anAttempt({ fact: 'a' })]).get('a');
    expect(memory).toEqual({
      ...outcomesOn(undefined, DAY).recalled,
      firstDay: DAY,
      asked: 1,
      missed: 0,
      rightDays: 1,
      held: false,
    });
  });

  test('M8 guessed at one in four: 62.7 % of the way', () => {
    // p = 0.294 / 0.469; S = 2.3065^p × 0.212^(1 − p) = e^−0.0549 = 0.9466, D = 2.1181 p + 6.4133 (1 − p) = 3.7208
    const memory = foldAttempts([anAttempt({ fact: 'a', guessRate: 0.25 })]).get('a')!;
    expect(memory.stability).toBeCloseTo(0.9466, 4);
    expect(memory.difficulty).toBeCloseTo(3.7208, 4);
  });

  test('M7 M13 a named miss moves that fact down and the other up', () => {
    const wrong = anAttempt({ facts: ['a', 'b'], right: false, guessRate: 0.25 });
    const [unnamed, named] = [foldAttempts([wrong]), foldAttempts([{ ...wrong, missed: ['b'] }])];
    expect(named.get('b')!.stability).toBeCloseTo(0.212, 10);
    expect(named.get('a')!.stability).toBeGreaterThan(unnamed.get('a')!.stability);
    expect([named.get('a')!.missed, named.get('b')!.missed]).toEqual([0, 1]);
    expect([unnamed.get('a')!.missed, unnamed.get('b')!.missed]).toEqual([1, 1]);
  });

  test('M9 time decides nothing', () => {
    const quick = anAttempt({ seconds: 2, interrupted: false });
    expect(foldAttempts([{ ...quick, seconds: 600, interrupted: true }])).toEqual(foldAttempts([quick]));
  });

  test('M12 a voided attempt counts as never given', () => {
    const log = [1, 2, 3].map((sequence) =>
      anAttempt({ sequence, day: DAY + sequence, right: sequence !== 2 }),
    );
    expect(foldAttempts(log, new Set(['phone-2']))).toEqual(foldAttempts([log[0]!, log[2]!]));
    expect(foldAttempts(log, new Set(log.map((attempt) => attempt.id))).size).toBe(0);
  });

  test('M13 right days: one per day, only by its first answer, from the last miss on', () => {
    const steps: [day: number, right: boolean, rightDays: number, held: boolean][] = [
      [0, true, 1, false],
      [0, true, 1, false],
      [3, true, 2, true],
      [5, false, 0, true],
      [5, true, 0, true],
      [6, true, 1, true],
    ];
    const log = steps.map(([day, right], i) =>
      anAttempt({ fact: 'a', sequence: i + 1, day: DAY + day, right }),
    );
    for (const [i, [, , rightDays, held]] of steps.entries())
      expect(foldAttempts(log.slice(0, i + 1)).get('a')).toMatchObject({ rightDays, held });
  });
});

describe('M11 clocks', () => {
  const days = (...list: number[]) =>
    list.map((day, i) => anAttempt({ fact: 'a', sequence: i + 1, day: DAY + day }));

  test('a clock set a year ahead for one answer: the fact is not put out of sight for a year', () => {
    expect(foldAttempts(days(0, 365, 3, 9)).get('a')).toEqual(foldAttempts(days(0, 0, 3, 9)).get('a'));
  });

  test('a clock set back for two answers: what came before stays where it was', () => {
    expect(foldAttempts(days(0, 4, 5, -300, -299, 9)).get('a')).toEqual(
      foldAttempts(days(0, 4, 5, 5, 5, 9)).get('a'),
    );
  });

  test('a clock wrong from the start takes the first day that can be trusted', () => {
    expect(foldAttempts(days(500, 0, 1)).get('a')).toEqual(foldAttempts(days(0, 0, 1)).get('a'));
  });

  test('a flight west: the local day falls by one, the moments do not; nothing runs backwards', () => {
    const log = [
      anAttempt({ fact: 'a', day: DAY, at: 1000 }),
      anAttempt({ fact: 'a', sequence: 2, day: DAY - 1, at: 2000 }),
    ];
    expect(foldAttempts(log).get('a')).toMatchObject({ firstDay: DAY, lastDay: DAY, asked: 2 });
  });

  test('two devices: by time, whichever counted further', () => {
    const phone = anAttempt({ fact: 'a', device: 'phone', sequence: 90, day: DAY, right: false });
    const desk = anAttempt({ fact: 'a', device: 'desk', sequence: 1, day: DAY + 1 });
    expect(foldAttempts([desk, phone]).get('a')).toMatchObject({ firstDay: DAY, rightDays: 1, missed: 1 });
  });
});
