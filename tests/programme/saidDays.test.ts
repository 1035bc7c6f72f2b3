/** Days and exercises of the page's block: what one has in common with the one before is left out. */
import { expect, it } from 'vitest';
import { sheetInUse } from '../../src/programme/inUse.ts';
import { saidDays, saidExercises, wholeDays, wholeExercises } from '../../src/programme/sheetInUse.ts';
import { otter } from '../fixtures/programme.ts';

it('is whole again when it is read', () => {
  const { days } = sheetInUse(otter);
  expect(days.length).toBeGreaterThan(14);
  expect(wholeDays(saidDays(days))).toEqual(days);
});

it('says a free day by its date alone', () => {
  const { on } = sheetInUse(otter).days[0]!;
  expect(saidDays(wholeDays([{ on }]))).toEqual([{ on }]);
});

it('says a day that has been by its place, and a day that differs in anything anew', () => {
  const [first] = sheetInUse(otter).days.filter(({ session }) => session);
  const [on] = sheetInUse(otter)
    .days.map((day) => day.on)
    .slice(-1);
  const days = [first!, { ...first!, on: on! }, { ...first!, on: on!, runKm: 3 }];
  expect(saidDays(days).map((day) => 'like' in day)).toEqual([false, true, false]);
});

it('says of a day only what is otherwise than on the day told before', () => {
  const day = sheetInUse(otter).days.find(({ session }) => session)!;
  const [first, yoga] = [day, { ...day, other: true, text: `yoga; ${day.text}` }];
  const days = [first, yoga, first, { ...yoga, runKm: 3 }];
  expect(saidDays(days).slice(1)).toEqual([
    { on: day.on, other: true, text: yoga.text },
    { on: day.on, like: 0 },
    { on: day.on, runKm: 3 },
  ]);
  expect(wholeDays(saidDays(days))).toEqual(days);
});

it('says of an exercise only what is otherwise than in the one before', () => {
  const { exercises } = sheetInUse(otter);
  const [first] = exercises;
  expect(exercises.length).toBeGreaterThan(1);
  expect(wholeExercises(saidExercises(exercises))).toEqual(exercises);
  expect(saidExercises([first!, { ...first!, card: 'other', loadKg: null }])[1]).toEqual({
    card: 'other',
    ...(first!.loadKg === null ? {} : { loadKg: null }),
  });
});
