/** The day on which a log is looked back on. */
import type { Logged } from '../../programme/reviewed.ts';
import { addDays, type IsoDate } from '../../units/date.ts';
import type { Flags } from '../flags.ts';
import { onDay } from '../io/today.ts';

/** The day of --on; else today, and never before what was written down up to the planned review. */
export function reviewDay({ consult, log }: Pick<Logged, 'consult' | 'log'>, flags: Flags): IsoDate {
  const today = onDay(flags);
  const lastOn = log.entries.findLast(({ date }) => date < consult.reviewOn)?.date;
  return flags.on !== null || lastOn === undefined || lastOn < today ? today : addDays(lastOn, 1);
}
