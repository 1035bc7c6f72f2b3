/** Small words and joins used by every sentence: dates, lists, counts. English; no locale of the machine is asked. */
import { type IsoDate, weekdayOf } from '../../units/date.ts';
import type { Weekday } from '../../units/weekday.ts';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

const WEEKDAY_WORDS: Readonly<Record<Weekday, string>> = {
  mon: 'Monday',
  tue: 'Tuesday',
  wed: 'Wednesday',
  thu: 'Thursday',
  fri: 'Friday',
  sat: 'Saturday',
  sun: 'Sunday',
};

/** @example dayText('2026-03-03') // => '3 March' */
export function dayText(date: IsoDate): string {
  return `${Number(date.slice(8))} ${MONTHS[Number(date.slice(5, 7)) - 1]}`;
}

/** @example dayAndYear('2026-03-03') // => '3 March 2026' */
export function dayAndYear(date: IsoDate): string {
  return `${dayText(date)} ${date.slice(0, 4)}`;
}

/** @example weekdayAndDay('2026-03-03') // => 'Tuesday 3 March' */
export function weekdayAndDay(date: IsoDate): string {
  return `${weekdayText(weekdayOf(date))} ${dayText(date)}`;
}

/** For narrow columns. @example shortDay('2026-03-03') // => 'Tue 3 Mar' */
export function shortDay(date: IsoDate): string {
  const [weekday, day = '', month] = weekdayAndDay(date).split(' ');
  return `${weekday?.slice(0, 3)} ${day} ${month?.slice(0, 3)}`;
}

/** @example weekdayText('mon') // => 'Monday' */
export function weekdayText(weekday: Weekday): string {
  return WEEKDAY_WORDS[weekday];
}

/** @example listText(['hills', 'speed', 'stress']) // => 'hills, speed and stress' */
export function listText(words: readonly string[], joint = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${joint} ${words[words.length - 1]}`;
}

/** @example nounText(2, 'set') // => 'sets' */
export function nounText(count: number, one: string, many = `${one}s`): string {
  return count === 1 ? one : many;
}

/** @example countText(1, 'set') // => '1 set' */
export function countText(count: number, one: string, many = `${one}s`): string {
  return `${count} ${nounText(count, one, many)}`;
}

const TIMES = ['not at all', 'once', 'twice', 'three times', 'four times', 'five times', 'six times'];

/** @example timesText(2) // => 'twice' */
export function timesText(times: number): string {
  return TIMES[times] ?? countText(times, 'time');
}

/** @example clearDaysText(1) // => 'one clear day' */
export function clearDaysText(days: number): string {
  return days === 1 ? 'one clear day' : countText(days, 'clear day');
}

/** Seconds as a patient says them: minutes from two on. @example secondsText(150) // => '2 minutes 30 seconds' */
export function secondsText(seconds: number): string {
  if (seconds >= 120) {
    const rest = seconds % 60;
    const minutes = countText((seconds - rest) / 60, 'minute');
    return rest === 0 ? minutes : `${minutes} ${countText(rest, 'second')}`;
  }
  return countText(seconds, 'second');
}

/** A number without trailing zeros, a point between. @example numberText(7.50) // => '7.5' */
export function numberText(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** @example kgText(7.5) // => '7.5 kg' */
export function kgText(kg: number): string {
  return `${numberText(kg)} kg`;
}

/** @example capital('hills') // => 'Hills' */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
