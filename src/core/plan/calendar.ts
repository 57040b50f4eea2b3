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

/** More days than this are not told apart in a plan: some in the middle are then planned as one. */
export const MOST_DAYS = 44;
/** The same in a bound, where days taken as one would hide what they allow. */
export const MOST_BOUND_DAYS = 180;
/** Days at either end that always stand alone. */
const NEAR = 10;
const LAST = 6;

interface Block extends PracticeDay {
  readonly sessions: number;
}

const alone = (day: PracticeDay): Block => ({ ...day, sessions: 1 });

/** Days as one: it takes place when any of them does, and has the seconds they have on average. */
function asOne(days: readonly PracticeDay[]): Block {
  const sum = (of: (day: PracticeDay) => number) => days.reduce((total, day) => total + of(day), 0);
  const some = 1 - days.reduce((none, { attendance }) => none * (1 - attendance), 1);
  return {
    day: days[days.length >> 1]!.day,
    seconds: sum(({ seconds, attendance }) => seconds * attendance) / some,
    attendance: some,
    sessions: sum(({ attendance }) => attendance) / some,
  };
}

/**
 * As many days, those in the middle taken together. Blocks are counted from the end, so that tomorrow's plan has
 * the same ones and can start from today's prices.
 */
function inBlocks(days: readonly PracticeDay[], most: number): Block[] {
  if (days.length <= most) return days.map(alone);
  const middle = days.slice(NEAR, -LAST);
  const size = Math.ceil(middle.length / (most - NEAR - LAST));
  const blocks: Block[] = [];
  for (let end = middle.length; end > 0; end -= size)
    blocks.unshift(asOne(middle.slice(Math.max(0, end - size), end)));
  return [...days.slice(0, NEAR).map(alone), ...blocks, ...days.slice(-LAST).map(alone)];
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
  const days = inBlocks(
    practice
      .filter(
        ({ day, seconds, attendance }) => day >= today && day < classDay && seconds > 0 && attendance > 0,
      )
      .sort((a, b) => a.day - b.day),
    most,
  );
  return {
    days: days.map(({ day }) => day - today),
    seconds: days.map(({ seconds }) => seconds),
    attendance: days.map(({ day, attendance }) => (day === today ? 1 : attendance)),
    sessions: days.map(({ sessions }) => sessions),
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
