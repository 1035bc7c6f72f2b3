/** A first session later than the protocol's `week.firstSessionDays` is explained to the patient. */
import { describe, expect, it } from 'vitest';
import { sectionLines } from './leafletText.ts';
import { day, person, RUNNER } from './person.ts';
import { programmeOf } from './shipped.ts';
import type { Consult } from '../../src/content/library.ts';

const LINE = /Your first session comes on .*/;
const said = (consult: Consult) => LINE.exec(sectionLines(programmeOf(consult).week).join('\n'))?.[0] ?? '';
const match = (more: Partial<Consult> = {}) =>
  person({
    seenOn: day('2027-03-04'),
    startOn: day('2027-03-05'),
    reviewOn: day('2027-04-01'),
    stage: 4,
    usualMorningPain: 0,
    irritability: 'low',
    tests: [{ test: 'single-leg-hinge', pain: 1 }],
    doesNow: [{ what: 'football', times: 1, days: ['sun'] }],
    running: { ...RUNNER, hills: true, speed: true, longestIn30DaysKm: 14, runsPerWeek: 4 },
    ...more,
  });

describe('a first session on a later day', () => {
  it('names what leaves no earlier day, and the day of the plan on which it comes', () => {
    const programme = programmeOf(match());
    const first = programme.plan.find(({ sessions }) => sessions.length > 0);
    expect(first?.on).toBe('2027-03-09');
    expect(said(match())).toBe(
      'Your first session comes on Tuesday 9 March. An earlier day would leave too little rest beside football and the other hard days of your week.',
    );
  });

  it('names no sport where sessions alone keep their distance', () => {
    const tuesdays = { days: ['tue', 'fri', 'sun'] as Consult['days'], doesNow: [] };
    expect(said(match({ ...tuesdays, startOn: day('2027-03-06') }))).toBe(
      'Your first session comes on Tuesday 9 March. An earlier day would leave too little rest between the hard days of your week.',
    );
  });

  it('names the want of time where no earlier day has any', () => {
    expect(said(match({ days: ['tue'], doesNow: [] }))).toBe(
      'Your first session comes on Tuesday 9 March. You have no time for one before that.',
    );
  });

  it.each([
    ['it comes in time', match({ doesNow: [] })],
    [
      'a race has moved it, which the race says',
      match({ running: { ...match().running, races: [{ on: day('2027-03-10'), km: 10 }] } }),
    ],
  ])('is not spoken of where %s', (_, consult) => {
    expect(said(consult)).toBe('');
  });
});
