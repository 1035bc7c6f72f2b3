import { describe, expect, it } from 'vitest';
import { fitToMinutes, GIVES_WAY, type FittedExercise } from '../../src/dosing/minutes.ts';
import { daySeconds, exerciseSeconds, sessionSeconds } from '../../src/dosing/session.ts';

const SLOW = { goSeconds: 3, holdSeconds: 0, backSeconds: 3 };

function exercise(
  name: string,
  more: Partial<FittedExercise> & { sets?: number; timesPerDay?: number } = {},
): FittedExercise {
  const { sets = 3, timesPerDay = 1, ...rest } = more;
  const dose = {
    kind: 'slow',
    sets,
    repetitions: 10,
    holdSeconds: null,
    tempo: SLOW,
    restSeconds: 60,
    timesPerDay,
    reserve: 3,
  } as const;
  return {
    exercise: name,
    dose,
    legs: 'together',
    setUpSeconds: 0,
    sideChangeSeconds: 0,
    needed: true,
    ...rest,
  };
}

describe('session time', () => {
  it('counts set-up, both sides with their change, and rests between sets', () => {
    const one = exercise('a', { legs: 'each', setUpSeconds: 45, sideChangeSeconds: 10 });
    // 45 + 3 x (60 + 10 + 60) + 2 x 60
    expect(exerciseSeconds(one)).toBe(555);
  });

  it('counts the way into and out of a hold', () => {
    const one = exercise('a');
    const hold = {
      ...one,
      dose: { ...one.dose, kind: 'hold', repetitions: null, holdSeconds: 30, sets: 4 } as const,
    };
    // 4 x (3 + 30 + 3) + 3 x 60
    expect(exerciseSeconds(hold)).toBe(324);
  });

  it('counts a day as often as each exercise is done', () => {
    const twice = [exercise('a', { timesPerDay: 2 }), exercise('b')];
    expect([sessionSeconds(twice), daySeconds(twice)]).toEqual([600, 900]);
  });
});

// Each exercise of three sets takes 300 s, of two 180 s.
describe('fitToMinutes', () => {
  const gaveUp = (
    exercises: FittedExercise[],
    minutes: number,
    order?: Parameters<typeof fitToMinutes>[2],
  ) => {
    const answer = fitToMinutes(exercises, minutes, order);
    return 'none' in answer ? answer : answer.gaveUp;
  };

  it('gives up nothing when there is time', () => {
    expect(fitToMinutes([exercise('a'), exercise('b')], 10)).toMatchObject({ gaveUp: [], seconds: 600 });
  });

  it('takes a set from the last exercise first', () => {
    expect(gaveUp([exercise('a'), exercise('b')], 9)).toEqual([
      { what: 'sets', exercise: 'b', from: 3, to: 2 },
    ]);
  });

  it('does it once a day before it takes sets', () => {
    expect(gaveUp([exercise('a', { timesPerDay: 2 }), exercise('b')], 12)).toEqual([
      { what: 'timesPerDay', exercise: 'a', from: 2, to: 1 },
    ]);
  });

  it('leaves out the last exercise that is not needed, and gives the sets back', () => {
    const three = [exercise('a'), exercise('b', { needed: false }), exercise('c')];
    expect(gaveUp(three, 8)).toEqual([
      { what: 'sets', exercise: 'c', from: 3, to: 2 },
      { what: 'exercise', exercise: 'b', from: 1, to: 0 },
    ]);
  });

  it('follows the order of the protocol', () => {
    const two = [exercise('a'), exercise('b', { needed: false })];
    expect(gaveUp(two, 9, ['exercise', 'sets'])).toEqual([
      { what: 'exercise', exercise: 'b', from: 1, to: 0 },
    ]);
  });

  it('leaves out what is needed before one set is all that is left, down to the least there must be', () => {
    const three = [exercise('a'), exercise('b'), exercise('c')];
    const answer = (minutes: number) => {
      const fitted = fitToMinutes(three, minutes, GIVES_WAY, 2);
      return 'none' in fitted ? [] : fitted.exercises.map(({ exercise: name, dose }) => [name, dose.sets]);
    };
    expect(answer(9)).toEqual([
      ['a', 2],
      ['b', 2],
      ['c', 2],
    ]);
    expect(answer(8)).toEqual([
      ['a', 3],
      ['b', 2],
    ]);
    expect(answer(4)).toEqual([
      ['a', 2],
      ['b', 1],
    ]);
  });

  it('gives none, with the least it takes, when what is needed is too long', () => {
    expect(gaveUp([exercise('a'), exercise('b')], 1)).toEqual({
      none: true,
      why: { rule: 'tooFewMinutes', leastSeconds: 120 },
    });
  });
});
