/** On which days of the week a kind of work stands. */
import type { Slot } from '../../content/library.ts';
import type { Weekday } from '../../units/weekday.ts';
import type { WeekPlan } from '../../scheduling/plan.ts';

/** The weekdays, Monday first, with a session, with work between sessions, or with daily work. */
export function workDays(when: Slot['when'], { days }: WeekPlan): Weekday[] {
  return days.filter((day) => (when === 'daily' ? day.daily : day[when])).map(({ weekday }) => weekday);
}
