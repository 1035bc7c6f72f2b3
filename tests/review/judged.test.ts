/** Which days and lines a review judges, and when a dose counts as done. */
import { describe, expect, it } from 'vitest';
import { breaksOf } from '../../src/review/away.ts';
import { periodOf } from '../../src/review/facts.ts';
import { isRun, runsDone } from '../../src/review/running.ts';
import { isDone, isWhole, sessionDays } from '../../src/review/sessions.ts';
import { gentler, gentlestOf, MOVES } from '../../src/review/terms.ts';
import type { LogRow } from '../../src/content/log/columns.ts';
import { readRows, row } from '../content/log/logs.ts';
import { CARDS, dayNumber, factsOf, mornings, onDay, sessions, steady } from './facts.ts';

const entryOf = (more: Partial<LogRow>) => readRows([row(onDay(0), 'session', more)]).log.entries[0]!;

describe('the days that are judged', () => {
  it.each([
    // seen on, last line, until
    ['on the planned day', 21, 20, 21],
    ['early', 10, 9, 10],
    ['early, with lines of the day itself', 10, 10, 10],
    ['late, the log at an end before', 30, 18, 21],
    ['late, the log going on', 30, 25, 26],
    ['late, the log up to the day', 30, 30, 30],
    ['dated before the start: as on the planned day', -3, 20, 21],
    ['dated on the start: as on the planned day', 0, 20, 21],
  ])('%s', (_, seen, last, until) => {
    const rows = mornings(0, steady(last + 1));
    const period = periodOf(factsOf(rows, 21, { seenOn: onDay(seen) }));
    expect(dayNumber(period.from)).toBe(0);
    expect(dayNumber(period.until)).toBe(until);
    expect(period.entries.map(({ date }) => dayNumber(date))).toEqual(
      Array.from({ length: Math.min(until, last) + 1 }, (__, day) => day),
    );
    expect(period.outside.map(({ date }) => dayNumber(date))).toEqual(
      Array.from({ length: Math.max(0, last - until) }, (__, day) => until + 1 + day),
    );
  });

  it('leaves lines before the start outside', () => {
    const period = periodOf(factsOf(mornings(-2, steady(5))));
    expect(period.outside.map(({ date }) => dayNumber(date))).toEqual([-2, -1]);
    expect(period.entries.map(({ date }) => dayNumber(date))).toEqual([0, 1, 2]);
  });
});

describe('breaks', () => {
  const breaks = (rows: readonly LogRow[], days = 21) => {
    const period = periodOf(factsOf(rows, days));
    return breaksOf(sessionDays(period), period).map(({ from, to, days: long, isOver, start }) => [
      dayNumber(from),
      dayNumber(to),
      long,
      isOver,
      start,
    ]);
  };

  it.each<[string, readonly LogRow[], ReturnType<typeof breaks>]>([
    ['none', sessions(0, 21), []],
    ['one session missed is no break', [...sessions(0, 7), ...sessions(9, 21)], []],
    ['five days are none', [...sessions(0, 3), ...sessions(9, 21)], []],
    ['seven are', [...sessions(0, 4), ...sessions(11, 21)], [[4, 11, 7, true, 'one-step-back']]],
    ['to the end of the days', sessions(0, 8), [[9, 21, 12, false, 'one-step-back']]],
    ['more than two weeks', sessions(0, 3), [[4, 21, 17, false, 'stage-start']]],
    ['nothing at all', [row(onDay(3), 'morning', { morning: 2 })], [[0, 21, 21, false, 'stage-start']]],
    [
      'work between the sessions ends one',
      [...sessions(0, 3), row(onDay(9), 'between', { card: CARDS[0]!, done: 'yes' }), ...sessions(14, 21)],
      [],
    ],
    [
      'a line that it was left ends none',
      [...sessions(0, 3), row(onDay(9), 'between', { card: CARDS[0]!, done: 'no' }), ...sessions(14, 21)],
      [[4, 14, 10, true, 'one-step-back']],
    ],
    [
      'two of them',
      [...sessions(0, 1), ...sessions(9, 10), ...sessions(18, 21)],
      [
        [2, 9, 7, true, 'one-step-back'],
        [11, 18, 7, true, 'one-step-back'],
      ],
    ],
  ])('%s', (_, rows, found) => {
    expect(breaks(rows)).toEqual(found);
  });
});

