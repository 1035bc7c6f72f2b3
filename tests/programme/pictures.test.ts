/** The clinician's pictures: of what there is alone, each with its sentence, its axes and its numbers. */
import { describe, expect, it } from 'vitest';
import { messagesIn } from '../../src/messages/messages.ts';
import { dayChart } from '../../src/drawing/charts/dayChart.ts';
import type { Picture } from '../../src/programme/programme.ts';
import { picturesOf } from '../../src/programme/record/pictures.ts';
import type { LogRow } from '../../src/content/log/columns.ts';
import type { Protocol } from '../../src/content/library.ts';
import { addDays } from '../../src/units/date.ts';
import { row } from '../content/log/logs.ts';
import { CARDS, mornings, onDay, reviewRows, sessions, START, steady } from '../review/facts.ts';
import { shipped } from './shipped.ts';

const protocol = shipped.protocols.get('proximal-hamstring') as Protocol;
const exercise = (hipFlexionDeg: number) =>
  CARDS.map((card) => ({ card, title: `Title of ${card}`, hipFlexionDeg, loadKg: 10 }));
const COURSE = [
  {
    revision: 1,
    on: START,
    usualMorningPain: 4,
    outcomes: [{ on: START, visaH: 45, activities: [{ what: 'uphill', score: 3 }] }],
    exercises: exercise(30),
  },
  {
    revision: 2,
    on: addDays(START, 21),
    usualMorningPain: 2,
    outcomes: [{ on: addDays(START, 21), visaH: 68, activities: [{ what: 'uphill', score: 5 }] }],
    exercises: exercise(45),
  },
];

const pictures = (rows: readonly LogRow[], course: Parameters<typeof picturesOf>[2] = COURSE) =>
  picturesOf(messagesIn('en'), reviewRows(rows, 21), course, protocol);
const named = (found: readonly Picture[], heading: string) =>
  found.find((one) => one.heading.startsWith(heading)) as Picture;

const FULL = [
  ...sessions(0, 9),
  ...sessions(14, 21, { loadKg: 8, done: 'part' }),
  ...mornings(0, [...steady(5), 3, ...steady(4)]),
  ...mornings(12, steady(9)),
  row(onDay(5), 'run', { done: 'yes', km: 5, minutes: 31, painDuring: 1 }),
  row(onDay(8), 'sitting', { minutes: 30, painDuring: 1 }),
];

describe('pictures', () => {
  const found = pictures(FULL);

  it('are of everything that was written down, and of the revisions', () => {
    expect(found.map(({ heading }) => heading)).toEqual([
      'Sessions',
      'Morning scores',
      'Load: Title of slow-prone-curl',
      'Load: Title of hip-hinge',
      'Running, distance',
      'Running, time',
      'Sitting',
      'Hip bend: Title of slow-prone-curl',
      'Hip bend: Title of hip-hinge',
      'VISA-H',
      'Activity: uphill',
      'Usual morning pain',
    ]);
  });

  it('are none of nothing', () => {
    expect(pictures([], COURSE.slice(0, 1))).toEqual([]);
    expect(picturesOf(messagesIn('en'), null, COURSE.slice(1), protocol)).toEqual([]);
  });

  it.each<[string, string]>([
    ['Sessions', '9 sessions planned; 7 written down as done, 4 of them with the whole dose.'],
    [
      'Morning scores',
      '19 of 21 mornings written down, 2 to 3 of 10. The usual is 2: up to 3 carry on, from 5 ease back.',
    ],
    ['Load: Title of hip-hinge', '10 kg asked for; 8 to 10 kg written down on 7 days.'],
    ['Running, distance', '3 run days planned, 1 written down as done: 5 km.'],
    ['Hip bend: Title of hip-hinge', 'From 30° to 45° asked for over 2 revisions.'],
    [
      'VISA-H',
      'From 45 to 68 in 2 entries: 23 points more. The change reaches the least one that matters, 22',
    ],
    [
      'Activity',
      'From 3 to 5 in 2 entries: 2 points more. The change does not reach the least one that matters, 3',
    ],
    [
      'Usual morning pain',
      'From 4 to 2 in 2 entries: 2 points less. The change reaches the least one that matters, 2',
    ],
  ])('%s say: %s', (heading, sentence) => {
    expect(named(found, heading).sentence).toContain(sentence);
  });

  it('leave a gap where a morning was not written down', () => {
    const [line] = named(found, 'Morning scores').chart.lines;
    expect(line?.stretches.map((points) => points.length)).toEqual([10, 9]);
    expect(named(found, 'Morning scores').chart.limits.map(({ value }) => value)).toEqual([2, 3, 5]);
  });

  it('have their numbers as a table, and a text in place of the picture', () => {
    for (const { alt, sentence, table, chart } of found) {
      expect(alt).toContain(sentence);
      expect(table.rows.length).toBeGreaterThan(0);
      expect(chart.up).not.toBe('');
      for (const one of table.rows) expect(one).toHaveLength(table.columns.length);
    }
  });

  it('speak of no share, score of keeping to it, or risk', () => {
    const text = JSON.stringify(found);
    expect(text).not.toMatch(/%|adheren|complian|\brisk/i);
  });

  it('keep every point and word inside the drawing', () => {
    for (const { chart } of found) {
      const { viewBox, shapes, labels } = dayChart(chart, 110);
      const numbers = shapes.flatMap(({ d }) => [...d.matchAll(/(-?\d+) (-?\d+)/g)]);
      for (const [, x, y] of numbers) {
        expect(Number(x)).toBeGreaterThanOrEqual(0);
        expect(Number(x)).toBeLessThanOrEqual(viewBox.width);
        expect(Number(y)).toBeGreaterThanOrEqual(0);
        expect(Number(y)).toBeLessThanOrEqual(viewBox.height);
      }
      for (const { y } of labels) expect(y).toBeLessThanOrEqual(viewBox.height);
    }
  });
});
