import { describe, expect, it } from 'vitest';
import { type IsoDate, isoDate } from '../../src/units/date.ts';
import { RUN_KINDS, type RunKind } from '../../src/scheduling/run.ts';
import type { RunChoice, RunDecision } from '../../src/scheduling/runDecision.ts';
import { type RunHabit, runningPlan } from '../../src/scheduling/runningPlan.ts';
import { goingOn, running } from './houseRules.ts';

const on = (text: string): IsoDate => isoDate(text)!;
const DATES = { startOn: on('2026-03-02'), reviewOn: on('2026-03-30') };
const STAGES: readonly RunKind[] = ['walk-run', 'easy', 'steady', 'fast', 'fast'];

const habit = (change: Partial<RunHabit> = {}): RunHabit => ({
  weeklyKm: 24,
  longestIn30DaysKm: 10,
  runsPerWeek: 3,
  runDays: 7,
  weeksOff: 0,
  usedToHills: true,
  usedToFast: true,
  hillyRoutes: false,
  weeksBack: null,
  walkRunRung: null,
  fastMinutes: null,
  climbM: null,
  races: [],
  ...change,
});

function decision(most: RunKind): RunDecision {
  const choice: RunChoice = most === 'none' || most === 'walk-run' ? most : 'keep';
  const heldBack = RUN_KINDS.slice(RUN_KINDS.indexOf(most) + 1);
  return { decision: choice, most, heldBack, overRules: false, because: [] };
}

const plan = (most: RunKind, change: Partial<RunHabit> = {}, dates = DATES) =>
  runningPlan(decision(most), habit(change), STAGES, dates, running, goingOn);
const kinds = (most: RunKind, change: Partial<RunHabit> = {}) =>
  plan(most, change).weeks.map(({ runs }) => runs.map(({ kind }) => kind));
const kms = (most: RunKind, change: Partial<RunHabit> = {}) =>
  plan(most, change).weeks.map(({ runs }) => runs.map(({ km }) => km));

describe('the weeks until the review', () => {
  it('end the day before the review, and every week after the first waits for settled mornings', () => {
    const { weeks } = plan('easy', {}, { startOn: on('2026-03-02'), reviewOn: on('2026-03-12') });
    expect(weeks.map(({ week, from, to, onlyWhenSettled }) => [week, from, to, onlyWhenSettled])).toEqual([
      [1, '2026-03-02', '2026-03-08', false],
      [2, '2026-03-09', '2026-03-11', true],
    ]);
  });

  it('are none without running, and everything waits for its stage', () => {
    const none = plan('none');
    expect(none.weeks).toEqual([]);
    expect(none.heldBack).toEqual([
      { kind: 'walk-run', untilStage: 1 },
      { kind: 'easy', untilStage: 2 },
      { kind: 'longer', untilStage: 3 },
      { kind: 'steady', untilStage: 3 },
      { kind: 'hills-or-strides', untilStage: 4 },
      { kind: 'fast', untilStage: 4 },
    ]);
  });

  it('climb the walk-run ladder a rung a week, three runs each, and stay on the last rung', () => {
    const { weeks } = plan('walk-run', {}, { startOn: on('2026-03-02'), reviewOn: on('2026-04-20') });
    expect(weeks.map(({ runs }) => runs.map(({ walkRun }) => walkRun?.totalRunMinutes))).toEqual([
      [5, 5, 5],
      [10, 10, 10],
      [15, 15, 15],
      [20, 20, 20],
      [25, 25, 25],
      [25, 25, 25],
      [25, 25, 25],
    ]);
    expect(weeks[0]?.weeklyKm).toBeNull();
  });

  it('go on from the rung reached before, and need longer when there are fewer runs', () => {
    const { weeks } = plan('walk-run', { walkRunRung: 3, runsPerWeek: 1 });
    expect(weeks.map(({ runs }) => runs.map(({ walkRun }) => walkRun?.rung))).toEqual([[3], [3], [3], [4]]);
  });

  it.each([
    ['no run in 30 days', { longestIn30DaysKm: 0 }, 'no-run-in-30-days'],
    ['no run now', { weeklyKm: 0 }, 'not-running-now'],
    ['five weeks off', { weeksOff: 5 }, 'not-running-now'],
    ['nothing recorded', { longestIn30DaysKm: null }, 'longest-not-recorded'],
  ] as const)('are seeded by the ladder after %s, and then run without a break', (_, change, code) => {
    const seeded = plan('easy', { ...change, walkRunRung: 5 });
    expect(seeded.longest).toMatchObject({ atMostKm: null, because: { code } });
    expect(seeded.weeks[0]?.runs[0]?.walkRun?.totalRunMinutes).toBe(25);
    expect(seeded.weeks[1]?.runs[0]).toMatchObject({ kind: 'easy', minutes: 30, walkRun: null, km: null });
  });
});

