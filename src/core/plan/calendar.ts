/** The days left for practice before class, as the programme takes them. */
import type { Calendar } from './programme.ts';

export interface PracticeDay {
  /** Local day. */
  readonly day: number;
  /** Seconds of practice when it takes place. */
  readonly seconds: number;
  /** Chance that it takes place, 0 to 1. */
  readonly attendance: number;
}

/** More days than this are not told apart in a plan: pairs of later ones are planned as one. */
export const MOST_DAYS = 63;
/** The same in a bound, where a pair taken as one would hide what its two days allow. */
export const MOST_BOUND_DAYS = 180;
/** Days at either end that always stand alone. */
const NEAR = 14;
const LAST = 7;

function halve(days: readonly PracticeDay[]): PracticeDay[] {
  const halved: PracticeDay[] = [];
  for (let i = 0; i < days.length; i += 2) {
    const [first, second] = [days[i]!, days[i + 1]];
    halved.push(
      second
        ? {
            day: first.day,
            seconds: first.seconds + second.seconds,
            attendance:
              (first.attendance * first.seconds + second.attendance * second.seconds) /
              (first.seconds + second.seconds),
          }
        : first,
    );
  }
  return halved;
}

/**
 * The practice days from today to the day before class; days without seconds or chance are left out. What is
 * drawn today takes place, so today's attendance counts as 1.
 */
export function calendarOf(
  practice: readonly PracticeDay[],
  today: number,
  classDay: number,
  most = MOST_DAYS,
): Calendar {
  let days = practice
    .filter(({ day, seconds, attendance }) => day >= today && day < classDay && seconds > 0 && attendance > 0)
    .sort((a, b) => a.day - b.day);
  while (days.length > most)
    days = [...days.slice(0, NEAR), ...halve(days.slice(NEAR, -LAST)), ...days.slice(-LAST)];
  return {
    days: days.map(({ day }) => day - today),
    seconds: days.map(({ seconds }) => seconds),
    attendance: days.map(({ day, attendance }) => (day === today ? 1 : attendance)),
    classDay: Math.max(0, classDay - today),
  };
}

/** The same seconds every day from today to class: the usual assignment. */
export function everyDay(today: number, classDay: number, seconds: number, attendance = 1): PracticeDay[] {
  return Array.from({ length: Math.max(0, classDay - today) }, (_, i) => ({
    day: today + i,
    seconds,
    attendance,
  }));
}
