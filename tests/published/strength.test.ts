/**
 * Strength mathematics against published tables. Each row: source and mark, given, expected. Tolerances are half of
 * the last printed digit. No npm implementation was installed to compare with; the seven formulas check one another.
 */
import { describe, expect, it } from 'vitest';
import {
  FORMULAS,
  effortRatio,
  oneRepetitionMaximum,
  spreadOfMaximum,
  type Formula,
} from '../../src/dosing/maximum.ts';
import {
  loadByPercent,
  percentByRating,
  percentOfMaximum,
  reserveFromRating,
} from '../../src/dosing/percent.ts';

const maximum = (loadKg: number, repetitions: number, formula: Formula) => {
  const answer = oneRepetitionMaximum(loadKg, repetitions, formula);
  return 'none' in answer ? null : answer.maximumKg;
};

// Maximum of 100 kg by repetitions to failure; tolerance 0.005 kg.
// prettier-ignore
const HUNDRED_KG: readonly [Formula, string, ...number[]][] = [
  // formula, source,                              5       8      10      12      15
  ['epley',    'Epley 1985 [secondary]',      116.67, 126.67, 133.33, 140.00, 150.00],
  ['brzycki',  'Brzycki 1993 [secondary]',    112.50, 124.14, 133.33, 144.00, 163.64],
  ['lombardi', 'Lombardi 1989 [secondary]',   117.46, 123.11, 125.89, 128.21, 131.10],
  ['mayhew',   'Mayhew 1992 [secondary]',     119.01, 126.29, 130.93, 135.40, 141.72],
  ['oconner',  "O'Conner 1989 [secondary]",   112.50, 120.00, 125.00, 130.00, 137.50],
  ['wathan',   'Wathan 1994 [secondary]',     116.58, 127.67, 134.75, 141.50, 150.91],
  ['lander',   'Lander 1985 [secondary]',     113.71, 125.11, 134.07, 144.41, 163.31],
];

describe('one-repetition maximum of 100 kg', () => {
  const rows = HUNDRED_KG.flatMap(([formula, source, ...maxima]) =>
    [5, 8, 10, 12, 15].map((repetitions, i) => ({
      formula,
      source,
      repetitions,
      expected: maxima[i] ?? NaN,
    })),
  );
  it.each(rows)('$source: 100 kg x $repetitions is $expected kg', ({ formula, repetitions, expected }) => {
    expect(Math.abs((maximum(100, repetitions, formula) ?? NaN) - expected)).toBeLessThanOrEqual(0.005);
  });
});

// Check values 1-10 and 13: load kg, repetitions to failure, expected kg; tolerance 0.01 kg.
const MAXIMA: readonly [string, Formula, number, number, number][] = [
  ['1 Epley [secondary]', 'epley', 60, 8, 76.0],
  ['2 Brzycki [secondary]', 'brzycki', 60, 8, 74.48],
  ['3 Lombardi [secondary]', 'lombardi', 60, 8, 73.87],
  ['4 Mayhew [secondary]', 'mayhew', 60, 8, 75.77],
  ["5 O'Conner [secondary]", 'oconner', 60, 8, 72.0],
  ['6 Wathan [secondary]', 'wathan', 60, 8, 76.6],
  ['7 Lander [secondary]', 'lander', 60, 8, 75.07],
  ['8 Epley at 10 [secondary]', 'epley', 100, 10, 133.33],
  ['8 Brzycki at 10 [secondary]', 'brzycki', 100, 10, 133.33],
  ['9 Mayhew [secondary]', 'mayhew', 20, 12, 27.08],
  ['10 Brzycki [secondary]', 'brzycki', 100, 5, 112.5],
  ['13 Epley, 8 with 2 in reserve [secondary]', 'epley', 20, 8 + 2, 26.67],
];

describe('check values of the maximum', () => {
  it.each(MAXIMA)('%s: by %s, %f kg x %i is %f kg', (_, formula, loadKg, repetitions, expected) => {
    expect(Math.abs((maximum(loadKg, repetitions, formula) ?? NaN) - expected)).toBeLessThanOrEqual(0.01);
  });

  it.each(FORMULAS)('11 guard [choice]: one repetition of 50 kg by %s is 50 kg', (formula) => {
    expect(maximum(50, 1, formula)).toBe(50);
  });

  it.each(FORMULAS.flatMap((formula) => [16, 37, 60].map((repetitions) => ({ formula, repetitions }))))(
    '12 guard [choice]: $repetitions repetitions by $formula give no number',
    ({ formula, repetitions }) => {
      expect(oneRepetitionMaximum(100, repetitions, formula)).toEqual({
        none: true,
        why: 'tooManyRepetitions',
      });
    },
  );

  it('Epley and Brzycki agree at 10 repetitions and nowhere else from 2 to 15 [secondary]', () => {
    const agree = Array.from({ length: 14 }, (_, i) => i + 2).filter(
      (repetitions) =>
        Math.abs((maximum(100, repetitions, 'epley') ?? 0) - (maximum(100, repetitions, 'brzycki') ?? 0)) <
        1e-9,
    );
    expect(agree).toEqual([10]);
  });

  it('the seven formulas part by 131 to 164 kg for 100 kg x 15 [secondary]', () => {
    const spread = spreadOfMaximum(100, 15);
    expect(spread).toEqual({ fromKg: expect.closeTo(131.1, 2), toKg: expect.closeTo(163.64, 2) });
  });
});

