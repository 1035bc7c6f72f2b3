/** The dated days of the programme in words, one entry for each thing on a day. */
import type { Messages } from '../messages/messages.ts';
import type { PlanDay } from '../scheduling/planDay.ts';
import type { DayWords } from '../messages/en/patient/day.ts';
import type { DatedSession } from './programme.ts';

/** A view of the dated plan, in the order of its days. */
export function calendarOf(say: Messages, days: readonly PlanDay[], words: DayWords): DatedSession[] {
  return days.flatMap((day) =>
    say.dayEntries(day, words, 'full').map(({ kind, text }) => ({
      on: day.on,
      weekday: day.weekday,
      kind: kind === 'daily' ? 'between' : kind,
      text,
    })),
  );
}
