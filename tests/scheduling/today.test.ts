/** What a day asks for: house rules 6, "the next session and the earliest day for it, from the log where there is one; a late session moves the rest". */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { todayOf, weekAround, type PlannedDay } from '../../src/scheduling/today.ts';
import { addDays, daysBetween, isoDate, type IsoDate } from '../../src/units/date.ts';
import { WEEKDAYS } from '../../src/units/weekday.ts';

const date = (text: string) => isoDate(text) as IsoDate;
const MONDAY = date('2026-03-02');
const at = (day: number) => addDays(MONDAY, day);

/** A letter a day: s session, r run, b between, x race, e easy day after it, else free. */
function plan(letters: string): PlannedDay[] {
  return [...letters].map((letter, day) => ({
    on: at(day),
    session: letter === 's',
    run: letter === 'r',
    between: letter === 'b',
    race: letter === 'x',
    easyAfterRace: letter === 'e',
  }));
}

const SPACING = { gapDays: 2, openDays: WEEKDAYS, noHeavyDays: 4 };
//            0 Mon  2 Wed  4 Fri
const WEEK = plan('srsbs..srsbs..');

interface Row {
  readonly case: string;
  readonly day: number;
  readonly done?: readonly number[];
  readonly kind: string;
  readonly moved?: string;
  readonly next: number | null;
}

const ROWS: readonly Row[] = [
  { case: 'the day before', day: -1, kind: 'before', next: 0 },
  { case: 'long before', day: -400, kind: 'before', next: 0 },
  { case: 'the first day', day: 0, kind: 'session', next: 2 },
  {
    case: 'the day after a first session that nobody wrote down',
    day: 1,
    kind: 'run',
    moved: 'late',
    next: 2,
  },
  { case: 'a run', day: 1, done: [0], kind: 'run', next: 2 },
  { case: 'a day between', day: 3, kind: 'between', next: 4 },
  { case: 'free', day: 5, kind: 'free', next: 7 },
  { case: 'the last session', day: 11, kind: 'session', next: null },
  { case: 'the last day', day: 13, kind: 'free', next: null },
  { case: 'the day of the review', day: 14, kind: 'after', next: null },
  { case: 'done today', day: 0, done: [0], kind: 'session', next: 2 },
  { case: 'done on time', day: 2, done: [0], kind: 'session', next: 4 },
  { case: 'done a day late: today waits', day: 2, done: [1], kind: 'free', moved: 'waits', next: 3 },
  { case: 'done late today: the next moves a day', day: 3, done: [0, 3], kind: 'session', next: 5 },
  { case: 'the day it was moved to is open', day: 3, done: [1], kind: 'session', moved: 'moved', next: 5 },
  { case: 'missed, on a free day', day: 5, done: [0, 2], kind: 'free', moved: 'late', next: 7 },
  { case: 'missed, and nobody writes a log', day: 5, kind: 'free', next: 7 },
  { case: 'missed, and today is a run', day: 8, done: [0, 2, 4], kind: 'run', moved: 'late', next: 9 },
];

describe('todayOf', () => {
  it.each(ROWS)('$case', ({ day, done = [], kind, moved = null, next }) => {
    const today = todayOf(at(day), WEEK, done.map(at), SPACING);
    expect([
      today.kind,
      today.moved,
      today.nextOn === null ? null : daysBetween(MONDAY, today.nextOn),
    ]).toEqual([kind, moved, next]);
  });

  it.each([
    { left: 'the first, nothing written', day: 1, done: [], nextOn: 2, nextIfDoneOn: 3 },
    { left: 'one that moves nothing', day: 5, done: [0, 2], nextOn: 7, nextIfDoneOn: 7 },
    { left: 'one that moves the next', day: 8, done: [0, 2, 4], nextOn: 9, nextIfDoneOn: 10 },
  ])(
    'tells the next session should what was left out be done today: $left',
    ({ day, done, nextOn, nextIfDoneOn }) => {
      const today = todayOf(at(day), WEEK, done.map(at), SPACING);
      expect([today.moved, today.nextOn, today.nextIfDoneOn]).toEqual(['late', at(nextOn), at(nextIfDoneOn)]);
    },
  );

  it('puts nothing late within the days before a race, nor into the easy days after it', () => {
    const race = plan('s.s....xeee.s');
    expect(todayOf(at(3), race, [at(0)], SPACING)).toMatchObject({ kind: 'free', moved: null });
    expect(todayOf(at(9), race, [at(0)], SPACING)).toMatchObject({
      kind: 'free',
      moved: null,
      nextOn: at(12),
    });
    expect(todayOf(at(7), race, [at(0)], SPACING).kind).toBe('run');
  });

  it('moves a session to an open day alone', () => {
    const spacing = { ...SPACING, openDays: ['mon', 'wed', 'fri'] as const };
    expect(todayOf(at(2), WEEK, [at(1)], spacing).nextOn).toBe(at(4));
  });

  it('law: two sessions never come nearer than the recovery clock, whatever was done', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('s', 'r', 'b', '.', 'x', 'e'), { minLength: 7, maxLength: 21 }),
        fc.array(fc.nat(20), { maxLength: 8 }),
        fc.integer({ min: -2, max: 23 }),
        fc.integer({ min: 1, max: 4 }),
        (letters, done, day, gapDays) => {
          const before = done.filter((one) => one <= day).map(at);
          const today = todayOf(at(day), plan(letters.join('')), before, { ...SPACING, gapDays });
          const last = before
            .filter((one) => one < today.on)
            .sort()
            .at(-1);
          const invited = today.kind === 'session' && !today.done ? [today.on] : [];
          const late = today.moved === 'late' ? [today.on] : [];
          for (const on of [...invited, ...late])
            if (last !== undefined) expect(daysBetween(last, on)).toBeGreaterThanOrEqual(gapDays);
          if (today.nextOn !== null) expect(today.nextOn > today.on).toBe(true);
          if (today.done && today.nextOn !== null)
            expect(daysBetween(today.on, today.nextOn)).toBeGreaterThanOrEqual(gapDays);
        },
      ),
    );
  });
});

describe('weekAround', () => {
  it.each([
    [-5, 0, 6],
    [0, 0, 6],
    [6, 0, 6],
    [7, 7, 13],
    [99, 7, 13],
  ])('day %i: from %i to %i', (day, from, to) => {
    const days = weekAround(at(day), WEEK).map(({ on }) => daysBetween(MONDAY, on));
    expect([days[0], days.at(-1)]).toEqual([from, to]);
  });
});
