/**
 * Laws of the dated plan over random people: all that is printed of a day is in it and the other way round, nothing
 * hard comes near a race, and one thing grows a week.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import type { Programme } from '../../src/programme/programme.ts';
import type { PlanEntry } from '../../src/decisions/terms/planEntry.ts';
import { addDays, daysBetween } from '../../src/units/date.ts';
import { weekdayAndDay } from '../../src/messages/en/plain.ts';
import { drawn, holdsForAll } from './drawn.ts';
import { day, FULL_KIT, person, RUNNER } from '../programme/person.ts';
import { shipped, workshop } from '../programme/shipped.ts';
import {
  easyAfterRace,
  easyBeforeRace,
  everyDay,
  isLight,
  newStresses,
  nextSession,
  printedDays,
  raceDayAlone,
  raceDays,
  walkRunOutings,
  weekKilometres,
} from './planLaws.ts';
import { walkRunRows } from './planReader.ts';

const SEED = 20261130;

const race = (startOn: Consult['startOn']) =>
  fc.record({
    on: fc.integer({ min: -12, max: 45 }).map((days) => addDays(startOn, days)),
    km: fc.constantFrom(5, 10, 21.1, 42.2),
    decided: fc.boolean(),
  });

/** Somebody who runs, or does not, with races here and there. */
const somebody: fc.Arbitrary<Consult> = fc
  .record({
    protocol: fc.constantFrom(
      'proximal-hamstring',
      'proximal-hamstring',
      'gluteal-tendon',
      'runner-strength',
    ),
    stage: fc.constantFrom('auto', 1, 2, 3, 4, 4),
    irritability: fc.constantFrom('low', 'moderate', 'high'),
    usualMorningPain: fc.integer({ min: 0, max: 5 }),
    testPain: fc.integer({ min: 0, max: 5 }),
    startOn: fc.integer({ min: 0, max: 6 }).map((days) => addDays(day('2026-11-23'), days)),
    days: fc.integer({ min: 3, max: 45 }),
    races: fc.integer({ min: 0, max: 2 }),
    raceDays: fc.array(race(day('2026-11-24')), { minLength: 2, maxLength: 2 }),
    weekDays: fc.subarray(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const, { minLength: 2 }),
    running: fc.constantFrom(
      RUNNER,
      { ...RUNNER, hills: true, speed: true },
      { ...RUNNER, hills: true, speed: true, weeklyKm: 45, longestIn30DaysKm: 15, runsPerWeek: 5 },
      { ...RUNNER, speed: true, overStriding: 'yes', stepsPerMin: 158 },
      { ...RUNNER, decision: 'walk-run' },
      { ...RUNNER, weeklyKm: 0, longestIn30DaysKm: 0, weeksOff: 8 },
      person().running,
    ),
    tired: fc.boolean(),
    toleranceMinutes: fc.constantFrom(3, 15, 30, 90),
    doesNow: fc.constantFrom(
      [],
      [{ what: 'indoor cycling class', times: 1 }],
      [{ what: 'rowing', times: 2 }],
    ),
  })
  .map(({ days, races, raceDays, weekDays, testPain, toleranceMinutes, tired, startOn, ...rest }) => {
    const painless = rest.protocol === 'runner-strength';
    return person({
      ...rest,
      startOn,
      seenOn: startOn,
      reviewOn: addDays(startOn, days),
      // Three stages are numbered in the one, four in the other.
      stage: painless ? 'auto' : rest.protocol === 'gluteal-tendon' && rest.stage === 4 ? 1 : rest.stage,
      usualMorningPain: painless ? 0 : rest.usualMorningPain,
      tests: [{ test: painless ? 'split-squat' : 'single-leg-hinge', pain: painless ? 0 : testPain }],
      days: [...weekDays],
      kit: FULL_KIT,
      running: {
        ...rest.running,
        races: raceDays.slice(0, races).map(({ on, km, decided }) => ({
          on,
          km,
          ...(decided ? { decision: 'decided by R. Sample' } : {}),
        })),
      },
      recovery: { sleep: 'good', stress: 'low', tired },
      sitting: { toleranceMinutes, goalMinutes: 60 },
    } as unknown as Partial<Consult>);
  });

const everybody = drawn(somebody, { seed: SEED, numRuns: 120 }, (consult): Programme | null => {
  const made = assembleProgramme(consult, null, workshop);
  return 'programme' in made ? made.programme : null;
});

/** Holds a law to everybody who gets a programme. */
const over = (law: (programme: Programme, consult: Consult) => void) => holdsForAll(everybody(), law);

describe('the random people', () => {
  it('are of every kind, so that the laws hold for somebody', () => {
    const made = everybody().map((one) => one.made);
    const some = (has: (programme: Programme) => boolean) => made.filter(has).length;
    expect(made.length).toBeGreaterThan(60);
    expect(some((one) => raceDays(one).length > 0)).toBeGreaterThan(8);
    expect(some(({ plan }) => plan.some(({ easyAfterRace }) => easyAfterRace))).toBeGreaterThan(8);
    expect(some(({ growth }) => growth.some(({ begins }) => begins === 'strides'))).toBeGreaterThan(0);
    expect(some(({ growth }) => growth.some(({ grows }) => grows === 'running'))).toBeGreaterThan(0);
    expect(some(({ plan }) => plan.some(({ step, week }) => step > 1 && week > 1))).toBeGreaterThan(0);
    expect(some((one) => walkRunRows(one) !== null)).toBeGreaterThan(8);
  });
});

