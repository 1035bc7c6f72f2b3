/** Every day of the programme with what is planned on it. */
import type { Consult } from '../content/library.ts';
import { addDays, daysBetween, type IsoDate } from '../units/date.ts';
import { capital } from './phrases/plain.ts';
import type { DatedSession } from './programme.ts';

/** One entry a day from the start to the day before the review; `planned` is empty on a free day. */
export function logDays(
  { startOn, reviewOn }: Consult,
  calendar: readonly DatedSession[],
): { on: IsoDate; planned: string }[] {
  return Array.from({ length: daysBetween(startOn, reviewOn) }, (_, day) => {
    const on = addDays(startOn, day);
    return {
      on,
      planned: capital(
        calendar
          .filter((entry) => entry.on === on)
          .map(({ text }) => text)
          .join(', '),
      ),
    };
  });
}
