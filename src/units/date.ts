/** Calendar dates without a clock, a zone or a locale: plain `YYYY-MM-DD` text, proleptic Gregorian. */
import { WEEKDAYS, type Weekday } from './weekday.ts';

/** A date that exists, as `YYYY-MM-DD`. Made only by `isoDate` and `addDays`. */
export type IsoDate = string & { readonly IsoDate: unique symbol };

const MS_PER_DAY = 86_400_000;

/** The text as a date, or null when it is not `YYYY-MM-DD` or no such day exists. @example isoDate('2026-02-30') // => null */
export function isoDate(text: string): IsoDate | null {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return null;
  const days = Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])) / MS_PER_DAY;
  return fromDayNumber(days) === text ? (text as IsoDate) : null;
}

/** The date `days` later (earlier when negative; whole days). @example addDays('2026-02-28', 1) // => '2026-03-01' */
export function addDays(date: IsoDate, days: number): IsoDate {
  return fromDayNumber(dayNumber(date) + days);
}

/** Whole days from `from` to `to`, negative when `to` comes first. @example daysBetween('2026-03-01', '2026-03-08') // => 7 */
export function daysBetween(from: IsoDate, to: IsoDate): number {
  return dayNumber(to) - dayNumber(from);
}

/** The day of the week of a date (ISO 8601). @example weekdayOf('2026-11-25') // => 'wed' */
export function weekdayOf(date: IsoDate): Weekday {
  // 1970-01-01 was a Thursday, the fourth day counted from Monday.
  return WEEKDAYS[(((dayNumber(date) + 3) % 7) + 7) % 7] as Weekday;
}

function dayNumber(date: IsoDate): number {
  return Date.parse(date) / MS_PER_DAY;
}

function fromDayNumber(days: number): IsoDate {
  return new Date(days * MS_PER_DAY).toISOString().slice(0, 10) as IsoDate;
}