describe('one plan', () => {
  it('holds every day from the start to the day before the review, and a race on the review day as its last', () =>
    over(everyDay));

  it('is what log, week and calendar print, day by day', () => over(printedDays));

  it('begins with the session that is printed as the next one', () => over(nextSession));

  it('comes to the kilometres of the running table, week by week, in plan and log', () =>
    over(weekKilometres));

  it('comes to the outings of the walk-run table', () => over(walkRunOutings));
});

describe('near a race of the plan', () => {
  it('nothing heavy and nothing fast stands in the four days before', () => over(easyBeforeRace));

  it('nothing hard stands in the easy days after, but for another race that was decided on', () =>
    over(easyAfterRace));

  it('no session on the clock stands in the 72 hours after, longer for the tired and the away', () => {
    over((programme, { recovery, running }) => {
      if (isLight(programme)) return;
      const days = recovery.tired || (running.weeksOff ?? 0) >= 4 ? 5 : 3;
      for (const { on } of raceDays(programme))
        for (const entry of programme.plan.filter((one) => one.on > on && daysBetween(on, one.on) < days))
          expect(entry.sessions, entry.on).toEqual([]);
    });
  });

  it('about half the kilometres of a usual week are run in the seven days before', () => {
    over((programme, { running: { weeklyKm = 0 } }) => {
      for (const { on } of raceDays(programme)) {
        const before = programme.plan.filter((one) => one.on < on && daysBetween(one.on, on) <= 7);
        const kms = before.flatMap(({ runs }) => runs.flatMap(({ km }) => km ?? []));
        const total = kms.reduce((sum, km) => sum + km, 0);
        if (before.length === 7 && kms.length > 0) expect(total).toBeLessThanOrEqual(0.55 * weeklyKm);
      }
    });
  });

  it('the day of a race holds nothing else', () => over(raceDayAlone));

  it('no race stands for someone irritable, in much pain or on walk-run without a recorded decision', () => {
    over((programme, { irritability, usualMorningPain, running }) => {
      const doubtful = irritability === 'high' || usualMorningPain >= 4 || walkRunRows(programme) !== null;
      for (const { on } of raceDays(programme)) {
        const decision = running.races?.find((one) => one.on === on)?.decision;
        if (doubtful && running.weeksOff === 0) expect(decision, on).toBeDefined();
      }
    });
  });
});

describe('one thing at a time', () => {
  it('at most one new stress begins in a week, in the order springy, strides, hills, fast', () => {
    over((programme, consult) => {
      newStresses(programme, consult);
      const { plan } = programme;
      const { protocol, stage } = consult;
      if (protocol !== 'proximal-hamstring' || stage !== 4) return;
      const firstWeek = (has: (entry: PlanEntry) => boolean) => plan.find(has)?.week;
      const drills = (kind: string) => (entry: PlanEntry) =>
        entry.sessions.some(({ exercises }) =>
          exercises.some(({ card }) => shipped.exercises.get(card)?.kind === kind),
        );
      const weeks = [
        firstWeek(drills('energy-storage')),
        firstWeek(drills('running-drill')),
        firstWeek(({ runs }) => runs.some(({ kind }) => kind === 'hills-or-strides')),
        firstWeek(({ runs }) => runs.some(({ kind }) => kind === 'fast')),
      ].filter((week) => week !== undefined);
      expect(new Set(weeks).size).toBe(weeks.length);
      expect(weeks).toEqual([...weeks].sort((a, b) => a - b));
    });
  });

  it('exercises, running, sitting and step rate: the printed values grow in the weeks that are theirs alone', () => {
    over(({ growth, plan, sitting, running, steps }, consult) => {
      const lines = [sitting, running].flatMap(({ parts }) =>
        parts.flatMap((part) =>
          part.kind === 'list' ? part.entries : part.kind === 'paragraph' ? [part.text] : [],
        ),
      );
      const from = (what: string) => growth.filter(({ grows }) => grows === what).map((one) => one.from);
      const dated = (pattern: RegExp) =>
        lines.filter((line) => pattern.test(line)).map((line) => /^From (\w+ \d+ \w+)/.exec(line)?.[1]);
      expect(dated(/^From .* upright\. /)).toEqual(from('sitting').map(weekdayAndDay));
      expect(dated(/^From .*quicker steps/)).toEqual(from('stepRate').map(weekdayAndDay));
      const longest = growth.map(({ week }) =>
        Math.max(
          0,
          ...plan.filter((one) => one.week === week).flatMap(({ runs }) => runs.map(({ km }) => km ?? 0)),
        ),
      );
      growth.forEach(({ grows }, index) => {
        const before = Math.max(consult.running.longestIn30DaysKm ?? 0, ...longest.slice(0, index));
        if ((longest[index] ?? 0) > before && before > 0) expect(grows).toBe('running');
      });
      const begins = plan.flatMap(({ week, sessions }) =>
        sessions.some((one) => one.begins.length > 0) ? [week] : [],
      );
      for (const week of begins) expect(growth[week - 1]?.grows).toBe('exercises');
      const notBefore = steps.flatMap(({ goOnWhen }) => goOnWhen).filter((text) => text.startsWith('it is '));
      const turns = growth.filter(({ grows, because }) => grows === 'exercises' && because === 'turn');
      for (const text of notBefore)
        expect(text).toContain(weekdayAndDay(turns[0]?.from ?? day('2026-01-01')));
    });
  });
});
