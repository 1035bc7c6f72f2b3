/**
 * House rules 4: at most 1.3 times a step in peak squeeze, hip moment and squeeze over time. Below what the model can
 * tell apart (0.1 body weights, 5 N·m [choice]) growth is reckoned from there.
 */
import { describe, expect, it } from 'vitest';
import {
  burdenOf,
  exerciseGrowth,
  sessionGrowth,
  type Burden,
  type Measured,
} from '../../src/dosing/growth.ts';

const DOSE = {
  kind: 'slow' as const,
  sets: 3,
  repetitions: 10,
  holdSeconds: null,
  tempo: { goSeconds: 3, holdSeconds: 0, backSeconds: 3 },
  restSeconds: 60,
  timesPerDay: 1,
  reserve: 3,
};
const AT = { exercise: 'bow', card: 'bow', rangeDeg: 45, loadKg: 0, daysPerWeek: 3, dose: DOSE };
const LIMITS = { stepGrowth: 1.3, weekGrowth: 1.3, floor: { compressionBw: 0.1, tensionBw: 0.1 } };

const burden = (measured: Partial<Measured>) =>
  burdenOf(AT, {
    compressionBw: 0.5,
    tensionBw: 2,
    hipMomentNm: 50,
    compressionTimeBwS: 1,
    tensionTimeBwS: 1,
    refusedBy: null,
    ...measured,
  });
const limit = (before: Partial<Measured>, after: Partial<Measured>) =>
  exerciseGrowth(burden(before), burden(after), LIMITS);

describe('what one step may add', () => {
  it.each<[string, Partial<Measured>, Partial<Measured>, string | null]>([
    ['hip moment 50 to 65 N·m', { hipMomentNm: 50 }, { hipMomentNm: 65 }, null],
    ['50 to 65.1', { hipMomentNm: 50 }, { hipMomentNm: 65.1 }, 'hipMomentGrowth'],
    ['8 to 10.4, above the floor of 5', { hipMomentNm: 8 }, { hipMomentNm: 10.4 }, null],
    ['8 to 10.5', { hipMomentNm: 8 }, { hipMomentNm: 10.5 }, 'hipMomentGrowth'],
    ['1 to 6.5, reckoned from 5', { hipMomentNm: 1 }, { hipMomentNm: 6.5 }, null],
    ['1 to 6.6', { hipMomentNm: 1 }, { hipMomentNm: 6.6 }, 'hipMomentGrowth'],
    ['squeeze 0.5 to 0.65 BW', { compressionBw: 0.5 }, { compressionBw: 0.65 }, null],
    ['0.5 to 0.66', { compressionBw: 0.5 }, { compressionBw: 0.66 }, 'compressionGrowth'],
    ['0.02 to 0.13, reckoned from 0.1', { compressionBw: 0.02 }, { compressionBw: 0.13 }, null],
    ['0.02 to 0.14', { compressionBw: 0.02 }, { compressionBw: 0.14 }, 'compressionGrowth'],
    ['squeeze over time 1 to 1.3', { compressionTimeBwS: 1 }, { compressionTimeBwS: 1.3 }, null],
    ['1 to 1.31', { compressionTimeBwS: 1 }, { compressionTimeBwS: 1.31 }, 'compressionTimeGrowth'],
  ])('%s', (_, before, after, expected) => {
    expect(limit(before, after)).toBe(expected);
  });
});

describe('what is small', () => {
  const floor = { compressionBw: 0.35, tensionBw: 0.75 };
  const small = { compressionBw: 0.23, tensionBw: 0.37, hipMomentNm: 33 };
  it.each<[string, Partial<Measured>, string | null]>([
    ['squeeze 0.23 to 0.45 BW, reckoned from 0.35', { ...small, compressionBw: 0.45 }, null],
    ['0.23 to 0.46', { ...small, compressionBw: 0.46 }, 'compressionGrowth'],
    ['hip moment 33 to 60 N·m at 0.75 BW of pull', { ...small, hipMomentNm: 60, tensionBw: 0.75 }, null],
    ['33 to 60 at 0.76 BW', { ...small, hipMomentNm: 60, tensionBw: 0.76 }, 'hipMomentGrowth'],
    ['squeeze over time 0.5 to 2.6 a repetition of 6 s', { ...small, compressionTimeBwS: 2.6 }, null],
    ['0.5 to 2.8', { ...small, compressionTimeBwS: 2.8 }, 'compressionTimeGrowth'],
    ['pull over time 1.2 to 5.8', { ...small, tensionTimeBwS: 5.8 }, null],
    ['1.2 to 5.9', { ...small, tensionTimeBwS: 5.9 }, 'tensionTimeGrowth'],
  ])('%s', (_, after, expected) => {
    const before = burden({ ...small, compressionTimeBwS: 0.5, tensionTimeBwS: 1.2 });
    const times = { compressionTimeBwS: 0.5, tensionTimeBwS: 1.2 };
    expect(exerciseGrowth(before, burden({ ...times, ...after }), { ...LIMITS, floor })).toBe(expected);
  });
});

