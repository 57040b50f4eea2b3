import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dateOfDay, dayOfDate, localDay } from '../../../src/core/memory/day.ts';

const at = (iso: string) => Date.parse(iso);
const days = (zoneA: string, isoA: string, zoneB: string, isoB: string) =>
  localDay(at(isoB), zoneB) - localDay(at(isoA), zoneA);

describe('M2 whole local days', () => {
  // biome-ignore format: one row per case
  test.each([
    ['23:59 and 00:01 are two days', 'Europe/Berlin', '2026-05-04T23:59+02:00', '2026-05-05T00:01+02:00', 1],
    ['00:01 and 23:59 are one day', 'Europe/Berlin', '2026-05-04T00:01+02:00', '2026-05-04T23:59+02:00', 0],
    ['a day of 23 hours is one day', 'Europe/Berlin', '2026-03-28T12:00+01:00', '2026-03-29T12:00+02:00', 1],
    ['a day of 25 hours is one day', 'Europe/Berlin', '2026-10-24T23:30+02:00', '2026-10-25T23:30+01:00', 1],
    ['UTC midnight means nothing in Denver', 'America/Denver', '2026-05-04T23:50Z', '2026-05-05T00:10Z', 0],
    ['a whole day skipped: Samoa had no 30 December 2011', 'Pacific/Apia', '2011-12-29T12:00-10:00', '2011-12-31T12:00+14:00', 2],
  ])('%s', (_, zone, first, second, expected) => {
    expect(days(zone, first, zone, second)).toBe(expected);
  });

  test('a flight west over the date line can take the local day back', () => {
    expect(days('Asia/Tokyo', '2026-05-05T09:00+09:00', 'Pacific/Honolulu', '2026-05-04T20:00-10:00')).toBe(
      -1,
    );
  });

  test('counts from 1970-01-01, before it too', () => {
    expect(localDay(0, 'UTC')).toBe(0);
    expect(localDay(-1, 'UTC')).toBe(-1);
    expect(localDay(0, 'America/New_York')).toBe(-1);
  });

  test('an unknown zone is refused', () => {
    expect(() => localDay(0, 'Nowhere/Else')).toThrow(RangeError);
  });
});

describe('dates', () => {
  test('agree with the platform’s own calendar over 8000 years', () => {
    fc.assert(
      fc.property(fc.integer({ min: -700_000, max: 2_500_000 }), (day) => {
        expect(dateOfDay(day)).toBe(new Date(day * 86_400_000).toISOString().slice(0, 10));
        expect(dayOfDate(dateOfDay(day))).toBe(day);
        expect(localDay(day * 86_400_000 + 43_200_000, 'UTC')).toBe(day);
      }),
      { numRuns: 500, examples: [[0], [59], [60], [11_016], [11_017], [-25_509], [47_540], [47_541]] },
    );
  });

  test.each(['2026-02-29', '2026-13-01', '2026-00-10', '2026-04-31', '26-04-30', 'soon', ''])(
    '%j is no date',
    (text) => {
      expect(dayOfDate(text)).toBeNull();
    },
  );
});
