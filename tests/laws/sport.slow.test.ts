/** Laws of sport in the week, over random people who may do it: nobody is refused, and a match day is a match day. */
import { timesText } from '../../src/messages/en/plain.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import type { Programme } from '../../src/programme/programme.ts';
import { addDays, daysBetween, weekdayOf } from '../../src/units/date.ts';
import { WEEKDAYS } from '../../src/units/weekday.ts';
import { drawn, holdsForAll } from './drawn.ts';
import { day, person, RUNNER, testedSet } from '../programme/person.ts';
import { sectionLines } from '../programme/leafletText.ts';
import { programmeOf } from '../programme/shipped.ts';

const HARD = ['football', 'exercise class', 'hill walking', 'orienteering'];
const WORK = 'lifting at work';
const EASY = ['yoga', 'walking', 'swimming'];

const activity = fc
  .record({
    what: fc.constantFrom(...HARD, ...HARD, WORK, ...EASY),
    more: fc.integer({ min: 0, max: 3 }),
    days: fc.subarray([...WEEKDAYS], { maxLength: 4 }),
  })
  .map(({ what, more, days }) => ({
    what,
    times: Math.max(1, days.length) + more,
    ...(days.length === 0 ? {} : { days }),
  }));

const player: fc.Arbitrary<Consult> = fc
  .record({
    doesNow: fc.uniqueArray(activity, { maxLength: 3, selector: ({ what }) => what }),
    days: fc.oneof(fc.constant([...WEEKDAYS]), fc.subarray([...WEEKDAYS], { minLength: 1 })),
    tired: fc.boolean(),
    late: fc.integer({ min: 0, max: 6 }),
    running: fc.constantFrom<Consult['running']>(
      { ...RUNNER, speed: true, hills: true },
      { ...RUNNER, runsPerWeek: 5, weeklyKm: 40 },
      RUNNER,
    ),
  })
  .map(({ tired, late, ...rest }) =>
    person({
      ...rest,
      days: [...rest.days],
      startOn: addDays(day('2026-11-24'), late),
      reviewOn: addDays(day('2026-12-15'), late),
      irritability: 'low',
      usualMorningPain: 0,
      recovery: { sleep: 'good', stress: 'low', tired },
      tests: ['single-leg-bridge-raised', 'hip-hinge', 'single-leg-hinge', 'split-squat'].map((test) => ({
        test,
        pain: 0,
      })),
      testedSets: [testedSet('romanian-deadlift', 16, 8, 2)],
    }),
  );

const players = drawn(player, { seed: 20261201, numRuns: 100 }, programmeOf);

const sessionWeekdays = ({ plan }: Programme) =>
  new Set(plan.flatMap(({ sessions, weekday }) => (sessions.length > 0 ? [weekday] : [])));

const law = (holds: (consult: Consult, programme: Programme) => void) =>
  holdsForAll(players(), (programme, consult) => holds(consult, programme));

/** What stands on each date. */
function dated({ calendar }: Programme): Programme['calendar'][] {
  return [...new Set(calendar.map(({ on }) => on))].map((date) => calendar.filter(({ on }) => on === date));
}

describe('sport in the week', () => {
  it('never stands against a programme, which has a session in every seven days', () => {
    law((_, programme) => {
      expect(programme.stage.chosen).toBe(4);
      const sessions = programme.calendar.filter(({ kind }) => kind === 'session').map(({ on }) => on);
      expect(sessions.length).toBeGreaterThanOrEqual(3);
    });
  });

  it('shares its day with no session and no run', () => {
    law((_, programme) => {
      for (const entries of dated(programme)) {
        if (!entries.some(({ kind, text }) => kind === 'other' && HARD.includes(text))) continue;
        expect(entries.filter(({ kind }) => kind === 'session' || kind === 'run')).toEqual([]);
      }
    });
  });

  it('keeps two days to the next session or sport, three where somebody is tired', () => {
    law(({ recovery }, programme) => {
      const hard = [
        ...new Set(
          programme.calendar
            .filter(({ kind, text }) => kind === 'session' || (kind === 'other' && HARD.includes(text)))
            .map(({ on }) => on),
        ),
      ];
      for (const [index, on] of hard.slice(1).entries())
        expect(daysBetween(hard[index]!, on)).toBeGreaterThanOrEqual(recovery.tired ? 3 : 2);
    });
  });

  it('is in the week as often as recorded, or the record says how often it is left out', () => {
    law(({ doesNow }, { record }) => {
      for (const { what, times, days = [] } of doesNow.filter(({ what: name }) => HARD.includes(name))) {
        const kept = record.week.days.filter(({ entries }) => entries.includes(what));
        const wished = Math.min(7, times);
        const said = record.week.gaveUp.find((gave) => gave.toLowerCase().startsWith(`${what} `));
        expect(said !== undefined).toBe(kept.length < wished);
        if (said !== undefined) expect(said).toContain(`instead of ${timesText(wished)}`);
        if (kept.length === wished)
          expect(kept.map(({ weekday }) => weekday)).toEqual(expect.arrayContaining([...days]));
      }
    });
  });

  it('is on its days where it is easy, whatever else the week holds', () => {
    law(({ doesNow }, { record }) => {
      for (const { what, days = [] } of doesNow.filter(({ what: name }) => EASY.includes(name)))
        for (const { weekday, entries } of record.week.days)
          expect(entries.includes(what)).toBe(days.includes(weekday));
    });
  });

  it('without it the first session comes on one of the first three days with time, or the patient is told why not', () => {
    law((consult) => {
      const programme = programmeOf({ ...consult, doesNow: [] });
      const first = programme.calendar.find(({ kind }) => kind === 'session')?.on ?? '';
      const open = [0, 1, 2].some((ahead) =>
        consult.days.includes(weekdayOf(addDays(consult.startOn, ahead))),
      );
      // Two sessions a week can ask for a later day; a week of one has no reason to.
      const told = sectionLines(programme.week).some((line) =>
        line.startsWith('Your first session comes on'),
      );
      if (open && !told) expect(daysBetween(consult.startOn, day(first))).toBeLessThanOrEqual(2);
      if (open && told) expect(sessionWeekdays(programme).size).toBeGreaterThan(1);
    });
  });
});
