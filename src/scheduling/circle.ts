/** Sets of weekdays on a circle of seven, so that Sunday to Monday counts. Bit 0 is Monday. */
import { WEEKDAYS, type Weekday } from '../units/weekday.ts';

/** Bit d set: weekday d (Monday 0) is in the set. 0 to 127. */
export type DayMask = number;

export const EVERY_DAY: DayMask = 0b1111111;

// The 128 sets worked out once: the search over weeks asks for them thousands of times.
const DAYS: readonly (readonly number[])[] = Array.from({ length: 128 }, (_, mask) =>
  [0, 1, 2, 3, 4, 5, 6].filter((day) => has(mask, day)),
);

const GAPS: readonly (readonly number[])[] = DAYS.map((days) =>
  days.map((day, index) => ahead(day, days[(index + 1) % days.length] ?? day)),
);

const ROWS: readonly number[] = Array.from({ length: 128 }, (_, mask) => rowOf(mask));

// Two rounds of the circle, so that Sunday to Monday counts.
function rowOf(mask: DayMask): number {
  if (mask === EVERY_DAY) return 7;
  let [row, longest] = [0, 0];
  for (let day = 0; day < 14; day += 1) {
    row = has(mask, day % 7) ? row + 1 : 0;
    longest = Math.max(longest, row);
  }
  return longest;
}

export function maskOf(days: readonly Weekday[]): DayMask {
  return days.reduce((mask, day) => mask | (1 << WEEKDAYS.indexOf(day)), 0);
}

export function weekdaysIn(mask: DayMask): Weekday[] {
  return WEEKDAYS.filter((_, day) => has(mask, day));
}

export function has(mask: DayMask, day: number): boolean {
  return (mask & (1 << day)) !== 0;
}

/** Day numbers in the set, Monday first. @example daysIn(0b10001) // => [0, 4] */
export function daysIn(mask: DayMask): readonly number[] {
  return DAYS[mask] ?? [];
}

export function count(mask: DayMask): number {
  return daysIn(mask).length;
}

/** Days forward from one weekday to the next time the other comes, 1 to 7. @example ahead(6, 0) // => 1 */
export function ahead(from: number, to: number): number {
  return ((to - from + 6) % 7) + 1;
}

/** Days between neighbours round the circle, a single day counting 7 to itself. @example gaps(0b10101) // => [2, 2, 3] */
export function gaps(mask: DayMask): readonly number[] {
  return GAPS[mask] ?? [];
}

/** Does every day of the set keep this many days to the next one? The empty set does. */
export function keepsApart(mask: DayMask, days: number): boolean {
  return gaps(mask).every((gap) => gap >= days);
}

/** The most days that follow each other without one between. @example longestRow(0b1000011) // => 3, Sunday to Tuesday */
export function longestRow(mask: DayMask): number {
  return ROWS[mask] ?? 0;
}

/** Whether one of the days of `mask` is the day before or after this one. */
export function isBeside(day: number, mask: DayMask): boolean {
  return has(mask, (day + 1) % 7) || has(mask, (day + 6) % 7);
}

/** How badly the days are spread, less being better: the sum of squared gaps. Of two sets of one size the evener is also the one with the wider narrowest gap, on a circle of seven. */
export function crowding(mask: DayMask): number {
  return gaps(mask).reduce((sum, gap) => sum + gap * gap, 0);
}

/** Orders sets of one size: the one whose days come earlier in the week is the smaller. */
export function lateness(mask: DayMask): number {
  return daysIn(mask).reduce((sum, day) => sum - (1 << (6 - day)), 0);
}
