/** Laws of the days of runs, over random people: what stands beside a long run, how many follow each other, on which days. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import type { PlanEntry } from '../../src/decisions/terms/planEntry.ts';
import type { Programme } from '../../src/programme/programme.ts';
import { addDays } from '../../src/units/date.ts';
import { planWeek } from '../../src/scheduling/plan.ts';
import type { RunKind } from '../../src/scheduling/run.ts';
import type { WeekWish } from '../../src/scheduling/wish.ts';
import { WEEKDAYS, type Weekday } from '../../src/units/weekday.ts';
import { clock, rested } from '../scheduling/houseRules.ts';
import { drawn, holdsForAll } from './drawn.ts';
import { day, FULL_KIT, person, RUNNER, testedSet } from '../programme/person.ts';
import { workshop } from '../programme/shipped.ts';

const HARD = ['football', 'exercise class', 'lifting at work'];

// A runner whose runs a week nobody counted.
const UNCOUNTED = Object.fromEntries(
  Object.entries(RUNNER).filter(([key]) => key !== 'runsPerWeek'),
) as unknown as Consult['running'];

const activity = fc
  .record({
    what: fc.constantFrom(...HARD, 'yoga'),
    days: fc.subarray([...WEEKDAYS], { minLength: 1, maxLength: 3 }),
  })
  .map(({ what, days }) => ({ what, times: days.length, days }));

const runner: fc.Arbitrary<Consult> = fc
  .record({
    protocol: fc.constantFrom('proximal-hamstring', 'proximal-hamstring', 'gluteal-tendon'),
    tests: fc.constantFrom(0, 2, 4),
    doesNow: fc.uniqueArray(activity, { maxLength: 2, selector: ({ what }) => what }),
    days: fc.subarray([...WEEKDAYS], { minLength: 2 }),
    tired: fc.boolean(),
    late: fc.integer({ min: 0, max: 6 }),
    runsPerWeek: fc.constantFrom(undefined, undefined, 2, 4, 5, 7),
    weeklyKm: fc.constantFrom(12, 30, 60),
    longest: fc.constantFrom(5, 12),
    hills: fc.boolean(),
  })
  .map(({ tests, tired, late, runsPerWeek, weeklyKm, longest, hills, ...rest }) => {
    return person({
      ...rest,
      kit: FULL_KIT,
      startOn: addDays(day('2026-11-24'), late),
      reviewOn: addDays(day('2026-12-22'), late),
      irritability: 'low',
      usualMorningPain: 1,
      recovery: { sleep: 'good', stress: 'low', tired },
      tests: ['single-leg-bridge-raised', 'hip-hinge', 'single-leg-hinge', 'split-squat'].map(
        (test, index) => ({ test, pain: index === 0 ? Math.min(tests, 2) : tests }),
      ),
      testedSets: [testedSet('romanian-deadlift', 16, 8, 2)],
      running: {
        ...UNCOUNTED,
        ...(runsPerWeek === undefined ? {} : { runsPerWeek }),
        weeklyKm,
        longestIn30DaysKm: longest,
        hills,
        speed: hills,
      },
    });
  });

const runners = drawn(runner, { seed: 20261130, numRuns: 100 }, (consult): Programme | null => {
  const made = assembleProgramme(consult, null, workshop);
  return 'programme' in made ? made.programme : null;
});

/** Holds a law to everybody who gets a programme, and counts for how many it says something. */
function over(law: (programme: Programme, consult: Consult) => boolean): number {
  let told = 0;
  holdsForAll(runners(), (programme, consult) => {
    if (law(programme, consult)) told += 1;
  });
  return told;
}

/** Hard on the clock: what is on too many days counts as everyday load, and holds none. */
const hardIn = ({ record }: Programme) => {
  const everyday = record.remarks.filter((text) => text.includes('It counts as everyday load'));
  const hard = HARD.filter((id) => !everyday.some((text) => text.toLowerCase().startsWith(`${id}:`)));
  return ({ other }: PlanEntry) => other.some((id) => hard.includes(id));
};
const hasRun = ({ runs }: PlanEntry) => runs.length > 0;
const says = ({ record }: Programme, words: string) =>
  record.week.gaveUp.some((text) => text.includes(words));
const CUT = 'The longest run is cut to';
const ROW = 'run days in a row';

/** Runs that go further than every other of their week. */
const longest = (week: readonly PlanEntry[]) =>
  week.filter(({ runs }) =>
    runs.some(
      ({ km }) =>
        week.every((day) => day.runs.every((run) => run.km === km || (run.km ?? 0) < (km ?? 0))) &&
        week.filter((day) => day.runs.some((run) => run.km === km)).length === 1,
    ),
  );
const weeksOf = ({ plan }: Programme) =>
  [...new Set(plan.map(({ week }) => week))].map((week) => plan.filter((day) => day.week === week));

