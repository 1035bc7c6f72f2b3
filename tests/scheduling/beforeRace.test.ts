import { describe, expect, it } from 'vitest';
import { furthestFirst } from '../../src/scheduling/beforeRace.ts';
import type { PlanDay } from '../../src/scheduling/planDay.ts';
import type { RunKind } from '../../src/scheduling/run.ts';
import { addDays, isoDate, type IsoDate, weekdayOf } from '../../src/units/date.ts';
import { running } from './houseRules.ts';

const RACE = isoDate('2026-12-06') as IsoDate;

const run = (km: number, kind: RunKind = 'easy') => ({
  id: `run-${km}`,
  kind,
  km,
  minutes: null,
  walkRun: null,
  fastMinutes: null,
  climbM: null,
});

/** So many days before the race. */
const before = (days: number, ...runs: ReturnType<typeof run>[]): PlanDay => ({
  on: addDays(RACE, -days),
  weekday: weekdayOf(addDays(RACE, -days)),
  week: 1,
  part: 0,
  session: null,
  between: [],
  daily: [],
  runs,
  raceKm: null,
  other: [],
  easyOther: [],
  easyAfterRace: false,
});

describe('the easy runs of the last four days before a race', () => {
  it.each([
    // kilometres 6, 4, 2 and 1 days before, as they were and as they stand
    [
      [20, 3, 10, 5],
      [20, 10, 5, 3],
    ],
    [
      [3, 10, 5, 3],
      [3, 10, 5, 3],
    ],
  ])('%j km become %j: the furthest first, and what lies earlier stays', (kms, expected) => {
    const days = [6, 4, 2, 1].map((day, index) => before(day, run(kms[index] ?? 0)));
    const sorted = furthestFirst(days, [{ on: RACE }], running);
    expect(sorted.map(({ runs }) => runs[0]?.km)).toEqual(expected);
  });

  it('leave a run that is not easy where it is', () => {
    const days = [before(4, run(3)), before(3, run(8, 'steady')), before(2, run(5))];
    const sorted = furthestFirst(days, [{ on: RACE }], running);
    expect(sorted.map(({ runs }) => runs[0]?.km)).toEqual([5, 8, 3]);
  });
});
