/** A week's kilometres are the sum of what its days print: runs to 0.1 km, races to 0.01. */
import { describe, expect, it } from 'vitest';
import type { PlanDay } from '../../src/scheduling/planDay.ts';
import { planWeeks } from '../../src/scheduling/planWeek.ts';
import { addDays } from '../../src/units/date.ts';
import { WEEKDAYS } from '../../src/units/weekday.ts';
import { day } from '../programme/person.ts';

function dayOf(index: number, runKm: number | null, raceKm: number | null): PlanDay {
  return {
    on: addDays(day('2026-11-23'), index),
    weekday: WEEKDAYS[index]!,
    week: 1,
    part: 0,
    session: null,
    between: [],
    daily: [],
    runs: runKm === null ? [] : [{ kind: 'easy', km: runKm, minutes: null, walkRun: null }],
    raceKm,
    other: [],
    easyOther: [],
    easyAfterRace: false,
  } as unknown as PlanDay;
}

describe('the kilometres of a week', () => {
  it.each([
    // runs          race    in all
    [[5.1, 4.2], null, 9.3],
    [[8, 8], 10.55, 26.55],
    [[0.1, 0.2], null, 0.3],
    [[5], 21.1, 26.1],
    [[], 42.2, 42.2],
  ] as const)('of runs of %j km and a race of %s km are %d', (runs, raceKm, inAll) => {
    const days = [
      ...runs.map((km, index) => dayOf(index, km, null)),
      ...(raceKm === null ? [] : [dayOf(6, null, raceKm)]),
    ];
    expect(planWeeks(days, []).map(({ weeklyKm }) => weeklyKm)).toEqual([inAll]);
  });
});
