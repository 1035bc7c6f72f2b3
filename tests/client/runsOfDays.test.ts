/** A line of mornings is parted where a day was not written down. */
import { expect, it } from 'vitest';
import { runsOfDays } from '../../src/client/inUse/runsOfDays.ts';

it.each<[readonly string[], readonly (readonly string[])[]]>([
  [[], []],
  [['2026-03-06'], [['2026-03-06']]],
  [['2026-03-06', '2026-03-07'], [['2026-03-06', '2026-03-07']]],
  [
    ['2026-02-28', '2026-03-01', '2026-03-03', '2026-03-04'],
    [
      ['2026-02-28', '2026-03-01'],
      ['2026-03-03', '2026-03-04'],
    ],
  ],
])('%j', (dates, runs) => {
  expect(runsOfDays(dates.map((date) => ({ date })))).toEqual(
    runs.map((run) => run.map((date) => ({ date }))),
  );
});
