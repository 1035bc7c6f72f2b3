/** The dated days of the programme in words, one entry for each thing on a day. */
import type { PlanDay } from '../scheduling/planDay.ts';
import { dayEntries, type DayWords } from '../messages/en/patient/day.ts';
import type { DatedSession } from './programme.ts';

/** A view of the dated plan, in the order of its days. */
export function calendarOf(days: readonly PlanDay[], words: DayWords): DatedSession[] {
  return days.flatMap((day) =>
    dayEntries(day, words, 'full').map(({ kind, text }) => ({
      on: day.on,
      weekday: day.weekday,
      kind: kind === 'daily' ? 'between' : kind,
      text,
    })),
  );
}