/** Burdens given outright: 100 s of work and 3 times a week, all of it above the floors. */
const plain = (change: Partial<Burden>): Burden => ({
  ...burden({}),
  compressionTimeBwS: 50,
  tensionTimeBwS: 100,
  workSeconds: 100,
  perWeek: 3,
  ...change,
});

describe('work, and the week', () => {
  it.each<[string, Partial<Burden>, Partial<Burden>, string | null]>([
    // Only work: no squeeze, no pull.
    ['work of 100 to 130 s', {}, { workSeconds: 130 }, null],
    ['100 to 131 s', {}, { workSeconds: 131 }, 'workGrowth'],
    ['squeeze over time 50 to 65', {}, { compressionTimeBwS: 65 }, null],
    ['50 to 65.1', {}, { compressionTimeBwS: 65.1 }, 'compressionTimeGrowth'],
    ['pull over time 100 to 130', {}, { tensionTimeBwS: 130 }, null],
    ['100 to 131', {}, { tensionTimeBwS: 131 }, 'tensionTimeGrowth'],
    ['3 to 4 times a week', {}, { perWeek: 4 }, 'weekGrowth'],
    ['10 to 13 times a week', { perWeek: 10 }, { perWeek: 13 }, null],
  ])('%s', (_, before, after, expected) => {
    expect(exerciseGrowth(plain(before), plain(after), LIMITS)).toBe(expected);
  });

  it('of the week each of squeeze, pull and work counts alone', () => {
    const nothing = { compressionTimeBwS: 0, tensionTimeBwS: 0, workSeconds: 0, measured: null, loadKg: 0 };
    for (const [from, to] of [
      [{ compressionTimeBwS: 50 }, { perWeek: 4, compressionTimeBwS: 50 }],
      [{ tensionTimeBwS: 50 }, { perWeek: 4, tensionTimeBwS: 50 }],
      [{ workSeconds: 50 }, { perWeek: 4, workSeconds: 50 }],
    ])
      expect(exerciseGrowth(plain({ ...nothing, ...from }), plain({ ...nothing, ...to }), LIMITS)).toBe(
        'weekGrowth',
      );
  });
});

describe('a whole session', () => {
  const two = (first: Partial<Burden>, second: Partial<Burden> = {}) => [plain(first), plain(second)];
  it.each<[string, readonly Burden[], readonly Burden[], string | null]>([
    [
      'one may grow more where the other does not: 100 to 130',
      two({}),
      two({ compressionTimeBwS: 80 }),
      null,
    ],
    ['100 to 131', two({}), two({ compressionTimeBwS: 81 }), 'compressionTimeGrowth'],
    ['pull 200 to 260', two({}), two({ tensionTimeBwS: 160 }), null],
    ['200 to 261', two({}), two({ tensionTimeBwS: 161 }), 'tensionTimeGrowth'],
    ['another time a week for both', two({}), two({ perWeek: 4 }, { perWeek: 4 }), 'weekGrowth'],
    ['for one of them', two({}), two({ perWeek: 4 }), null],
    ['nothing', two({}), two({}), null],
    // 0.1 BW over 2 x 100 s is 20, and 1.3 of it 26.
    [
      'little squeeze, reckoned from the floor',
      two({ compressionTimeBwS: 1 }, { compressionTimeBwS: 1 }),
      two({ compressionTimeBwS: 13 }, { compressionTimeBwS: 13 }),
      null,
    ],
    [
      'and a little more',
      two({ compressionTimeBwS: 1 }, { compressionTimeBwS: 1 }),
      two({ compressionTimeBwS: 13 }, { compressionTimeBwS: 13.1 }),
      'compressionTimeGrowth',
    ],
  ])('%s', (_, before, after, expected) => {
    expect(sessionGrowth(before, after, LIMITS)).toBe(expected);
  });
});
