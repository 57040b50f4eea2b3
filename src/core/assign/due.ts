/**
 * When class is. The instructor gives a wall time in a zone ("2026-12-03 08:00, Europe/Berlin"); the moment that
 * is, and the day it falls on for a learner elsewhere, follow from the zone's rules. A wall time that a clock
 * change skips counts as the same span after the change; one that comes twice counts as the first.
 */
import { dayOfDate, localDay } from '../memory/day.ts';

export interface ClassTime {
  /** YYYY-MM-DD. */
  readonly date: string;
  /** HH:MM, 00:00 to 23:59. */
  readonly time: string;
  /** IANA time zone: "Europe/Berlin". */
  readonly zone: string;
}

const DAY_MS = 86_400_000;
const formats = new Map<string, Intl.DateTimeFormat>();

function formatFor(zone: string): Intl.DateTimeFormat {
  let format = formats.get(zone);
  if (!format) {
    format = new Intl.DateTimeFormat('en-u-ca-gregory-nu-latn', {
      timeZone: zone,
      hourCycle: 'h23',
      hour: 'numeric',
      minute: 'numeric',
      second: 'numeric',
    });
    formats.set(zone, format);
  }
  return format;
}

/** Whether the platform knows the zone. */
export function isZone(zone: string): boolean {
  try {
    formatFor(zone);
    return true;
  } catch {
    return false;
  }
}

/** What the wall clock of a zone shows, as milliseconds since 1970 on that clock. */
function wallMs(at: number, zone: string): number {
  const parts = new Map(
    formatFor(zone)
      .formatToParts(at)
      .map(({ type, value }) => [type, Number(value)]),
  );
  const seconds = (parts.get('hour')! * 60 + parts.get('minute')!) * 60 + parts.get('second')!;
  return localDay(at, zone) * DAY_MS + seconds * 1000;
}

/** Minutes since midnight; null for what is no time of day: '24:00', '8 am'. */
export function minutesOfTime(time: string): number | null {
  const match = /^([01]\d|2[0-3]):([0-5]\d)$/.exec(time);
  return match ? Number(match[1]) * 60 + Number(match[2]) : null;
}

/** The moment class begins, in milliseconds since 1970. Throws RangeError when date, time or zone is none. */
export function classMoment({ date, time, zone }: ClassTime): number {
  const [day, minutes] = [dayOfDate(date), minutesOfTime(time)];
  if (day === null || minutes === null || !isZone(zone))
    throw new RangeError(`no time of a class: ${date} ${time} ${zone}`);
  const wall = day * DAY_MS + minutes * 60_000;
  // The zone's offsets a day before and a day after: they differ only around a change.
  const [before, after] = [wall - DAY_MS, wall + DAY_MS].map((at) => wallMs(at, zone) - at) as [
    number,
    number,
  ];
  const moments = [wall - before, wall - after].filter((at) => wallMs(at, zone) === wall);
  return moments.length > 0 ? Math.min(...moments) : wall - before;
}

/** The local day on which class is for somebody in `zone`; practice ends the day before, or that morning. */
export const dueDay = (classAt: ClassTime, zone: string = classAt.zone): number =>
  localDay(classMoment(classAt), zone);

/** Whole days from now to the day of class, by the calendar of the learner's zone; below 0 once it is over. */
export const daysToClass = (
  classAt: ClassTime,
  now: { readonly at: number; readonly zone: string },
): number => dueDay(classAt, now.zone) - localDay(now.at, now.zone);
