/** Every day of the programme with what is planned on it. */
import type { Consult } from '../content/library.ts';
import { addDays, daysBetween, type IsoDate } from '../units/date.ts';
import type { DatedEntry } from '../week/dates.ts';
import type { PlannedRun } from '../week/plannedRun.ts';
import { capital } from './phrases/plain.ts';
import { entryText } from './phrases/week.ts';

/** One entry a day from the start to the day before the review; `planned` is empty on a free day. */
export function logDays(
  { startOn, reviewOn }: Consult,
  entries: readonly DatedEntry[],
  runs: readonly PlannedRun[],
): { on: IsoDate; planned: string }[] {
  return Array.from({ length: daysBetween(startOn, reviewOn) }, (_, day) => {
    const on = addDays(startOn, day);
    return {
      on,
      planned: capital(
        entries
          .filter((entry) => entry.on === on)
          .map((entry) => entryText(entry, runs, true))
          .join('; '),
      ),
    };
  });
}
