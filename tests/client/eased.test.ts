/** Which exercises the log sends to the easier numbers (house rules 5: morning score, pain during). */
import { describe, expect, it } from 'vitest';
import { easedCards, easedExercise, isMorningEased } from '../../src/client/inUse/eased.ts';
import type { LogRow } from '../../src/content/log/columns.ts';
import { sheetInUse } from '../../src/programme/inUse.ts';
import { isoDate } from '../../src/units/date.ts';
import { programmes } from '../outputs/html/programmes.ts';

const [, marten] = programmes[1]!;
const sheet = sheetInUse(marten);
const [first, second] = sheet.exercises.map(({ card }) => card) as [string, string];
const on = isoDate(sheet.days[3]!.on)!;
const before = sheet.days[0]!.on;

const EMPTY: LogRow = {
  date: on, occasion: 1, kind: 'session', card: '', side: null, edit: 1, done: null, loadKg: null, sets: null,
  repetitions: null, seconds: null, painDuring: null, morning: null, minutes: null, km: null, note: '',
} as unknown as LogRow; // prettier-ignore
const morning = (score: number, date = on): LogRow =>
  ({ ...EMPTY, kind: 'morning', morning: score, date }) as LogRow;
const pain = (card: string, painDuring: number, date = before): LogRow =>
  ({ ...EMPTY, card, painDuring, date, side: 'both' }) as LogRow;
const all = sheet.exercises.map(({ card }) => card);

describe('the easier numbers', () => {
  it.each<[string, readonly LogRow[], readonly string[]]>([
    ['nothing written down', [], []],
    ['a usual morning', [morning(1)], []],
    ['a bad morning: all of them', [morning(7)], all],
    ['a bad morning of another day', [morning(7, before)], []],
    ['pain above what is allowed, last time: this one', [pain(first, 8)], [first]],
    ['pain that is all right', [pain(first, 1)], []],
    ['pain of today counts from the next time on', [pain(first, 8, on)], []],
    ['two of them', [pain(first, 8), pain(second, 9)], [first, second]],
    ['worse before, all right since', [pain(first, 8), pain(first, 1, sheet.days[2]!.on)], []],
    [
      'of two legs the one that hurts more',
      [
        { ...pain(first, 1), side: 'left' },
        { ...pain(first, 8), side: 'right' },
      ],
      [first],
    ],
  ])('%s', (_, rows, cards) => {
    expect(easedCards(on, rows, sheet)).toEqual(cards);
  });

  it('are all of a morning alone', () => {
    expect([isMorningEased(on, [morning(7)], sheet), isMorningEased(on, [pain(first, 8)], sheet)]).toEqual([
      true,
      false,
    ]);
  });

  it('are those of the leaflet, never more of anything', () => {
    for (const exercise of sheet.exercises) {
      const eased = easedExercise(exercise);
      expect(eased.sets).toBeLessThanOrEqual(exercise.sets);
      expect(eased.loadKg ?? 0).toBeLessThanOrEqual(exercise.loadKg ?? 0);
      const cells = marten.eased.find(({ card }) => card === exercise.card)?.cells ?? {};
      if (cells.sets !== undefined) expect(eased.sets).toBe(cells.sets);
      if (cells.loadKg !== undefined) expect(eased.loadKg ?? 0).toBe(cells.loadKg);
    }
    expect(sheet.exercises.some((one) => easedExercise(one).sets < one.sets)).toBe(true);
    expect(sheet.exercises.some((one) => (easedExercise(one).loadKg ?? 0) < (one.loadKg ?? 0))).toBe(true);
  });
});