/** Most days in a row for which it holds. */
const rowOf = (plan: readonly PlanEntry[]) =>
  Math.max(
    ...plan
      .map((entry) => (hasRun(entry) ? 'x' : ' '))
      .join('')
      .split(' ')
      .map(({ length }) => length),
  );

describe('a longest run', () => {
  it('stands neither on the day before nor on the day after something hard, or is cut and the record says so', () => {
    const told = over((programme, { running }) => {
      const { plan } = programme;
      const isHard = hardIn(programme);
      const beside = weeksOf(programme)
        .flatMap(longest)
        .filter((entry) => {
          const at = plan.indexOf(entry);
          return [plan[at - 1], plan[at + 1]].some((one) => one !== undefined && isHard(one));
        });
      if (!says(programme, CUT)) expect(beside.map(({ on }) => on)).toEqual([]);
      for (const { runs } of beside)
        for (const { km } of runs) expect(km).toBeLessThanOrEqual((running.longestIn30DaysKm ?? 0) * 0.75);
      return plan.some(isHard) && plan.some(hasRun);
    });
    expect(told).toBeGreaterThan(12);
  });

  it('is cut only where no free day keeps clear of everything hard (over weeks as they are wished)', () => {
    let cuts = 0;
    const days = fc.subarray([...WEEKDAYS], { maxLength: 4 });
    fc.assert(
      fc.property(days, fc.subarray([...WEEKDAYS], { minLength: 1 }), someRuns, (hard, runDays, more) => {
        const plan = planWeek(longRunBeside(hard, runDays, more), rested, clock);
        if (!plan.fits) throw new Error('light holds find a day');
        const day = plan.days.find(({ runs }) => runs.includes('run-1'));
        const free = runDays.filter((one) => !hard.includes(one));
        const clear = free.filter((one) => !hard.some((other) => isNeighbour(one, other)));
        // A steady run may take one of the days.
        const taken = more.includes('steady') ? 1 : 0;
        if (free.length > taken) expect(day).toBeDefined();
        if (day === undefined) return;
        if (clear.length > taken) expect(clear).toContain(day.weekday);
        const isClear = clear.includes(day.weekday);
        expect(day.longestShare).toBe(isClear ? null : clock.besideHardShare.value);
        if (!isClear) cuts += 1;
      }),
      { seed: 20261130, numRuns: 300 },
    );
    expect(cuts).toBeGreaterThan(50);
  });
});

const isNeighbour = (one: Weekday, other: Weekday) =>
  [1, 6].includes((WEEKDAYS.indexOf(one) - WEEKDAYS.indexOf(other) + 7) % 7);

const someRuns = fc
  .array(fc.constantFrom('easy' as const, 'easy' as const, 'steady' as const), { maxLength: 3 })
  .filter((kinds) => kinds.filter((kind) => kind === 'steady').length < 2);

const longRunBeside = (
  hard: readonly Weekday[],
  runDays: readonly Weekday[],
  more: readonly RunKind[],
): WeekWish => ({
  lifts: { perWeek: 1, kind: 'light', hoursBetween: 24, days: WEEKDAYS },
  runs: (['longer', ...more] as const).map((kind, i) => ({ id: `run-${i + 1}`, kind, features: [] })),
  runDays,
  longestRun: 'run-1',
  hillsAndFast: 'never-one-week',
  fixed: hard.map((day, index) => ({ id: `sport-${index}`, day, recovery: 'heavy' })),
  betweenDays: [],
  daily: false,
});

describe('run days in a row', () => {
  it('are two at most with a painful tendon below stage 4, unless the consult counts so many runs; that is said', () => {
    let own = 0;
    const told = over((programme, { running }) => {
      const { chosen } = programme.stage;
      if (chosen === 'keepGoing' || chosen >= 4) return false;
      const row = rowOf(programme.plan);
      expect(says(programme, ROW)).toBe(row > 2);
      if (row > 2) {
        own += 1;
        for (const week of weeksOf(programme))
          expect(week.filter(hasRun).length).toBeLessThanOrEqual(running.runsPerWeek ?? 0);
      }
      return programme.plan.some(hasRun);
    });
    expect(told).toBeGreaterThan(40);
    expect(own).toBeGreaterThan(2);
  });
});

describe('the days of the consult', () => {
  it('are those of the sessions; the record says so where a run falls on another', () => {
    const told = over(({ plan, record }, { days }) => {
      for (const { weekday, sessions } of plan) if (sessions.length > 0) expect(days).toContain(weekday);
      const others = plan.filter((entry) => hasRun(entry) && !days.includes(entry.weekday));
      expect(record.remarks.some((text) => text.includes('runs fall on other days'))).toBe(others.length > 0);
      return others.length > 0;
    });
    expect(told).toBeGreaterThan(12);
  });
});