describe('runs by distance', () => {
  it('are all alike and keep the weekly distance where easy running is the most', () => {
    expect(kms('easy')).toEqual(Array.from({ length: 4 }, () => [8, 8, 8]));
    expect(kinds('easy')[0]).toEqual(['easy', 'easy', 'easy']);
    expect(kms('easy', { weeklyKm: 25 })[0]).toEqual([8.3, 8.3, 8.3]);
  });

  it('are as many as it takes to keep each within the longest', () => {
    expect(kms('easy', { weeklyKm: 40, longestIn30DaysKm: 9, runsPerWeek: 3 })[0]).toEqual([8, 8, 8, 8, 8]);
  });

  it.each([
    // km a week, longest km, runs: the longest, then the others
    [70, 28, [28, 14, 14, 14]],
    [70, 27, [27, 10.7, 10.7, 10.7, 10.7]],
    [24, 12, [12, 6, 6]],
    [20, 15, [15, 2.5, 2.5]],
    [40, 10, [10, 5, 5, 5, 5, 5, 5]],
    [70, 12, [12, 9.6, 9.6, 9.6, 9.6, 9.6, 9.6]],
  ])(
    'are the fewest that keep the others to half of the longest where nobody counted them: %i km, longest %i km [choice]',
    (weeklyKm, longestIn30DaysKm, week) => {
      expect(kms('steady', { weeklyKm, longestIn30DaysKm, runsPerWeek: null })[0]).toEqual(week);
    },
  );

  it('are as many where only easy running is open, all alike', () => {
    expect(kms('easy', { weeklyKm: 70, longestIn30DaysKm: 28, runsPerWeek: null })[0]).toEqual([
      17.5, 17.5, 17.5, 17.5,
    ]);
  });

  it('say so when they are estimated, and when there are not days enough to keep the others short', () => {
    const because = (change: Partial<RunHabit>) => plan('steady', change).estimated?.because;
    expect(because({ weeklyKm: 70, longestIn30DaysKm: 28, runsPerWeek: null })).toEqual({
      code: 'fewest-runs',
      inputs: { runs: 4, weeklyKm: 70, longestKm: 28, days: 7, share: 0.5 },
      mark: 'choice',
    });
    expect(because({ weeklyKm: 70, longestIn30DaysKm: 12, runsPerWeek: null })?.code).toBe('not-days-enough');
    expect(because({ weeklyKm: 70, longestIn30DaysKm: 28, runsPerWeek: 3 })).toBeUndefined();
    expect(plan('walk-run', { runsPerWeek: null }).estimated).toBeNull();
  });

  it('are no more than the days there are, but enough to keep each within the longest', () => {
    const week = (runDays: number) =>
      kms('steady', { weeklyKm: 40, longestIn30DaysKm: 12, runsPerWeek: null, runDays })[0];
    expect(week(7)).toEqual([12, 5.6, 5.6, 5.6, 5.6, 5.6]);
    expect(week(5)).toEqual([12, 7, 7, 7, 7]);
    expect(week(2)).toEqual([12, 9.3, 9.3, 9.3]);
  });

  it('stay as they were recorded, however long that makes them', () => {
    expect(kms('steady', { weeklyKm: 70, longestIn30DaysKm: 28, runsPerWeek: 3 })[0]).toEqual([28, 21, 21]);
  });

  it('let the longest run grow by a tenth a week, the others staying', () => {
    expect(kms('longer')).toEqual([
      [10, 7, 7],
      [11, 7, 7],
      [12.1, 7, 7],
      [13.3, 7, 7],
    ]);
    expect(kinds('longer')[0]).toEqual(['longer', 'easy', 'easy']);
  });

  it('bring one new stress at a time: the longest run no longer grows when steady running comes', () => {
    expect(kms('steady')).toEqual(Array.from({ length: 4 }, () => [10, 7, 7]));
    expect(kinds('steady')[0]).toEqual(['longer', 'steady', 'easy']);
    expect(plan('steady').weeks.map(({ hardRuns }) => hardRuns)).toEqual([1, 1, 1, 1]);
  });

  it('grow the climb of hill runs and leave unset amounts unset', () => {
    const climbs = (climbM: number | null) =>
      plan('hills-or-strides', { climbM, fastMinutes: 8 }).weeks.map(({ runs }) => runs[1]?.climbM);
    expect(climbs(100)).toEqual([100, 110, 121, 133]);
    expect(climbs(null)).toEqual([null, null, null, null]);
  });

  it('have hills and fast running in turn, never in one week, while they are new', () => {
    expect(kinds('fast').map((week) => week[1])).toEqual([
      'fast',
      'hills-or-strides',
      'fast',
      'hills-or-strides',
    ]);
    expect(
      plan('fast', { fastMinutes: 10, climbM: 90 }).weeks.map(({ runs }) => [
        runs[1]?.fastMinutes,
        runs[1]?.climbM,
      ]),
    ).toEqual([
      [10, null],
      [null, 90],
      [11, null],
      [null, 90],
    ]);
  });

  it('may hold both later, for someone used to both', () => {
    expect(kinds('fast', { weeksBack: 6 })[0]).toEqual(['longer', 'fast', 'hills-or-strides']);
    expect(plan('fast', { weeksBack: 6 }).hillsAndFast.rule).toBe('never-neighbours');
  });

  it('keep a single run easy or long', () => {
    expect(kinds('fast', { weeklyKm: 10, runsPerWeek: 1 })[0]).toEqual(['longer']);
  });

  it('leave hilly everyday routes', () => {
    expect(plan('easy', { hillyRoutes: true }).moveToFlat).toBe(true);
    expect(plan('none', { hillyRoutes: true }).moveToFlat).toBe(false);
  });
});

describe('races', () => {
  const race = { on: on('2026-03-08'), km: 10 };

  it('keep their own week and the easy days after them free of hard runs and growth', () => {
    const { weeks } = plan('fast', { races: [race] });
    expect(weeks.map(({ keptEasy }) => keptEasy)).toEqual([true, true, false, false]);
    expect(weeks.map(({ hardRuns }) => hardRuns)).toEqual([0, 0, 1, 1]);
  });

  it('do not make the longest run of 30 days forgotten: after an easy week it grows from there', () => {
    const { weeks } = plan('longer', { races: [{ on: on('2026-03-09'), km: 5 }], longestIn30DaysKm: 10 });
    expect(weeks.map(({ longestKm }) => longestKm)).toEqual([10, 8, 8, 11]);
  });
});
