/** Every day of the programme with what is planned on it. */
import type { Messages } from '../messages/messages.ts';
import type { IsoDate } from '../units/date.ts';
import type { PlanDay } from '../scheduling/planDay.ts';

import type { DayWords } from '../messages/en/patient/day.ts';

/** One entry for each day of the dated plan; `planned` is empty on a free day. */
export function logDays(
  say: Messages,
  days: readonly PlanDay[],
  words: DayWords,
): { on: IsoDate; planned: string }[] {
  return days.map((day) => ({
    on: day.on,
    planned: say.capital(
      say
        .dayEntries(day, words, 'short')
        .map(({ text }) => text)
        .join('; '),
    ),
  }));
}
