/** The dated days of the programme, from its start to the day before the review. */
import type { DatedEntry } from '../week/dates.ts';
import type { PlannedRun } from '../week/plannedRun.ts';
import { entryText } from './phrases/week.ts';
import type { DatedSession } from './programme.ts';

/** The entries of the week plan in words, in the order of their dates. */
export function calendarOf(entries: readonly DatedEntry[], runs: readonly PlannedRun[]): DatedSession[] {
  return entries.map((entry) => ({
    on: entry.on,
    weekday: entry.weekday,
    kind: entry.kind === 'daily' ? 'between' : entry.kind,
    text: entryText(entry, runs),
  }));
}