describe('what counts as done', () => {
  it.each<[Partial<LogRow>, boolean]>([
    [{ done: 'yes' }, true],
    [{ done: 'part' }, true],
    [{ done: 'no' }, false],
    [{ sets: 1 }, true],
    [{ sets: 0 }, false],
    [{}, false],
    [{ repetitions: 8 }, false],
  ])('%j: %s', (more, done) => {
    expect(isDone(entryOf(more))).toBe(done);
  });

  const PLANNED = { sets: 3, repetitions: 8, holdSeconds: 30, loadKg: 10 };
  it.each<[Partial<LogRow>, boolean]>([
    [{ done: 'yes' }, true],
    [{ done: 'part' }, false],
    [{ done: 'no' }, false],
    [{ sets: 3 }, true],
    [{ sets: 2 }, false],
    [{ done: 'yes', sets: 2 }, false],
    [{ done: 'part', sets: 3 }, false],
    [{ done: 'yes', repetitions: 7 }, false],
    [{ done: 'yes', repetitions: 9 }, true],
    [{ done: 'yes', seconds: 29 }, false],
    [{ done: 'yes', seconds: 30 }, true],
    [{ done: 'yes', loadKg: 9.5 }, false],
    [{ done: 'yes', loadKg: 10 }, true],
    [{ repetitions: 8 }, false],
  ])('whole, %j: %s', (more, whole) => {
    expect(isWhole(entryOf(more), PLANNED)).toBe(whole);
  });

  it('asks nothing of what was not planned in numbers', () => {
    expect(isWhole(entryOf({ done: 'yes', loadKg: 0, sets: 1 }), { loadKg: null, sets: 'to taste' })).toBe(
      true,
    );
  });

  const day = (rows: readonly LogRow[], at: number) =>
    sessionDays(periodOf(factsOf(rows))).find(({ on }) => on === onDay(at))!;

  it('a day is in full when each of its exercises is', () => {
    const [first, second] = sessions(2, 3);
    expect(day([first!, second!], 2)).toMatchObject({ planned: true, done: true, inFull: true });
    expect(day([first!], 2)).toMatchObject({ done: true, inFull: false });
    expect(day([first!, { ...second!, sets: 2 }], 2)).toMatchObject({ done: true, inFull: false });
    expect(day([row(onDay(2), 'session', { done: 'yes' })], 2)).toMatchObject({ inFull: true });
    expect(day([row(onDay(2), 'session', { done: 'part' })], 2)).toMatchObject({ done: true, inFull: false });
    expect(day([], 2)).toMatchObject({ planned: true, done: false, inFull: false, entries: [] });
  });

  it('a session on another day counts, measured by what the plan has', () => {
    const moved = sessions(2, 3).map((one) => ({ ...one, date: onDay(3) }));
    expect(day(moved, 3)).toMatchObject({ planned: false, done: true, inFull: true });
    expect(day(moved.slice(0, 1), 3)).toMatchObject({ planned: false, inFull: false });
  });
});

describe('runs', () => {
  it.each<[Partial<LogRow>, boolean]>([
    [{ done: 'yes' }, true],
    [{ done: 'part' }, true],
    [{ done: 'no', km: 5 }, false],
    [{ km: 5 }, true],
    [{ minutes: 20 }, true],
    [{ km: 0 }, false],
    [{ minutes: 0 }, false],
    [{}, false],
  ])('%j is one: %s', (more, is) => {
    expect(isRun(readRows([row(onDay(0), 'run', more)]).log.entries[0]!)).toBe(is);
  });

  const done = (runs: readonly (readonly [day: number, km: number | null])[], days: number) =>
    runsDone(
      periodOf(
        factsOf(
          runs.map(([at, km]) => row(onDay(at), 'run', { done: 'yes', km })),
          days,
        ),
      ),
    );

  it.each<[string, Parameters<typeof done>[0], number, ReturnType<typeof done>]>([
    ['none', [], 21, null],
    ['none with kilometres', [[3, null]], 21, null],
    [
      'the mean of three weeks, to a tenth',
      [
        [3, 5],
        [10, 6],
        [17, 9],
      ],
      21,
      { longestKm: 9, weeklyKm: 6.7 },
    ],
    [
      'of less than a week as of one',
      [
        [1, 5],
        [3, 5],
      ],
      4,
      { longestKm: 5, weeklyKm: 10 },
    ],
    [
      'the longest of thirty days, not of those before',
      [
        [3, 12],
        [12, 7],
        [30, 6],
      ],
      42,
      { longestKm: 7, weeklyKm: 4.2 },
    ],
    [
      'the thirtieth day before the last counts',
      [
        [11, 12],
        [12, 8],
      ],
      42,
      { longestKm: 8, weeklyKm: 3.3 },
    ],
    ['none lately', [[3, 12]], 42, { longestKm: 0, weeklyKm: 2 }],
  ])('%s', (_, runs, days, found) => {
    expect(done(runs, days)).toEqual(found);
  });
});

it('of two moves the gentler holds', () => {
  MOVES.forEach((one, at) =>
    MOVES.forEach((other, otherAt) => expect(gentler(one, other)).toBe(MOVES[Math.max(at, otherAt)])),
  );
  expect(gentlestOf([])).toBe('moveOn');
  expect(gentlestOf([{ move: 'stay' }, { move: 'beSeen' }, { move: 'easeBack' }])).toBe('beSeen');
});
