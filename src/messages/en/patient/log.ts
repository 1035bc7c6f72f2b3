/** The sheet to fill in with a pen: 20 seconds a day. */
import type { Course } from '../../../decisions/stage/course.ts';
import type { LogSheet } from '../../shapes.ts';
import type { IsoDate } from '../../../units/date.ts';
import { shortDay } from '../plain.ts';

export const LOG_COLUMNS = [
  'Day',
  'Planned',
  'Morning check 0-10',
  'Done',
  'Pain during 0-10',
  'Slept well',
  'Tired',
] as const;

/** One row a day. */
export function logSheet(days: readonly { on: IsoDate; planned: string }[], course: Course): LogSheet {
  return {
    heading: 'Log',
    hint: `Fill in one line a day. Bring it to the ${course === 'discharge' ? 'last look' : 'review'}.`,
    columns: LOG_COLUMNS,
    days: days.map(({ on, planned }) => ({ on, label: shortDay(on), planned })),
  };
}
