import { describe, expect, it } from 'vitest';
import { type IsoDate, isoDate } from '../../src/units/date.ts';
import { WEEKDAYS, type Weekday } from '../../src/units/weekday.ts';
import { nextAfter } from '../../src/scheduling/dates.ts';
import { planWeek, type WeekPlan } from '../../src/scheduling/plan.ts';
import { clock, rested } from './houseRules.ts';

const on = (text: string): IsoDate => isoDate(text)!;

function week(perWeek: number, days: readonly Weekday[] = WEEKDAYS): WeekPlan {
  const plan = planWeek(
    {
      lifts: { perWeek, kind: 'heavy', hoursBetween: 48, days },
      runs: [{ id: 'run-1', kind: 'easy', features: [] }],
      runDays: WEEKDAYS,
      hillsAndFast: 'never-one-week',
      fixed: [],
      betweenDays: [],
      daily: false,
    },
    rested,
    clock,
  );
  if (!plan.fits) throw new Error('expected a week');
  return plan;
}

describe('the next session', () => {
  it('is the planned one when there was time to recover', () => {
    expect(nextAfter(week(3), on('2026-03-02'))).toEqual({
      earliestOn: '2026-03-04',
      nextOn: '2026-03-04',
      clearDays: 1,
    });
    expect(nextAfter(week(2), on('2026-03-02'))).toMatchObject({
      earliestOn: '2026-03-04',
      nextOn: '2026-03-05',
    });
  });

  it('moves on after a late one instead of crowding', () => {
    // Monday's session done on Tuesday: not Wednesday but Thursday, and then Saturday.
    expect(nextAfter(week(3), on('2026-03-03'))).toMatchObject({
      earliestOn: '2026-03-05',
      nextOn: '2026-03-05',
    });
    expect(nextAfter(week(3), on('2026-03-05'))).toMatchObject({ nextOn: '2026-03-07' });
  });

  it('moves to a day that has time', () => {
    const plan = week(3, ['mon', 'wed', 'fri']);
    expect(nextAfter(plan, on('2026-03-03'))).toMatchObject({
      earliestOn: '2026-03-05',
      nextOn: '2026-03-06',
    });
  });
});
