/**
 * Local days: whole days since 1970-01-01 by the calendar on the learner's wall. Memory counts in these, so
 * that an answer at 23:59 and the next at 00:01 are one day apart, and a day with a clock change is still one.
 * Calendar arithmetic on the Gregorian calendar with years starting in March (docs/sources.md [DAYS]).
 */

const zones = new Map<string, Intl.DateTimeFormat>();

function formatFor(zone: string): Intl.DateTimeFormat {
  let format = zones.get(zone);
  if (!format) {
    format = new Intl.DateTimeFormat('en-u-ca-gregory-nu-latn', {
      timeZone: zone,
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
    });
    zones.set(zone, format);
  }
  return format;
}

/** dayNumber(1970, 1, 2) → 1. Any Gregorian date; month 1 to 12. */
function dayNumber(year: number, month: number, day: number): number {
  const marchYear = month > 2 ? year : year - 1;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const leapDays = Math.floor(marchYear / 4) - Math.floor(marchYear / 100) + Math.floor(marchYear / 400);
  return 365 * marchYear + leapDays + dayOfYear - 719468;
}

/** The local day of a moment. Throws RangeError for a zone the platform does not know. */
export function localDay(atMs: number, zone: string): number {
  const parts = new Map(
    formatFor(zone)
      .formatToParts(atMs)
      .map((part) => [part.type, Number(part.value)]),
  );
  return dayNumber(parts.get('year')!, parts.get('month')!, parts.get('day')!);
}

/** dayOfDate('1970-01-02') → 1. Null for what is not a date: '2026-02-30', 'soon'. */
export function dayOfDate(date: string): number | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  if (!match) return null;
  const day = dayNumber(Number(match[1]), Number(match[2]), Number(match[3]));
  return dateOfDay(day) === date ? day : null;
}

/** dateOfDay(1) → '1970-01-02'; years 0000 to 9999. */
export function dateOfDay(day: number): string {
  const shifted = day + 719468;
  const era = Math.floor(shifted / 146097);
  const dayOfEra = shifted - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  const dayOfMonth = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const pad = (value: number, width: number) => String(value).padStart(width, '0');
  return `${pad(year, 4)}-${pad(month, 2)}-${pad(dayOfMonth, 2)}`;
}
