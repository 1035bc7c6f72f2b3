/** Days that follow one another. */
import type { LogRow } from '../../content/log/columns.ts';
import { daysBetween, type IsoDate } from '../../units/date.ts';

/** In order of their days, parted where a day has none: a line over it would tell what nobody wrote down. */
export function runsOfDays<Row extends Pick<LogRow, 'date'>>(rows: readonly Row[]): Row[][] {
  const runs: Row[][] = [];
  for (const row of rows) {
    const run = runs[runs.length - 1];
    const before = run?.[run.length - 1];
    if (
      run !== undefined &&
      before !== undefined &&
      daysBetween(before.date as IsoDate, row.date as IsoDate) <= 1
    )
      run.push(row);
    else runs.push([row]);
  }
  return runs;
}
