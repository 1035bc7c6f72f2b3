/** What each ground of a review says besides its move: its numbers, its source, and the days of the lines that show it. */
import { describe, expect, it } from 'vitest';
import type { LogRow } from '../../src/content/log/columns.ts';
import type { Because } from '../../src/review/terms.ts';
import { row } from '../content/log/logs.ts';
import { CARDS, dayNumber, mornings, onDay, reviewRows, sessions, steady } from './facts.ts';

const NO_RUNS = [5, 12, 19].map((index) => row(onDay(index), 'run', { done: 'no' }));
const MORNINGS = mornings(0, steady(21));
const GOOD = [...sessions(0, 21), ...MORNINGS, ...NO_RUNS];
const on = (rows: readonly LogRow[], day: number, more: Partial<LogRow>) =>
  rows.map((one) => (one.kind === 'session' && one.date === onDay(day) ? { ...one, ...more } : one));
const scores = (all: readonly number[]) => [...sessions(0, 21), ...mornings(0, all)];

/** Days of the entries, each once, counted from the start. */
const daysOf = ({ entries }: Because) => [...new Set(entries.map(({ date }) => dayNumber(date)))];

interface Row {
  readonly what: string;
  readonly rows: readonly LogRow[];
  readonly rule: Because['rule'];
  readonly inputs: Because['inputs'];
  readonly cite: string;
  readonly days: readonly number[];
}

// Sessions stand on days 0, 2, 4, 7, 9, 11, 14, 16 and 18; runs on 5, 12 and 19.
const ROWS: readonly Row[] = [
  {
    what: 'all met: how often in full, how often at all, of how many',
    rows: on(GOOD, 2, { done: 'part' }),
    rule: 'all-met',
    inputs: { doneInFull: 8, sessionsDone: 9, sessionsPlanned: 9 },
    cite: 'house rules 4',
    days: [0, 4, 7, 9, 11, 14, 16, 18],
  },
  {
    what: 'too few of the planned: the share, and the sessions that were done',
    rows: [
      ...sessions(0, 21).filter(({ date }) => ![7, 11, 16].includes(dayNumber(date))),
      ...MORNINGS,
      ...[7, 11, 16].flatMap(left),
    ],
    rule: 'missing-sessionsDoneShare',
    inputs: { have: 6 / 9, need: 0.7 },
    cite: 'house rules 4',
    days: [0, 2, 4, 9, 14, 18],
  },
  {
    what: 'in full too seldom: those in full alone',
    rows: [...on(sessions(0, 21, { done: 'part' }), 4, { done: 'yes' }), ...MORNINGS],
    rule: 'missing-doneSessions',
    inputs: { have: 1, need: 2 },
    cite: 'house rules 4',
    days: [4],
  },
  {
    what: 'mornings that are not written: those of the last week that are',
    rows: [...sessions(0, 21), ...mornings(0, steady(18))],
    rule: 'missing-checkDays',
    inputs: { have: 4, need: 7 },
    cite: 'house rules 4',
    days: [14, 15, 16, 17],
  },
  {
    what: 'twice too high: both mornings',
    rows: scores([...steady(19), 4, 4]),
    rule: 'over-usual-twice',
    inputs: { today: 4, usual: 2, unsettledDays: 2 },
    cite: 'house rules 5',
    days: [19, 20],
  },
  {
    what: 'a break: its days, from the first session missed to the next thing done',
    rows: [...sessions(0, 5), ...sessions(18, 21), ...MORNINGS],
    rule: 'away',
    inputs: { days: 11, from: onDay(7), to: onDay(18), sameStepUnder: 7, oneBackUpTo: 14 },
    cite: 'house rules 5',
    days: [18],
  },
  {
    what: 'a long break: against the longer limit',
    rows: [...sessions(0, 3), ...MORNINGS],
    rule: 'long-away',
    inputs: { days: 17, from: onDay(4), to: onDay(21), sameStepUnder: 7, oneBackUpTo: 14 },
    cite: 'house rules 5',
    days: [],
  },
  {
    what: 'bad mornings, nothing in full since: how long they lasted',
    rows: [
      ...sessions(0, 21).map((one) => (dayNumber(one.date) > 15 ? { ...one, done: 'part' as const } : one)),
      ...mornings(0, [...steady(14), 6, 6, ...steady(5)]),
    ],
    rule: 'not-done-since',
    inputs: { badUntil: onDay(15), doneInFull: 0 },
    cite: 'house rules 5',
    days: [15],
  },
  {
    what: 'an exercise that hurt holds the step: which, and when',
    rows: on(GOOD, 18, { painDuring: 6 }),
    rule: 'exercise-holds',
    inputs: { cards: CARDS.join(' ') },
    cite: 'Pain gate 0 to 3',
    days: [18],
  },
  {
    what: 'the last session without a line: its day',
    rows: GOOD.filter((one) => one.kind !== 'session' || one.date !== onDay(18)),
    rule: 'session-not-written',
    inputs: { days: [onDay(18)] },
    cite: 'house rules 4 and 5',
    days: [],
  },
  {
    what: 'an alarm: what was ticked, but not what was taken back',
    rows: [
      ...GOOD,
      row(onDay(9), 'alarm', { card: 'footDrop', done: 'yes' }),
      row(onDay(10), 'alarm', { card: 'fever', done: 'yes' }),
      row(onDay(10), 'alarm', { card: 'fever', done: 'no', edit: 1 }),
    ],
    rule: 'alarm',
    inputs: { items: 'footDrop' },
    cite: 'house rules 2',
    days: [9],
  },
];

