import { describe, expect, test } from 'vitest';
import { calendarOf, everyDay, MOST_DAYS } from '../../../src/core/plan/calendar.ts';

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

describe('P5: the days as they are planned', () => {
  test('up to 44 days each stands alone', () => {
    const { days, seconds, classDay } = calendarOf(everyDay(100, 144, 600), 100, 144);
    expect(days).toEqual([...Array(44).keys()]);
    expect(seconds).toEqual(days.map(() => 600));
    expect(classDay).toBe(44);
    expect(MOST_DAYS).toBe(44);
  });

  test('of 60 days the next ten and the last six stand alone, the others in twos at the later one', () => {
    const { days, seconds } = calendarOf(everyDay(0, 60, 600), 0, 60);
    expect(days.slice(0, 13)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 11, 13, 15]);
    expect(days.slice(-8)).toEqual([51, 53, 54, 55, 56, 57, 58, 59]);
    expect(seconds.slice(9, 11)).toEqual([600, 1200]);
    expect(sum(seconds)).toBe(60 * 600);
  });

  test('tomorrow the same days are taken together, so that prices stay where they were', () => {
    for (let today = 0; today < 8; today++) {
      const far = (from: number) =>
        calendarOf(everyDay(from, 60, 600), from, 60)
          .days.map((day) => day + from)
          .filter((day) => day > 22);
      expect(far(today)).toEqual(far(0));
    }
  });

  test('days that may not take place: a block nearly surely does, and has the seconds they have on average', () => {
    const calendar = calendarOf(everyDay(0, 60, 600, 0.5), 0, 60);
    expect(calendar.attendance[0]).toBe(1);
    expect(calendar.attendance[1]).toBe(0.5);
    expect(calendar.attendance[12]).toBe(0.75);
    expect(calendar.seconds[12]).toBe(800);
    expect(calendar.sessions![12]).toBeCloseTo(4 / 3, 12);
    const expected = calendar.seconds.map((seconds, u) => seconds * calendar.attendance[u]!);
    expect(sum(expected)).toBeCloseTo(600 + 59 * 300, 6);
  });

  test('days past, days from class on, and days without seconds or chance are none', () => {
    const practice = [
      ...everyDay(0, 5, 600),
      { day: 5, seconds: 0, attendance: 1 },
      { day: 6, seconds: 600, attendance: 0 },
      { day: 7, seconds: 600, attendance: 1 },
      { day: 9, seconds: 600, attendance: 1 },
    ];
    expect(calendarOf(practice, 3, 9).days).toEqual([0, 1, 4]);
    expect(calendarOf(practice, 9, 9)).toMatchObject({ days: [], classDay: 0 });
  });
});