describe('percent of the maximum', () => {
  // Repetitions and percent; exact.
  it.each([
    ['14 NSCA handout [read]', 8, 80],
    ['15 NSCA handout [read]', 5, 87],
    ['15 NSCA handout [read]', 6, 85],
    ['15 NSCA handout [read]', 10, 75],
    ['16 NSCA handout [read]', 12, 70],
  ])('%s: %i repetitions at %i %%', (_, repetitions, expected) => {
    expect(percentOfMaximum(repetitions, 'nscaHandout')).toBe(expected);
  });

  it.each([
    ['16 NSCA Essentials [memory]', 12, 67],
    ['17 NSCA Essentials [memory]', 15, 65],
    ['NSCA Essentials [memory]', 11, 70],
  ])('%s: %i repetitions at %i %%', (_, repetitions, expected) => {
    expect(percentOfMaximum(repetitions, 'nscaTextbook')).toBe(expected);
  });

  it('rows that are not printed give no number', () => {
    expect([11, 13, 15].map((repetitions) => percentOfMaximum(repetitions, 'nscaHandout'))).toEqual([
      null,
      null,
      null,
    ]);
    expect(loadByPercent(20, 12, 13, 'nscaHandout')).toBeNull();
  });

  // Load, tested, wanted, expected in the same unit; tolerance 0.01.
  it.each([
    ['18 NSCA handout example in kg [read]', 61.2, 69.94],
    ['19 the same in pounds [secondary]', 135, 154.29],
  ])('%s: %f x 12 is %f x 8', (_, load, expected) => {
    expect(Math.abs((loadByPercent(load, 12, 8, 'nscaHandout') ?? NaN) - expected)).toBeLessThanOrEqual(0.01);
  });

  // Epley and Brzycki read backwards, percent to one decimal; tolerance 0.05.
  it.each([
    [2, 93.8, 97.2],
    [3, 90.9, 94.4],
    [4, 88.2, 91.7],
    [5, 85.7, 88.9],
    [6, 83.3, 86.1],
    [7, 81.1, 83.3],
    [8, 78.9, 80.6],
    [9, 76.9, 77.8],
    [10, 75.0, 75.0],
    [11, 73.2, 72.2],
    [12, 71.4, 69.4],
    [15, 66.7, 61.1],
  ])('%i repetitions by Epley %f %% and Brzycki %f %% [secondary]', (repetitions, epley, brzycki) => {
    expect(Math.abs(100 * (effortRatio(1, repetitions, 'epley') ?? NaN) - epley)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(100 * (effortRatio(1, repetitions, 'brzycki') ?? NaN) - brzycki)).toBeLessThanOrEqual(
      0.05,
    );
  });
});

describe('effort ratings', () => {
  it.each([
    ['20 Zourdos 2016 [read]', 8, 2],
    ['Zourdos 2016 [read]', 10, 0],
    ['Zourdos 2016 [read]', 9, 1],
    ['half points [secondary]', 7.5, 2.5],
  ])('%s: a rating of %f leaves %f', (_, rating, reserve) => {
    expect(reserveFromRating(rating)).toBe(reserve);
  });

  it('a rating under 6 gives no number [memory: words only there]', () => {
    expect(reserveFromRating(5.5)).toBeNull();
  });

  it.each([
    ['21 coach-made table [secondary]', 5, 8],
    ['22 diagonal [secondary]', 6, 9],
    ['22 diagonal [secondary]', 7, 10],
  ])('%s: %i repetitions at %i are 81.1 %%', (_, repetitions, rating) => {
    expect(percentByRating(repetitions, rating)).toBe(81.1);
  });

  it.each([
    [1, 10, 100],
    [1, 6, 86.3],
    [3, 8.5, 87.8],
    [8, 7.5, 72.8],
    [10, 6, 65.6],
    [12, 10, 69.6],
    [12, 6, 61.8],
  ])('coach-made table [secondary]: %i at %f is %f %%', (repetitions, rating, percent) => {
    expect(percentByRating(repetitions, rating)).toBe(percent);
  });

  it('off the table there is no number', () => {
    expect([percentByRating(30, 8), percentByRating(5, 5)]).toEqual([null, null]);
  });
});
