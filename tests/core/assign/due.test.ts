import { describe, expect, test } from 'vitest';
import { classMoment, daysToClass, dueDay, isZone, minutesOfTime } from '../../../src/core/assign/due.ts';
import { dateOfDay } from '../../../src/core/memory/day.ts';

/** Worked out by hand from the zones' published offsets and changes of clock. */
const MOMENTS: readonly [why: string, date: string, time: string, zone: string, utc: string][] = [
  ['winter, +1', '2026-12-03', '08:00', 'Europe/Berlin', '2026-12-03T07:00Z'],
  ['summer, +2', '2026-07-03', '08:00', 'Europe/Berlin', '2026-07-03T06:00Z'],
  ['skipped in spring: half past two is half past three', '2026-03-29', '02:30', 'Europe/Berlin', '2026-03-29T01:30Z'],
  ['twice in autumn: the first', '2026-10-25', '02:30', 'Europe/Berlin', '2026-10-25T00:30Z'],
  ['skipped, −5 to −4', '2026-03-08', '02:30', 'America/New_York', '2026-03-08T07:30Z'],
  ['twice, −4 first', '2026-11-01', '01:30', 'America/New_York', '2026-11-01T05:30Z'],
  ['a quarter hour off, +5:45', '2026-12-03', '08:00', 'Asia/Kathmandu', '2026-12-03T02:15Z'],
  ['a change of half an hour, twice', '2026-04-05', '01:45', 'Australia/Lord_Howe', '2026-04-04T14:45Z'],
  ['midnight, on the other side of the date line', '2026-12-03', '00:00', 'Pacific/Auckland', '2026-12-02T11:00Z'],
  ['the day Samoa left out', '2011-12-30', '10:00', 'Pacific/Apia', '2011-12-30T20:00Z'],
  ['UTC itself', '1970-01-01', '00:01', 'UTC', '1970-01-01T00:01Z'],
]; // biome-ignore format: a table reads across

describe('when class is', () => {
  test.each(MOMENTS)('H2 %s: %s %s %s', (_, date, time, zone, utc) => {
    expect(new Date(classMoment({ date, time, zone })).toISOString()).toBe(utc.replace('Z', ':00.000Z'));
  });

  test('H2 what the zone shows at that moment is the wall time that was meant, all year round', () => {
    for (const zone of ['Europe/Berlin', 'America/St_Johns', 'Australia/Sydney', 'Asia/Tokyo']) {
      const shown = new Intl.DateTimeFormat('sv-SE', {
        timeZone: zone,
        dateStyle: 'short',
        timeStyle: 'short',
      });
      for (let day = 20_450; day < 20_820; day += 3)
        for (const time of ['00:00', '05:17', '12:00', '23:59'])
          expect(shown.format(classMoment({ date: dateOfDay(day), time, zone }))).toBe(
            `${dateOfDay(day)} ${time}`,
          );
    }
  });

  test('H3 the due day is the learner’s own calendar day of that moment', () => {
    const classAt = { date: '2026-12-03', time: '08:00', zone: 'Pacific/Auckland' };
    expect(dateOfDay(dueDay(classAt))).toBe('2026-12-03');
    expect(dateOfDay(dueDay(classAt, 'America/New_York'))).toBe('2026-12-02');
    const late = { date: '2026-12-03', time: '20:00', zone: 'America/Los_Angeles' };
    expect(dateOfDay(dueDay(late, 'Europe/Berlin'))).toBe('2026-12-04');
  });

  test('H3 days to class count midnights of the learner, not spans of 24 hours', () => {
    const classAt = { date: '2026-12-03', time: '08:00', zone: 'Europe/Berlin' };
    const now = (utc: string) => ({ at: Date.parse(utc), zone: 'Europe/Berlin' });
    expect(daysToClass(classAt, now('2026-12-02T22:59Z'))).toBe(1);
    expect(daysToClass(classAt, now('2026-12-02T23:01Z'))).toBe(0);
    expect(daysToClass(classAt, now('2026-12-05T12:00Z'))).toBe(-2);
  });

  test.each(['24:00', '8:00', '08:60', '', '08:00:00'])('"%s" is no time of day', (time) => {
    expect(minutesOfTime(time)).toBeNull();
    expect(() => classMoment({ date: '2026-12-03', time, zone: 'UTC' })).toThrow('no time of a class');
  });

  test('a date or zone that is none is refused', () => {
    expect(isZone('Europe/Berlin')).toBe(true);
    expect(isZone('Europe/Nowhere')).toBe(false);
    expect(() => classMoment({ date: '2026-02-30', time: '08:00', zone: 'UTC' })).toThrow();
    expect(() => classMoment({ date: '2026-02-28', time: '08:00', zone: 'Mars/Olympus' })).toThrow();
  });
});