/** Of a day it is written that nothing was done. */
function left(day: number): LogRow[] {
  return CARDS.map((card) => row(onDay(day), 'session', { card, side: 'right', done: 'no' }));
}

describe('the step', () => {
  it.each(ROWS)('$what', ({ rows, rule, inputs, cite, days }) => {
    const ground = reviewRows(rows).because.find((one) => one.rule === rule);
    expect(ground).toBeDefined();
    expect(ground!.inputs).toEqual(inputs);
    expect(ground!.source.cite).toContain(cite);
    expect(daysOf(ground!)).toEqual(days);
  });

  it('says since when, where a setback lies within', () => {
    const after = [
      ...sessions(0, 14),
      ...[14, 16, 18].flatMap(left),
      ...mornings(0, [...steady(11), 6, 6, ...steady(8)]),
    ];
    const missing = reviewRows(after).because.filter(({ rule }) => rule.startsWith('missing-'));
    expect(missing.map(({ rule, inputs }) => [rule, inputs])).toEqual([]);
    const mild = [
      ...sessions(0, 12),
      ...[14, 16].flatMap(left),
      ...sessions(18, 21),
      ...mornings(0, [...steady(11), 6, 6, ...steady(8)]),
    ];
    const one = reviewRows(mild).because.find(({ rule }) => rule === 'missing-doneSessions');
    expect(one?.inputs).toEqual({ have: 1, need: 2, since: onDay(13) });
  });
});

describe('each exercise', () => {
  const of = (rows: readonly LogRow[], card = 0) => reviewRows(rows).exercises[card]!;

  it('says the numbers of its pain, and the line that shows it', () => {
    const [first] = of(on(GOOD, 18, { painDuring: 5 })).because;
    expect(first).toMatchObject({
      rule: 'pain-over-limit',
      inputs: { during: 5, ceiling: 5, smallTo: 3, nearUsualTo: 3, usual: 2 },
    });
    expect(daysOf(first!)).toEqual([18]);
  });

  it('that hurt the last time but one, and no more since, stays', () => {
    expect(of(on(GOOD, 16, { painDuring: 7 })).decision).toBe('stay');
    expect(of(on(GOOD, 14, { painDuring: 7 })).decision).toBe('moveOn');
  });

  it('that was done in full less than twice stays, with those times', () => {
    const rows = [...on(sessions(0, 21, { sets: 2 }), 4, { sets: 3 }), ...MORNINGS];
    const few = of(rows).because.find(({ rule }) => rule === 'missing-doneSessions')!;
    expect(few).toMatchObject({ move: 'stay', inputs: { have: 1, need: 2 } });
    expect(daysOf(few)).toEqual([4]);
  });

  it('puts what asks for less first', () => {
    const rows = [...on(sessions(0, 21, { sets: 2 }), 18, { painDuring: 7 }), ...MORNINGS];
    expect(of(rows).because.map(({ move }) => move)).toEqual(['easeBack', 'stay']);
  });

  it('is spoken of by a line about the whole session, and by its own before that', () => {
    const whole = [0, 2, 4, 7, 9, 11, 14, 16, 18].map((day) =>
      row(onDay(day), 'session', { done: 'yes', painDuring: day === 18 ? 7 : 1 }),
    );
    expect(reviewRows([...whole, ...MORNINGS]).exercises.map(({ decision }) => decision)).toEqual([
      'easeBack',
      'easeBack',
    ]);
    const own = row(onDay(18), 'session', { card: CARDS[0]!, side: 'right', done: 'yes', sets: 2 });
    expect(of([...whole, own, ...MORNINGS]).done.sets).toBeNull();
    expect(of([...on(whole, 18, { painDuring: 1 }), own, ...MORNINGS]).done.sets).toBe(2);
  });

  it('of two legs takes what the weaker one did, and the worse pain', () => {
    const both = sessions(0, 21).flatMap((one) => [
      one,
      { ...one, side: 'left' as const, loadKg: 6, repetitions: 5, painDuring: 2 },
    ]);
    expect(of([...both, ...MORNINGS]).done).toEqual({
      on: onDay(18),
      sets: 3,
      repetitions: 5,
      seconds: null,
      loadKg: 6,
    });
    const worse = both.map((one) =>
      one.side === 'left' && one.date === onDay(18) ? { ...one, painDuring: 7 } : one,
    );
    expect(of([...worse, ...MORNINGS]).decision).toBe('easeBack');
  });

  it('that was left because it hurt, hurt', () => {
    const rows = on(GOOD, 18, { done: 'no', sets: null, repetitions: null, loadKg: null, painDuring: 7 });
    expect(of(rows).decision).toBe('easeBack');
    expect(of(rows).done.on).toBe(onDay(16));
  });
});
