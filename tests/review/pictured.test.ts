/** Weeks and series of a review, as they were written: for the record's table and pictures. */
import { describe, expect, it } from 'vitest';
import type { LogRow } from '../../src/content/log/columns.ts';
import { row } from '../content/log/logs.ts';
import { CARDS, consultFor, mornings, onDay, reviewRows, sessions } from './facts.ts';

const [CURL, HINGE] = CARDS as [string, string];
const session = (day: number, card: string, more: Partial<LogRow>) =>
  row(onDay(day), 'session', { card, side: 'right', ...more });

// Ten days: a week and three days of the next.
const LOG: readonly LogRow[] = [
  ...sessions(0, 3),
  session(4, CURL, { done: 'part', sets: 2, loadKg: 8 }),
  session(4, HINGE, { done: 'no', loadKg: 12 }),
  session(7, CURL, { done: 'yes', loadKg: 12 }),
  ...mornings(0, [2, 4, 1]),
  ...mornings(8, [3]),
  row(onDay(3), 'morning'),
  row(onDay(1), 'run', { km: 5.25 }),
  row(onDay(5), 'run', { done: 'yes', km: 4.1, minutes: 30 }),
  row(onDay(5), 'run', { done: 'yes', km: 1, occasion: 2 }),
  row(onDay(6), 'run', { done: 'no', km: 9 }),
  row(onDay(9), 'run', { done: 'yes', minutes: 20 }),
  row(onDay(2), 'sitting', { minutes: 40 }),
  row(onDay(6), 'sitting', { minutes: 55 }),
  row(onDay(7), 'sitting'),
];
const review = reviewRows(LOG, 10);

describe('weeks', () => {
  it('are of seven days from the start, the last one shorter', () => {
    expect(review.weeks.map(({ from, to }) => [from, to])).toEqual([
      [onDay(0), onDay(6)],
      [onDay(7), onDay(9)],
    ]);
    expect(reviewRows(LOG, 14).weeks).toHaveLength(2);
    expect(reviewRows(LOG, 15).weeks).toHaveLength(3);
  });

  it('count what was planned and done, and what it came to', () => {
    expect(review.weeks[0]).toEqual({
      from: onDay(0),
      to: onDay(6),
      sessions: { planned: 3, done: 3 },
      runDays: { planned: 1, done: 2 },
      km: 10.4,
      mornings: { least: 1, most: 4, written: 3 },
      loads: [
        { card: CURL, leastKg: 8, mostKg: 10 },
        { card: HINGE, leastKg: 10, mostKg: 10 },
      ],
      sittingMinutes: 55,
    });
  });

  it('say nothing of what nobody wrote down', () => {
    expect(review.weeks[1]).toEqual({
      from: onDay(7),
      to: onDay(9),
      sessions: { planned: 2, done: 1 },
      runDays: { planned: 0, done: 1 },
      km: null,
      mornings: { least: 3, most: 3, written: 1 },
      loads: [{ card: CURL, leastKg: 12, mostKg: 12 }],
      sittingMinutes: null,
    });
    const bare = reviewRows([row(onDay(0), 'morning', { morning: 2 })], 14).weeks[1];
    expect(bare).toMatchObject({ km: null, mornings: null, loads: [], sittingMinutes: null });
  });
});

describe('series', () => {
  const { series } = review;

  it('have each session day, planned or written', () => {
    expect(series.sessions).toEqual([
      { on: onDay(0), planned: true, done: true, inFull: true, written: true },
      { on: onDay(2), planned: true, done: true, inFull: true, written: true },
      { on: onDay(4), planned: true, done: true, inFull: false, written: true },
      { on: onDay(7), planned: true, done: true, inFull: false, written: true },
      { on: onDay(9), planned: true, done: false, inFull: false, written: false },
    ]);
  });

  it('have every morning, without a score where none was written', () => {
    expect(series.mornings.map(({ score }) => score)).toEqual([
      2,
      4,
      1,
      null,
      null,
      null,
      null,
      null,
      3,
      null,
    ]);
    expect(series.mornings.map(({ on }) => on)).toEqual(Array.from({ length: 10 }, (_, day) => onDay(day)));
  });

  it('have the weight of what was done, beside the planned one', () => {
    expect(series.loads).toEqual([
      {
        card: CURL,
        plannedKg: 10,
        done: [
          { on: onDay(0), loadKg: 10 },
          { on: onDay(2), loadKg: 10 },
          { on: onDay(4), loadKg: 8 },
          { on: onDay(7), loadKg: 12 },
        ],
      },
      {
        card: HINGE,
        plannedKg: 10,
        done: [
          { on: onDay(0), loadKg: 10 },
          { on: onDay(2), loadKg: 10 },
        ],
      },
    ]);
  });

  it('have runs as they were planned and done, each in what it was told in', () => {
    expect(series.runs).toEqual({
      planned: [{ on: onDay(5), km: 6, minutes: null }],
      done: [
        { on: onDay(1), km: 5.25, minutes: null },
        { on: onDay(5), km: 4.1, minutes: 30 },
        { on: onDay(5), km: 1, minutes: null },
        { on: onDay(9), km: null, minutes: 20 },
      ],
    });
  });

  it('have sitting that was written, beside what the consult says', () => {
    expect(series.sitting).toMatchObject({
      toleranceMinutes: consultFor(10).sitting.toleranceMinutes,
      goalMinutes: consultFor(10).sitting.goalMinutes,
      done: [
        { on: onDay(2), minutes: 40 },
        { on: onDay(6), minutes: 55 },
      ],
    });
  });
});
