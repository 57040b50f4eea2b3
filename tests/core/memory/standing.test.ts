import { describe, expect, test } from 'vitest';
import { foldAttempts } from '../../../src/core/memory/fold.ts';
import { recallOn } from '../../../src/core/memory/recall.ts';
import { SLIPPED_BELOW, standingOf } from '../../../src/core/memory/standing.ts';
import { anAttempt } from '../../attempts.ts';

const DAY = 20_000;

/** The memory of a fact after answers on these days: 3 is right on day 3, -3 wrong on day 3. */
const memoryOf = (...answers: number[]) =>
  foldAttempts(
    answers.map((answer, i) =>
      anAttempt({ fact: 'a', sequence: i + 1, day: DAY + Math.abs(answer), right: answer > 0 }),
    ),
  ).get('a');

describe('M14 to M17', () => {
  test.each<[string, number[], number, string]>([
    ['M14 no answer yet', [], 1, 'not-tried'],
    ['M17 missed at first', [-1], 1, 'setting'],
    ['M17 right once', [1], 1, 'setting'],
    ['M15 twice on one day is one day', [1, 1], 1, 'setting'],
    ['M15 right on two days', [1, 3], 3, 'holding'],
    ['M15 missed first, right later that day, then right on two days', [-1, 1, 2, 4], 4, 'holding'],
    ['M15 right later on the day of a miss is not a right day', [-1, 1, 2], 2, 'setting'],
    ['M16 held, then missed', [1, 3, -6], 6, 'slipped'],
    ['M16 held, missed, put right at once: still slipped today', [1, 3, -6, 6], 6, 'slipped'],
    ['M17 held, missed, right the day after', [1, 3, -6, 7], 7, 'setting'],
    ['M15 held, missed, right on two days', [1, 3, -6, 7, 9], 9, 'holding'],
    ['M16 held, and not asked for a year', [1, 3], 368, 'slipped'],
    ['M17 right once, and not asked for a year', [1], 366, 'setting'],
  ])('%s', (_, answers, day, expected) => {
    expect(standingOf(memoryOf(...answers), DAY + day)).toBe(expected);
  });

  test('M15 M16 the turn from holding to slipped lies where recall falls below 0.8', () => {
    const memory = memoryOf(1, 3)!;
    let day = DAY + 3;
    while (standingOf(memory, day) === 'holding') day++;
    expect(recallOn(memory, day - 1)).toBeGreaterThanOrEqual(SLIPPED_BELOW);
    expect(recallOn(memory, day)).toBeLessThan(SLIPPED_BELOW);
  });
});
