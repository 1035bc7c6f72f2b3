/** The days of the page's block: what most days are is left out, what a day has in common with an earlier one too. */
import { expect, it } from 'vitest';
import { sheetInUse } from '../../src/programme/inUse.ts';
import { saidDays, wholeDays } from '../../src/programme/sheetInUse.ts';
import { otter } from '../fixtures/programme.ts';

it('is whole again when it is read', () => {
  const { days } = sheetInUse(otter);
  expect(days.length).toBeGreaterThan(14);
  expect(wholeDays(saidDays(days))).toEqual(days);
});

it('says a free day by its date alone', () => {
  const { on } = sheetInUse(otter).days[0]!;
  expect(saidDays(wholeDays([{ on }]))).toEqual([{ on }]);
});

it('says a day that has been by its place, and a day that differs in anything anew', () => {
  const [first] = sheetInUse(otter).days.filter(({ session }) => session);
  const [on] = sheetInUse(otter)
    .days.map((day) => day.on)
    .slice(-1);
  const days = [first!, { ...first!, on: on! }, { ...first!, on: on!, runKm: 3 }];
  expect(saidDays(days).map((day) => 'like' in day)).toEqual([false, true, false]);
});
