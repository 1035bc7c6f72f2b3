/** A race judged: too early, in doubt, decided (house rules 11.7), and the days around one that stands. */
import { describe, expect, it } from 'vitest';
import { addDays, isoDate, type IsoDate } from '../../src/units/date.ts';
import { judgedRaces, type Race, type RaceFacts } from '../../src/scheduling/race.ts';
import { raceDay, touchesRace } from '../../src/scheduling/raceDays.ts';
import { running } from './houseRules.ts';

const on = (text: string) => isoDate(text) as IsoDate;
const ready: RaceFacts = {
  most: 'fast',
  longestKm: 22,
  fitsFrom: null,
  irritable: false,
  barred: false,
  table: running.raceEasyDays,
  restShare: 0.2,
  overLongest: 1.5,
};
const ten: Race = { on: on('2026-03-08'), km: 10 };
const judged = (facts: Partial<RaceFacts> = {}, race: Race = ten) =>
  judgedRaces([race], { ...ready, ...facts })[0];

describe('a race stands in the plan', () => {
  it.each([
    ['where nothing speaks against it', {}, true],
    ['where it is merely early, and is told', { fitsFrom: on('2026-04-01') }, true],
    ['where it is merely long, and is told', { longestKm: 8 }, true],
    ['up to one and a half times the longest run', { longestKm: 6.7 }, true],
    ['not beyond that', { longestKm: 6.6 }, false],
    ['not where nobody knows how far it may be', { longestKm: null }, false],
    ['not for an irritable tendon', { irritable: true }, false],
    ['not while walk and run take turns', { most: 'walk-run' as const }, false],
    ['not where the screen stops running', { barred: true }, false],
  ])('%s', (_, facts, inPlan) => {
    expect(judged(facts)?.inPlan).toBe(inPlan);
  });

  it.each([
    ['irritable', { irritable: true }, true],
    ['far longer than any run', { longestKm: 3 }, true],
    ['on walk-run', { most: 'walk-run' as const }, true],
    ['without running by recorded choice', { most: 'none' as const }, true],
    ['stopped by the screen', { barred: true }, false],
  ])('with a recorded decision: %s', (_, facts, inPlan) => {
    expect(judged(facts, { ...ten, decision: 'decided' })?.inPlan).toBe(inPlan);
  });

  it('not in the easy days of another, unless that was decided', () => {
    const second: Race = { on: on('2026-03-14'), km: 5 };
    const both = (more: Partial<Race> = {}) =>
      judgedRaces([{ ...second, ...more }, ten], ready).map(({ on: day, inPlan }) => [day, inPlan]);
    expect(both()).toEqual([
      ['2026-03-08', true],
      ['2026-03-14', false],
    ]);
    expect(both({ decision: 'fun run' })[1]).toEqual(['2026-03-14', true]);
  });
});

describe('a race is told', () => {
  const codes = (facts: Partial<RaceFacts>, race: Race = ten) =>
    judged(facts, race)?.notes.map(({ code }) => code);

  it('as too early up to the day before it fits', () => {
    expect(judged({ fitsFrom: on('2026-03-09') })?.fitsFrom).toBe('2026-03-09');
    expect(judged({ fitsFrom: on('2026-03-08') })?.fitsFrom).toBeNull();
  });

  it.each([
    [{}, []],
    [{ fitsFrom: on('2026-04-01') }, ['race-before-ready']],
    [{ longestKm: 8 }, ['race-beyond-longest']],
    [{ longestKm: null }, ['race-beyond-longest', 'race-in-doubt']],
    [{ irritable: true }, ['race-in-doubt']],
    [{ barred: true, irritable: true }, ['race-barred']],
  ])('to the clinician %j', (facts, expected) => {
    expect(codes(facts)).toEqual(expected);
  });

  it('with the decision that was recorded', () => {
    const notes = judged({ irritable: true }, { ...ten, decision: 'a jog' })?.notes;
    expect(notes).toMatchObject([{ code: 'race-decided', inputs: { decision: 'a jog' } }]);
  });
});

describe('the days around a race of ten kilometres on Sunday 8 March', () => {
  const races = judgedRaces([ten], ready);
  const days = (text: string) => raceDay(on(text), races, running);

  it.each([
    // day          nothing heavy  half the running  easy day  days after
    ['2026-02-28', false, false, false, null],
    ['2026-03-01', false, true, false, null],
    ['2026-03-03', false, true, false, null],
    ['2026-03-04', true, true, false, null],
    ['2026-03-07', true, true, false, null],
    ['2026-03-08', false, false, false, null],
    ['2026-03-09', false, false, true, 1],
    ['2026-03-15', false, false, true, 7],
    ['2026-03-16', false, false, false, null],
  ])('%s', (text, before, taper, after, daysAfter) => {
    const day = days(text);
    expect([day.before !== null, day.taper !== null, day.after !== null, day.daysAfter]).toEqual([
      before,
      taper,
      after,
      daysAfter,
    ]);
  });

  it.each([
    [5, '2026-03-09'],
    [10, '2026-03-09'],
    [21.1, '2026-03-10'],
    [42.2, '2026-03-12'],
  ])('hold no run in the first fifth of the easy days: after %d km until %s', (km, until) => {
    const races = judgedRaces([{ ...ten, km }], ready);
    const rests = (text: string) => raceDay(on(text), races, running).rests;
    expect(races[0]?.restUntil).toBe(until);
    expect([rests('2026-03-08'), rests(until), rests(addDays(on(until), 1))]).toEqual([false, true, false]);
  });

  it('make a week count as touched from the days before to the last easy day', () => {
    const week = (from: string, to: string, before: number) =>
      touchesRace({ from: on(from), to: on(to) }, races, before);
    expect(week('2026-02-24', '2026-02-28', 7)).toBe(false);
    expect(week('2026-02-24', '2026-03-01', 7)).toBe(true);
    expect(week('2026-02-24', '2026-03-01', 4)).toBe(false);
    expect(week('2026-03-15', '2026-03-21', 4)).toBe(true);
    expect(week('2026-03-16', '2026-03-22', 4)).toBe(false);
  });
});
