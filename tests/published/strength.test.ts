/**
 * Strength mathematics against published tables. Each row: source and mark, given, expected. Tolerances are half of
 * the last printed digit. Five formulas of other authors and the printed tables of percent stand here alone: what the
 * two of the clinic say lies among them.
 */
import { describe, expect, it } from 'vitest';
import { effortRatio, oneRepetitionMaximum, type ClinicFormula } from '../../src/dosing/maximum.ts';

const FORMULAS = ['epley', 'brzycki'] as const;

const maximum = (loadKg: number, repetitions: number, formula: ClinicFormula) => {
  const answer = oneRepetitionMaximum(loadKg, repetitions, formula);
  return 'none' in answer ? null : answer.maximumKg;
};

// Maximum of 100 kg by repetitions to failure; tolerance 0.005 kg.
const TO_FAILURE = [5, 8, 10, 12, 15] as const;
// prettier-ignore
const HUNDRED_KG: readonly [formula: string, source: string, ...maximaKg: number[]][] = [
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
  const rows = FORMULAS.flatMap((formula) => {
    const [, source, ...maxima] = HUNDRED_KG.find(([name]) => name === formula) ?? ['', ''];
    return TO_FAILURE.map((repetitions, i) => ({ formula, source, repetitions, expected: maxima[i] ?? NaN }));
  });
  it.each(rows)('$source: 100 kg x $repetitions is $expected kg', ({ formula, repetitions, expected }) => {
    expect(Math.abs((maximum(100, repetitions, formula) ?? NaN) - expected)).toBeLessThanOrEqual(0.005);
  });

  it.each(TO_FAILURE.map((repetitions, i) => ({ repetitions, i })))(
    'lies at $repetitions repetitions within what seven authors print, by either formula (0.005 kg)',
    ({ repetitions, i }) => {
      const printed = HUNDRED_KG.map(([, , ...maxima]) => maxima[i] ?? NaN);
      for (const formula of FORMULAS) {
        expect(maximum(100, repetitions, formula)).toBeGreaterThanOrEqual(Math.min(...printed) - 0.005);
        expect(maximum(100, repetitions, formula)).toBeLessThanOrEqual(Math.max(...printed) + 0.005);
      }
    },
  );
});

// Check values 1-10 and 13: load kg, repetitions to failure, expected kg; tolerance 0.01 kg.
const MAXIMA: readonly [string, ClinicFormula, number, number, number][] = [
  ['1 Epley [secondary]', 'epley', 60, 8, 76.0],
  ['2 Brzycki [secondary]', 'brzycki', 60, 8, 74.48],
  ['8 Epley at 10 [secondary]', 'epley', 100, 10, 133.33],
  ['8 Brzycki at 10 [secondary]', 'brzycki', 100, 10, 133.33],
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
});

describe('percent of the maximum', () => {
  // NSCA training load chart, handout copy [read]; 11, 12 and 15 of NSCA Essentials [memory], whose 12 is another number.
  // The formulas are others' than the chart's: within 3 points of a hundred.
  // prettier-ignore
  it.each([
    // repetitions, percent
    [1, 100], [2, 95], [3, 93], [4, 90], [5, 87], [6, 85], [7, 83], [8, 80], [9, 77], [10, 75], [12, 70],
    [12, 67], [15, 65],
  ])('NSCA charts: %i repetitions at %i %%, give or take 3', (repetitions, percent) => {
    const lower = Math.min(...FORMULAS.map((formula) => 100 * (effortRatio(1, repetitions, formula) ?? NaN)));
    const upper = Math.max(...FORMULAS.map((formula) => 100 * (effortRatio(1, repetitions, formula) ?? NaN)));
    expect(percent).toBeGreaterThanOrEqual(lower - 3);
    expect(percent).toBeLessThanOrEqual(upper + 3);
  });

  it('18 NSCA handout example [read]: 61.2 kg x 12 is 69.94 kg x 8; by Epley 67.63 kg, by Brzycki 71.06 kg', () => {
    const [epley, brzycki] = FORMULAS.map((formula) => 61.2 * (effortRatio(12, 8, formula) ?? NaN));
    expect(epley).toBeLessThanOrEqual(69.94);
    expect(brzycki).toBeGreaterThanOrEqual(69.94);
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

describe('where the formulas end [choice]', () => {
  it.each([
    // tested to failure, wanted to failure, whether there is a number
    [15, 8, true],
    [16, 8, false],
    [8, 15, true],
    [8, 25, true],
    [8, 26, false],
  ])('from %i to %i repetitions: %s', (tested, wanted, isThere) => {
    for (const formula of FORMULAS) expect(effortRatio(tested, wanted, formula) !== null).toBe(isThere);
  });

  it('beyond 15 wanted the lower of the two is taken, whichever the clinic chose', () => {
    const lower = Math.min((1 + 8 / 30) / (1 + 20 / 30), 36 / (37 - 8) / (36 / (37 - 20)));
    for (const formula of FORMULAS) expect(effortRatio(8, 20, formula)).toBeCloseTo(lower, 12);
  });

  it('no repetition at all is a fault of the program', () => {
    expect(() => effortRatio(0, 8, 'epley')).toThrow('repetitions to failure 0, expected 1 or more');
  });
});

describe('repetitions and what is left of them', () => {
  // Coach-made table of repetitions, effort rating (10 less the reserve, Zourdos 2016 [read]) and percent [secondary].
  // Within 3 points for as far as one formula is asked; beyond 15 to failure the gentler one, never above the table.
  // prettier-ignore
  it.each([
    // repetitions, rating, percent
    [1, 10, 100], [1, 6, 86.3], [3, 8.5, 87.8], [5, 8, 81.1], [6, 9, 81.1], [7, 10, 81.1], [8, 7.5, 72.8], [10, 9, 71.7],
    [12, 10, 69.6],
  ])('coach-made table: %i at %f is %f %%', (repetitions, rating, percent) => {
    const found = 100 * (effortRatio(1, repetitions + 10 - rating, 'epley') ?? NaN);
    expect(Math.abs(found - percent)).toBeLessThanOrEqual(3);
  });

  it.each([[12, 6, 61.8]])('%i at %f is no more than %f %%', (repetitions, rating, percent) => {
    expect(100 * (effortRatio(1, repetitions + 10 - rating, 'epley') ?? NaN)).toBeLessThanOrEqual(percent);
  });
});
