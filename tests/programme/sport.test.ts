/** Sport beside the exercises: whole programmes of somebody who may do fast work, on the shipped protocol. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import type { Weekday } from '../../src/units/weekday.ts';
import { sportTexts } from '../../src/messages/en/patient/sport.ts';
import { tableEntries } from '../../src/messages/en/patient/day.ts';
import { planWeek, type WeekPlan } from '../../src/scheduling/plan.ts';
import type { PlanDay } from '../../src/scheduling/planDay.ts';
import { reason } from '../../src/units/reason.ts';
import type { WeekWish } from '../../src/scheduling/wish.ts';
import { clock, rested } from '../scheduling/houseRules.ts';
import { sectionLines } from './leafletText.ts';
import { day, person, RUNNER, testedSet } from './person.ts';
import { programmeOf } from './shipped.ts';

const TIRED: Consult['recovery'] = { sleep: 'good', stress: 'low', tired: true };

function player(doesNow: Consult['doesNow'], different: Partial<Consult> = {}) {
  return programmeOf(
    person({
      irritability: 'low',
      usualMorningPain: 0,
      tests: [
        { test: 'single-leg-bridge-raised', pain: 0 },
        { test: 'hip-hinge', pain: 0 },
        { test: 'single-leg-hinge', pain: 0 },
        { test: 'split-squat', pain: 0 },
      ],
      testedSets: [testedSet('romanian-deadlift', 16, 8, 2)],
      running: { ...RUNNER, speed: true },
      doesNow,
      ...different,
    }),
  );
}

type Made = ReturnType<typeof player>;

const football = (times: number, ...days: Weekday[]) => ({
  what: 'football',
  times,
  ...(days.length === 0 ? {} : { days }),
});
const daysWith = ({ record }: Made, entry: string) =>
  record.week.days
    .filter(({ entries }) => entries.some((one) => one.includes(entry)))
    .map(({ weekday }) => weekday);
const weekLines = ({ week }: Made) => sectionLines(week).join('\n');

describe('sport on its days', () => {
  it.each([
    // doesNow, who: sessions, football, springing work
    ['a match on Sunday', [football(1, 'sun')], {}, 1, ['sun'], true],
    ['training and a match', [football(2, 'tue', 'sat')], {}, 1, ['tue', 'sat'], false],
    ['the same, tired', [football(2, 'tue', 'sat')], { recovery: TIRED }, 1, ['sat'], false],
    ['twice, who knows when', [football(2)], { recovery: TIRED }, 1, 1, false],
    ['a match, tired', [football(1, 'sun')], { recovery: TIRED }, 1, ['sun'], false],
    ['every day', [football(7)], {}, 1, 2, true],
  ] as const)('%s', (_, doesNow, different, sessions, sport, springs) => {
    const made = player(doesNow as unknown as Consult['doesNow'], different as Partial<Consult>);
    expect(made.stage.chosen).toBe(4);
    expect(daysWith(made, 'Exercises')).toHaveLength(sessions);
    const played = daysWith(made, 'football');
    expect(typeof sport === 'number' ? played.length : played).toEqual(sport);
    expect(made.exercises.some(({ slot }) => slot === 'Fast and springy')).toBe(springs);
    for (const { entries } of made.record.week.days)
      if (entries.includes('football')) expect(entries).toEqual(['football']);
  });

  it('says to the patient and in the record what was given up', () => {
    const made = player([football(2, 'tue', 'sat')], { recovery: TIRED });
    const lines = weekLines(made);
    expect(lines).toContain('Football: for now once a week, on Saturday, not on Tuesday.');
    expect(lines).toContain('With football in the week there is room for one session of exercises a week.');
    expect(lines).toContain('There is nothing springy among your exercises for now');
    expect(lines).toContain(
      'A day with football holds no run and no session. If you move a session, leave 2 clear days before football and 2 clear days after.',
    );
    expect(sectionLines(made.activities).join('\n')).toMatch(
      /Football \| Change how \| .* For now once a week, on Saturday, not on Tuesday\.$/,
    );
    expect(made.record.week.gaveUp).toEqual(
      expect.arrayContaining([
        '1 session instead of 2.',
        'Football once a week instead of twice, for now; kept: sat; left out: tue.',
        'To leave room for sport, the session goes without Fast and springy and Strides, and sport follows a session after 3 days, as the recovery clock allows, where the stage has 5 between sessions.',
      ]),
    );
    expect(made.record.passedOver).toContainEqual(
      expect.objectContaining({
        slot: 'Fast and springy',
        because: 'left out: it makes way for what else the week holds',
      }),
    );
  });

  it('asks for the day where the plan had to choose one', () => {
    expect(weekLines(player([football(1)]))).toMatch(
      /We have put football on \w+, as no day was named for it\. If it falls on another day, tell us/,
    );
    expect(weekLines(player([football(1, 'sun')]))).not.toContain('no day was named');
  });

  it('is left out where its day is the only one with time, and the table of activities says so', () => {
    const made = player([football(1, 'sun')], { days: ['sun'] });
    expect(daysWith(made, 'Exercises')).toEqual(['sun']);
    expect(weekLines(made)).toContain('Football: leave it out for now.');
    expect(sectionLines(made.activities)).toContain(
      'Football | Leave for now | Your week has no room for it beside your exercises just now.',
    );
  });

  it('is in no week before its stage, whatever its day', () => {
    const made = player([football(1, 'sun')], {
      tests: [{ test: 'single-leg-bridge-raised', pain: 3 }],
    });
    expect(made.stage.chosen).toBeLessThan(4);
    expect(daysWith(made, 'football')).toEqual([]);
  });
});

describe('what is not hard', () => {
  const yoga = { what: 'yoga', times: 2, days: ['mon', 'wed'] as Weekday[] };

  it('stands on its days and takes nothing from the week', () => {
    const [bare, made] = [player([]), player([yoga])];
    expect(daysWith(made, 'yoga')).toEqual(['mon', 'wed']);
    expect(daysWith(made, 'Exercises')).toEqual(daysWith(bare, 'Exercises'));
    expect(made.record.week.gaveUp).toEqual(bare.record.week.gaveUp);
    const dates = made.calendar.filter(({ text }) => text === 'yoga').map(({ on }) => on);
    expect(dates[0]).toBe(day('2026-11-25'));
    expect(made.log.days.find(({ on }) => on === dates[0])?.planned).toMatch(/^Yoga/);
  });
});

describe('the words of a week', () => {
  const planned = (fixed: WeekWish['fixed'], easyFixed: WeekWish['easyFixed'] = []): WeekPlan => {
    const plan = planWeek(
      {
        lifts: { perWeek: 2, kind: 'heavy', hoursBetween: 48, days: ['mon', 'tue', 'thu'] },
        runs: [],
        runDays: [],
        hillsAndFast: 'never-one-week',
        fixed,
        easyFixed,
        betweenDays: [],
        daily: false,
      },
      rested,
      clock,
    );
    if (!plan.fits) throw new Error('expected a week');
    return plan;
  };
  const lifting = (on: Weekday) => ({ id: 'lifting at work', day: on, recovery: 'heavy' }) as const;

  it('keep sessions clear of sport, not of what cannot wait', () => {
    const texts = sportTexts(
      planned([lifting('wed'), { id: 'football', day: 'sat', recovery: 'heavy', mayWait: true }]),
    );
    expect(texts.join(' ')).toContain('A day with football holds no run and no session.');
    expect(texts.join(' ')).not.toContain('lifting at work');
  });

  it('speak of springy exercises only where there were some to leave out', () => {
    const plan = planned([{ id: 'football', day: 'sat', recovery: 'heavy', mayWait: true }]);
    const springy = (slots: readonly string[]) =>
      sportTexts({
        ...plan,
        gaveUp: [reason('plain-session', { slots, daysToSport: 3, daysBetween: 5 })],
      }).some((text) => text.includes('springy'));
    expect([springy(['Strides']), springy([])]).toEqual([true, false]);
  });

  it('say that a session follows what is hard on its day, and not what is easy', () => {
    const { days } = planned((['mon', 'wed', 'fri'] as const).map(lifting), [{ id: 'yoga', day: 'mon' }]);
    const { other, easyOther, afterOther } = days[0]!;
    const session = { exercises: ['bow'], begins: [], without: [], afterRun: false, afterOther };
    const monday: PlanDay = {
      on: day('2026-11-30'),
      weekday: 'mon',
      week: 1,
      part: 0,
      session,
      between: [],
      daily: [],
      runs: [],
      raceKm: null,
      other,
      easyOther,
      easyAfterRace: false,
    };
    const words = { titleOf: (_: number, exercise: string) => exercise, stepOf: () => null };
    expect(tableEntries(monday, words, 'full')).toEqual([
      'lifting at work',
      'yoga',
      'Exercises, after lifting at work',
    ]);
  });
});

describe('what cannot wait', () => {
  const work = (...days: Weekday[]) => ({ what: 'lifting at work', times: days.length, days });

  it('stays on its days as everyday load where no session finds a day beside it', () => {
    const made = player([work('mon', 'thu')], { recovery: TIRED, days: ['tue'] });
    expect(daysWith(made, 'Exercises')).toEqual(['tue']);
    expect(daysWith(made, 'lifting at work')).toEqual(['mon', 'thu']);
    expect(sectionLines(made.activities).join()).toContain('Make it lighter where you can');
    expect(made.record.remarks.join('\n')).toContain(
      'Lifting at work: beside its 2 hard days a week no session would find a day',
    );
  });

  it('is a hard day as long as there is a day for a session', () => {
    const made = player([work('mon')]);
    expect(daysWith(made, 'Exercises')).not.toContain('mon');
    expect(made.record.remarks.join('\n')).not.toContain('everyday load');
  });
});

describe('sport before its stage', () => {
  const early = player([football(2)], { tests: [{ test: 'single-leg-bridge-raised', pain: 2 }] });

  it('is named in record and note as given up, and in the leaflet as left, without a way to play on', () => {
    expect(early.stage.chosen).toBe(2);
    expect(early.record.week.gaveUp).toContain('Football: left out until stage 4, twice a week now.');
    expect(early.record.note.join('\n')).toContain('Football: left out until stage 4');
    const words = sectionLines(early.activities).join('\n');
    expect(words).toMatch(/Leave until the part “Fast work and sport”/);
    expect(words).not.toMatch(/jog|play/i);
  });

  it('is not named where it has its days', () => {
    expect(player([football(1)]).record.week.gaveUp.join(' ')).not.toContain('left out until');
  });
});

describe('deadlifts that wait', () => {
  it.each([1, 2, 3] as const)('in stage %i say nothing of an exercise that may be there already', (stage) => {
    const { activities } = programmeOf(person({ stage, doesNow: [{ what: 'deadlifts', times: 2 }] }));
    const [row] = sectionLines(activities).filter((line) => line.startsWith('Deadlifts'));
    expect(row).toMatch(/^Deadlifts \| Leave until /);
    expect(row).not.toContain('once it is there');
  });
});
