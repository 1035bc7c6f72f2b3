/** The planner against trying everything, on a thousand random weeks with a fixed seed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WEEKDAYS } from '../../src/units/weekday.ts';
import { planWeek } from '../../src/scheduling/plan.ts';
import type { Recoverer } from '../../src/scheduling/recovery.ts';
import type { WeekWish } from '../../src/scheduling/wish.ts';
import { bestWorth, judge } from './bruteForce.ts';
import { clock } from './houseRules.ts';

const someDays = (least: number) =>
  fc.oneof(fc.constant([...WEEKDAYS]), fc.subarray([...WEEKDAYS], { minLength: least }));

const lifts = fc.record({
  perWeek: fc.constantFrom(1, 2, 3, 3, 4, 7),
  kind: fc.constantFrom('heavy', 'heavy', 'energy-storage', 'light'),
  hoursBetween: fc.constantFrom(12, 24, 48, 72),
  days: someDays(1),
  clearOfOthers: fc.constantFrom('stage', 'stage', 'clock'),
} as const);

const run = fc.constantFrom('easy', 'easy', 'longer', 'steady', 'hills-or-strides', 'fast', 'walk-run');

const point = fc.record({
  day: fc.option(fc.constantFrom(...WEEKDAYS), { freq: 2 }),
  recovery: fc.constantFrom('heavy', 'energy-storage'),
  mayWait: fc.boolean(),
} as const);

const wishes: fc.Arbitrary<WeekWish> = fc
  .record({
    lifts,
    kinds: fc.oneof(fc.array(run, { maxLength: 2 }), fc.array(run, { maxLength: 5 })),
    runDays: someDays(0),
    hillsAndFast: fc.constantFrom('never-one-week', 'never-neighbours'),
    fixed: fc.oneof(fc.array(point, { maxLength: 1 }), fc.array(point, { maxLength: 3, size: 'small' })),
    startDay: fc.constantFrom(undefined, ...WEEKDAYS),
  } as const)
  .map(({ kinds, fixed, startDay, ...rest }) => ({
    ...rest,
    ...(startDay === undefined ? {} : { startDay }),
    runs: kinds.map((kind, i) => ({ id: `run-${i + 1}`, kind, features: [] })),
    fixed: fixed.map((point, i) => ({ ...point, id: `sport-${i + 1}` })),
    betweenDays: [],
    daily: false,
  }));

const people: fc.Arbitrary<Recoverer> = fc.record({
  trainingYears: fc.constantFrom(null, 0.5, 5, 20),
  weeksAway: fc.constantFrom(null, 0, 0, 0, 6),
  tired: fc.constantFrom(false, false, false, true),
  sleep: fc.constantFrom('good', 'good', 'good', 'fair', 'poor'),
} as const);

const weeks = fc.sample(fc.tuple(wishes, people), { numRuns: 1000, seed: 20260302 });

describe('the week against trying everything', () => {
  it('is as good as the best of all weeks, keeps the clock, and refuses only when nothing fits (1000 weeks)', () => {
    let fitting = 0;
    let gaveUp = 0;
    let leftOut = 0;
    for (const [wish, person] of weeks) {
      const plan = planWeek(wish, person, clock);
      const best = bestWorth(wish, person, clock);
      if (!plan.fits) {
        expect(best, JSON.stringify(wish)).toBeNull();
        continue;
      }
      fitting += 1;
      if (plan.gaveUp.length > 0) gaveUp += 1;
      if (plan.sport.some(({ leftTimes }) => leftTimes > 0)) leftOut += 1;
      const { worth, faults } = judge(plan, wish, person, clock);
      expect(faults, JSON.stringify(wish)).toEqual([]);
      expect(worth, JSON.stringify(wish)).toEqual(best);
    }
    // The sample must hold all sorts: full weeks, tight ones, and ones that cannot be.
    expect(fitting).toBeGreaterThan(500);
    expect(fitting).toBeLessThan(1000);
    expect(gaveUp).toBeGreaterThan(200);
    expect(leftOut).toBeGreaterThan(50);
    expect(fitting - gaveUp).toBeGreaterThan(100);
  }, 60_000);

  it('is the same week every time it is asked', () => {
    for (const [wish, person] of weeks.slice(0, 100))
      expect(planWeek(wish, person, clock)).toEqual(planWeek(structuredClone(wish), person, clock));
  });
});
