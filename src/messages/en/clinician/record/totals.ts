/** Squeeze and pull over time as the record shows them: body weights × seconds, a day and a week. */
import type { Totals } from '../../../../decisions/session/totals.ts';
import { countText, numberText } from '../../plain.ts';
import type { Table } from '../../../shapes.ts';

/** A row an exercise with an estimate, for a session day and for the week; then runs and sitting. */
export function totalsTable({ exercises, sessionDay, week, runs, sittingMinutes }: Totals): Table {
  const sums = ({ compressionTimeBwS, tensionTimeBwS }: Totals['sessionDay']) =>
    [compressionTimeBwS, tensionTimeBwS].map(numberText);
  return {
    caption: 'Squeeze and pull over time, body weights × seconds of one leg (model estimates)',
    columns: ['Exercise', 'Days a week', 'Squeeze a day', 'Pull a day'],
    rows: [
      ...exercises.map(({ title, days, day }) => [title, String(days), ...sums(day)]),
      ...(exercises.length === 0
        ? []
        : [
            ['A session day', '-', ...sums(sessionDay)],
            ['The week', '-', ...sums(week)],
          ]),
      ['Runs', String(runs.count), '-', runsText(runs)],
      ['Sitting', '-', sittingMinutes === null ? 'no budget' : `${sittingMinutes} minutes at a time`, '-'],
    ],
  };
}

function runsText({ count, km, minutes, stepPullBw }: Totals['runs']): string {
  if (count === 0) return '-';
  const amount = km > 0 ? `${numberText(km)} km` : countText(minutes, 'minute');
  return `${amount} a week, each step about ${numberText(stepPullBw)} body weights of pull`;
}
