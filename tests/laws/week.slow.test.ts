/** Laws of the week: what must hold for any person, any wish and any setting. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, daysBetween, type IsoDate, isoDate, weekdayOf } from '../../src/units/date.ts';
import { WEEKDAYS } from '../../src/units/weekday.ts';
import { nextAfter } from '../../src/scheduling/dates.ts';
import { afterMissed } from '../../src/scheduling/flare.ts';
import { MORNING_ANSWERS, morningBands, morningDecision, painGate } from '../../src/scheduling/morning.ts';
import { planWeek } from '../../src/scheduling/plan.ts';
import { type Recoverer, recoveryHours } from '../../src/scheduling/recovery.ts';
import { order, RUN_KINDS } from '../../src/scheduling/run.ts';
import { runDecision, type RunFacts } from '../../src/scheduling/runDecision.ts';
import { type RunHabit, runningPlan } from '../../src/scheduling/runningPlan.ts';
import { sittingBudget } from '../../src/scheduling/sitting.ts';
import { earliestStageDates } from '../../src/scheduling/stageDates.ts';
import { clock, goingOn, missed, morning, pain, rested, running, sitting } from '../scheduling/houseRules.ts';

const SEED = { seed: 1207, numRuns: 500 };
const score = fc.integer({ min: 0, max: 10 });
const date = fc.integer({ min: 0, max: 2000 }).map((days) => addDays(isoDate('2026-01-01')!, days));
const law = <T extends [unknown, ...unknown[]]>(
  arbitraries: { [K in keyof T]: fc.Arbitrary<T[K]> },
  holds: (...values: T) => void,
) => {
  fc.assert(fc.property(...arbitraries, holds), SEED);
};
const strictness = (answer: (typeof MORNING_ANSWERS)[number]) => MORNING_ANSWERS.indexOf(answer);

describe('more pain never gives a more permissive answer', () => {
  const before = fc.array(fc.option(score), { maxLength: 20 });

  it('of the morning check, by this morning, by usual, or by yesterday', () => {
    law([score, score, before], (today, usual, mornings) => {
      const answer = (now: number, norm: number, past = mornings) =>
        strictness(morningDecision(now, norm, past, morning).answer);
      const here = answer(today, usual);
      if (today < 10) expect(answer(today + 1, usual)).toBeGreaterThanOrEqual(here);
      if (usual > 0) expect(answer(today, usual - 1)).toBeGreaterThanOrEqual(here);
      const last = mornings.at(-1);
      if (typeof last === 'number' && last < 10) {
        expect(answer(today, usual, [...mornings.slice(0, -1), last + 1])).toBeGreaterThanOrEqual(here);
      }
    });
  });

  it('of the pain gate', () => {
    law([score, score, fc.constantFrom('low', 'high')], (during, usualPain, irritability) => {
      const here = painGate(during, { usualPain, irritability }, pain);
      const worse = painGate(during + 1, { usualPain, irritability }, pain);
      expect(Number(worse.allowed)).toBeLessThanOrEqual(Number(here.allowed));
      expect(strictness(worse.next)).toBeGreaterThanOrEqual(strictness(here.next));
      expect(Number(worse.stop)).toBeGreaterThanOrEqual(Number(here.stop));
      const irritable = painGate(during, { usualPain, irritability: 'high' }, pain);
      expect(Number(irritable.allowed)).toBeLessThanOrEqual(Number(here.allowed));
    });
  });

  it('of the morning check, and still a usual day always reads carry on, however high usual is', () => {
    law([score], (usual) => {
      expect(morningDecision(usual, usual, [usual, usual], morning).answer).toBe('carry-on');
      expect(morningBands(usual, morning).carryOnTo).toBeGreaterThanOrEqual(usual);
    });
  });

  const facts: fc.Arbitrary<RunFacts> = fc.record({
    runs: fc.boolean(),
    recorded: fc.constantFrom('keep', 'walk-run', 'none'),
    clinicianOwn: fc.constantFrom(null, null, 'keep', 'walk-run', 'none'),
    irritability: fc.constantFrom('low', 'moderate'),
    usualPain: fc.integer({ min: 0, max: 9 }),
    worstTestPain: fc.integer({ min: 0, max: 9 }),
  } as const);

  it('of the decision on running, nor does irritability, a screen item or a stricter stage', () => {
    law([facts, fc.constantFrom(...RUN_KINDS), fc.boolean()], (person, stageMost, screened) => {
      const limits = { noRunning: screened ? ['hopPain'] : [], stageMost, stageTensionBw: 1.5 };
      const most = (change: Partial<RunFacts>, bounds = limits) =>
        order(runDecision({ ...person, ...change }, bounds, running).most);
      const here = most({});
      expect(most({ usualPain: person.usualPain + 1 })).toBeLessThanOrEqual(here);
      expect(most({ worstTestPain: person.worstTestPain + 1 })).toBeLessThanOrEqual(here);
      expect(most({ irritability: 'high' })).toBeLessThanOrEqual(here);
      expect(most({}, { ...limits, noRunning: ['hopPain'] })).toBe(0);
      if (person.clinicianOwn === null) expect(here).toBeLessThanOrEqual(order(stageMost));
    });
  });

  it('of a break: more missed days never start later in the ladder', () => {
    const starts = ['same-step', 'one-step-back', 'stage-start'];
    law([fc.integer({ min: 0, max: 60 }), fc.boolean()], (days, fever) => {
      const here = starts.indexOf(afterMissed(days, fever, missed).start);
      expect(starts.indexOf(afterMissed(days + 1, fever, missed).start)).toBeGreaterThanOrEqual(here);
      expect(starts.indexOf(afterMissed(days, true, missed).start)).toBeGreaterThanOrEqual(here);
    });
  });

  it('and the bands of a morning cover 0 to 10 without a hole', () => {
    law([score], (usual) => {
      const { carryOnTo, sameAgain, easeBackFrom } = morningBands(usual, morning);
      expect(sameAgain === null ? carryOnTo + 1 : sameAgain[0]).toBe(carryOnTo + 1);
      expect(sameAgain === null ? carryOnTo : sameAgain[1]).toBe(easeBackFrom - 1);
    });
  });
});

describe('recovery', () => {
  const person: fc.Arbitrary<Recoverer> = fc.record({
    trainingYears: fc.option(fc.integer({ min: 0, max: 20 })),
    weeksAway: fc.option(fc.integer({ min: 0, max: 20 })),
    tired: fc.boolean(),
    sleep: fc.constantFrom('good', 'fair', 'poor'),
  } as const);

  it('is never shorter for someone tired, short of sleep, away or new to it', () => {
    law([person], (one) => {
      const hours = (change: Partial<Recoverer>) =>
        recoveryHours('heavy', { ...one, ...change }, clock).hours;
      const here = hours({});
      for (const change of [
        { tired: true },
        { sleep: 'poor' },
        { weeksAway: 30 },
        { trainingYears: 0 },
      ] as const)
        expect(hours(change)).toBeGreaterThanOrEqual(here);
    });
  });
});

describe('the week on the calendar', () => {
  const wish = fc.record({
    perWeek: fc.integer({ min: 1, max: 5 }),
    days: fc.subarray([...WEEKDAYS], { minLength: 1 }),
    hard: fc.integer({ min: 0, max: 3 }),
    tired: fc.boolean(),
    startOn: date,
    length: fc.integer({ min: 0, max: 60 }),
  });

  it('keeps the clock from every session and hard run to the next, whatever day it starts on', () => {
    law([wish], ({ perWeek, days, hard, tired, startOn, length }) => {
      const plan = planWeek(
        {
          lifts: { perWeek, kind: 'heavy', hoursBetween: 48, days },
          runs: Array.from({ length: hard }, (_, i) => ({
            id: `run-${i + 1}`,
            kind: 'steady',
            features: [],
          })),
          runDays: WEEKDAYS,
          hillsAndFast: 'never-one-week',
          fixed: [],
          betweenDays: [],
          daily: false,
        },
        { ...rested, tired },
        clock,
      );
      if (!plan.fits) throw new Error('one session always fits beside nothing fixed');
      const onDay = (on: IsoDate) => plan.days[WEEKDAYS.indexOf(weekdayOf(on))]!;
      const hardDates = Array.from({ length }, (_, day) => addDays(startOn, day)).filter(
        (on) => onDay(on).session || onDay(on).runs.length > 0,
      );
      for (const [i, on] of hardDates.slice(1).entries())
        expect(daysBetween(hardDates[i]!, on)).toBeGreaterThanOrEqual(tired ? 3 : 2);
    });
  });

  it('never names a next session before the clock allows it, and never waits over a week longer', () => {
    law([wish, date], ({ perWeek, days, tired }, lastDoneOn) => {
      const plan = planWeek(
        {
          lifts: { perWeek, kind: 'heavy', hoursBetween: 48, days },
          runs: [],
          runDays: [],
          hillsAndFast: 'never-one-week',
          fixed: [],
          betweenDays: [],
          daily: false,
        },
        { ...rested, tired },
        clock,
      );
      if (!plan.fits) throw new Error('expected a week');
      const next = nextAfter(plan, lastDoneOn)!;
      expect(daysBetween(lastDoneOn, next.earliestOn)).toBe(tired ? 3 : 2);
      expect(next.nextOn >= next.earliestOn).toBe(true);
      expect(daysBetween(next.earliestOn, next.nextOn)).toBeLessThan(7);
    });
  });
});

describe('the running plan', () => {
  const habit: fc.Arbitrary<RunHabit> = fc.record({
    weeklyKm: fc.option(fc.integer({ min: 0, max: 120 })),
    longestIn30DaysKm: fc.option(fc.integer({ min: 0, max: 42 })),
    runsPerWeek: fc.option(fc.integer({ min: 1, max: 7 })),
    runDays: fc.integer({ min: 0, max: 7 }),
    weeksOff: fc.option(fc.integer({ min: 0, max: 6 }), { freq: 1 }),
    usedToHills: fc.boolean(),
    usedToFast: fc.boolean(),
    hillyRoutes: fc.boolean(),
    weeksBack: fc.option(fc.integer({ min: 0, max: 12 })),
    walkRunRung: fc.option(fc.integer({ min: 1, max: 5 })),
    fastMinutes: fc.option(fc.integer({ min: 1, max: 40 })),
    climbM: fc.option(fc.integer({ min: 10, max: 800 })),
    races: fc.constant([]),
  });
  const startOn = isoDate('2026-03-02') as IsoDate;
  const planned = (one: RunHabit, most: (typeof RUN_KINDS)[number]) => {
    const choice = most === 'none' || most === 'walk-run' ? most : 'keep';
    const decision = { decision: choice, most, heldBack: [], overRules: false, because: [] } as const;
    return runningPlan(
      decision,
      one,
      RUN_KINDS,
      { startOn, reviewOn: addDays(startOn, 84) },
      running,
      goingOn,
    );
  };

  it('has no run beyond 1.1 times the longest of the 30 days before', () => {
    law([habit, fc.constantFrom(...RUN_KINDS)], (one, most) => {
      const longest = [one.longestIn30DaysKm ?? 0];
      for (const week of planned(one, most).weeks) {
        if (week.longestKm === null) continue;
        expect(week.longestKm).toBeGreaterThan(0);
        expect(week.longestKm).toBeLessThanOrEqual(1.1 * Math.max(...longest.slice(-4)) + 1e-9);
        longest.push(week.longestKm);
      }
    });
  });

  it('holds no kind that waits, at most two hard runs a week, and never more kilometres but by the longest run', () => {
    law([habit, fc.constantFrom(...RUN_KINDS)], (one, most) => {
      for (const { runs, hardRuns, weeklyKm } of planned(one, most).weeks) {
        expect(runs.every(({ kind }) => order(kind) <= order(most))).toBe(true);
        expect(hardRuns).toBeLessThanOrEqual(2);
        expect(runs.length).toBeLessThanOrEqual(7);
        if (weeklyKm !== null && most !== 'longer')
          expect(weeklyKm).toBeLessThanOrEqual((one.weeklyKm ?? 0) + 1e-9);
      }
    });
  });

  it('keeps each run beside the longest to half of it where nobody counted them and there are days enough', () => {
    law([habit, fc.constantFrom(...RUN_KINDS)], (one, most) => {
      const { weeks, estimated } = planned({ ...one, runsPerWeek: null }, most);
      if (estimated === null) return;
      expect(estimated.runs).toBeGreaterThanOrEqual(Math.min(3, Math.max(1, one.runDays)));
      for (const { runs } of weeks) {
        const kms = runs.map(({ km }) => km ?? 0);
        expect(kms).toHaveLength(estimated.runs);
        if (order(most) < order('longer') || estimated.because.code === 'not-days-enough') continue;
        for (const km of kms.slice(1))
          expect(km).toBeLessThanOrEqual((one.longestIn30DaysKm ?? 0) / 2 + 1e-9);
      }
    });
  });

  it('never has hills and fast running in one week for someone not used to both or within six weeks', () => {
    law([habit], (one) => {
      const { weeks, hillsAndFast } = planned(one, 'fast');
      const longUsed = one.usedToHills && one.usedToFast && (one.weeksBack ?? 0) >= 6;
      expect(hillsAndFast.rule === 'never-neighbours').toBe(longUsed);
      if (longUsed) return;
      for (const { runs } of weeks)
        expect(
          new Set(
            runs.map(({ kind }) => kind).filter((kind) => kind === 'fast' || kind === 'hills-or-strides'),
          ).size,
        ).toBeLessThanOrEqual(1);
    });
  });

  it('skips no rung of the walk-run ladder', () => {
    law([habit], (one) => {
      const rungs = planned(one, 'walk-run').weeks.map(({ runs }) => runs[0]?.walkRun?.rung ?? 0);
      expect(rungs[0]).toBe(one.walkRunRung ?? 1);
      for (const [i, rung] of rungs.slice(1).entries()) expect([0, 1]).toContain(rung - rungs[i]!);
    });
  });
});

describe('sitting', () => {
  const minutes = fc.integer({ min: 0, max: 300 });

  it('is never budgeted above what is tolerated; more tolerance never means less; half at most when hard', () => {
    law([minutes, fc.option(fc.integer({ min: 1, max: 300 }))], (toleranceMinutes, goalMinutes) => {
      const first = (tolerance: number) =>
        sittingBudget({ toleranceMinutes: tolerance, goalMinutes, fixedBlocksMinutes: [] }, sitting).steps;
      const steps = first(toleranceMinutes);
      expect(steps.length === 0).toBe(toleranceMinutes < 5);
      expect(steps[0]?.uprightMinutes ?? 0).toBeLessThanOrEqual(toleranceMinutes);
      expect(first(toleranceMinutes + 1)[0]?.uprightMinutes ?? 0).toBeGreaterThanOrEqual(
        steps[0]?.uprightMinutes ?? 0,
      );
      for (const [i, step] of steps.entries()) {
        expect(step.hardMinutes).toBeLessThanOrEqual(step.uprightMinutes / 2);
        if (i > 0) expect(step.uprightMinutes - steps[i - 1]!.uprightMinutes).toBeGreaterThan(0);
        if (i > 0) expect(step.uprightMinutes - steps[i - 1]!.uprightMinutes).toBeLessThanOrEqual(5);
      }
      if (steps.length > 0 && goalMinutes !== null) expect(steps.at(-1)?.uprightMinutes).toBe(goalMinutes);
    });
  });
});

describe('the way through the stages', () => {
  it('never goes back in time, and usual never ends before its own beginning', () => {
    const stage = fc
      .record({
        from: fc.integer({ min: 1, max: 12 }),
        more: fc.integer({ min: 0, max: 12 }),
        steps: fc.integer({ min: 0, max: 12 }),
        leastSessions: fc.integer({ min: 0, max: 20 }),
        sessionsPerWeek: fc.integer({ min: 1, max: 7 }),
      })
      .map(({ from, more, ...rest }) => ({ name: 'stage', usualWeeks: { from, to: from + more }, ...rest }));
    law(
      [fc.array(stage, { maxLength: 6 }), date, fc.integer({ min: 0, max: 100 })],
      (stages, start, spent) => {
        const dates = earliestStageDates(stages, start, spent, goingOn);
        expect(dates).toHaveLength(stages.length + 1);
        for (const [i, one] of dates.entries()) {
          expect(one.usuallyFrom <= one.usuallyTo).toBe(true);
          expect(one.earliestOn >= one.usuallyFrom).toBe(true);
          if (i > 0) expect(one.earliestOn >= dates[i - 1]!.earliestOn).toBe(true);
        }
      },
    );
  });
});
