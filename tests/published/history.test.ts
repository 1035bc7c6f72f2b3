/** Load over days against published formulas and worked examples, and against scipy and numpy. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  ewma,
  ewmaRatio,
  halfLifeDays,
  monotony,
  rollingRatio,
  sessionLoad,
  smoothing,
  strain,
} from '../../src/scheduling/history.ts';

const WINDOWS = { recentDays: 7, longerDays: 28 };
const days = (count: number, load: number) => Array.from({ length: count }, () => load);
// So many steady days that the seed no longer shows.
const steady = days(400, 100);
const oneDayDouble = [...steady, 200];
const oneWeekDouble = [...steady, ...days(7, 200)];
const foster = [300, 0, 420, 150, 0, 600, 0];

const WILLIAMS = 'Williams 2017, Br J Sports Med 51:209-210';
const REVIEW = 'resistance load review, BMJ Military Health, table 1';

// prettier-ignore
const ROWS: readonly (readonly [source: string, quantity: string, found: number | null, expected: number, within: number])[] = [
  // source                                     quantity                         found                                       expected   tolerance
  [`${WILLIAMS} [read]`,                        'share of the newest day, N 7',  smoothing(7),                               0.25,      1e-6],
  [`${WILLIAMS} [read]`,                        'share of the newest day, N 28', smoothing(28),                              0.068966,  1e-6],
  [`${WILLIAMS} [derived, formula read]`,       'half-life in days, N 7',        halfLifeDays(7),                            2.409,     0.001],
  [`${WILLIAMS} [derived, formula read]`,       'half-life in days, N 28',       halfLifeDays(28),                           9.7,       0.001],
  [`${WILLIAMS} [derived, formula read]`,       'ratio of a steady load',        ewmaRatio(steady, WINDOWS).ratio,           1,         1e-9],
  [`${WILLIAMS} [derived, formula read]`,       'recent, one day doubled',       ewmaRatio(oneDayDouble, WINDOWS).recent,    125,       0.001],
  [`${WILLIAMS} [derived, formula read]`,       'longer, one day doubled',       ewmaRatio(oneDayDouble, WINDOWS).longer,    106.897,   0.001],
  [`${WILLIAMS} [derived, formula read]`,       'ratio, one day doubled',        ewmaRatio(oneDayDouble, WINDOWS).ratio,     1.1694,    0.001],
  [`${WILLIAMS} [derived, formula read]`,       'recent, a week doubled',        ewmaRatio(oneWeekDouble, WINDOWS).recent,   186.652,   0.001],
  [`${WILLIAMS} [derived, formula read]`,       'longer, a week doubled',        ewmaRatio(oneWeekDouble, WINDOWS).longer,   139.36,    0.001],
  [`${WILLIAMS} [derived, formula read]`,       'ratio, a week doubled',         ewmaRatio(oneWeekDouble, WINDOWS).ratio,    1.3394,    0.001],
  ['rolling means, trade page [secondary]',     'coupled, same week',            rollingRatio(oneWeekDouble, WINDOWS, 'coupled').ratio,   1.6, 0.001],
  ['rolling means, trade page [secondary]',     'uncoupled, same week',          rollingRatio(oneWeekDouble, WINDOWS, 'uncoupled').ratio, 2,   0.001],
  ['Foster session RPE, trade page [secondary]', 'effort 7 for 75 min, AU',      sessionLoad(7, 75),                         525,       0],
  [`${REVIEW} [derived, formula read]`,         'monotony, SD over n - 1',       monotony(foster, 'sample'),                 0.882,     0.001],
  [`${REVIEW} [derived, formula read]`,         'monotony, SD over n',           monotony(foster, 'population'),             0.953,     0.001],
  ['Foster 1998, Med Sci Sports Exerc 30:1164 [memory]', 'strain, SD over n - 1', strain(foster, 'sample'),                  1296.4,    0.5],
  ['Foster 1998, Med Sci Sports Exerc 30:1164 [memory]', 'strain, SD over n',    strain(foster, 'population'),               1400.3,    0.5],
];

describe('load over days', () => {
  it.each(ROWS)('%s: %s', (_source, _quantity, found, expected, within) => {
    expect(Math.abs((found ?? Number.NaN) - expected)).toBeLessThanOrEqual(within);
  });

  it(`${REVIEW} [read]: mean 790 over SD 897 is 0.88`, () => {
    // Two days this far from the mean have exactly this SD (over n), so the printed example can be fed in as loads.
    expect(monotony([790 - 897, 790 + 897], 'population')).toBeCloseTo(0.88, 2);
  });

  it('guards [secondary]: hidden under 28 days, blank over nothing, no monotony when all days are alike', () => {
    expect(ewmaRatio(days(27, 100), WINDOWS)).toEqual({
      ratio: null,
      recent: null,
      longer: null,
      because: 'too-few-days',
    });
    expect(ewmaRatio(days(28, 100), WINDOWS).because).toBe('enough-days');
    expect(ewmaRatio(days(28, 0), WINDOWS)).toMatchObject({ ratio: null, because: 'nothing-before' });
    expect(rollingRatio([...days(21, 0), ...days(7, 50)], WINDOWS, 'uncoupled')).toMatchObject({
      ratio: null,
      longer: 0,
    });
    expect(rollingRatio(days(27, 100), WINDOWS, 'coupled').because).toBe('too-few-days');
    expect(monotony(days(7, 200), 'sample')).toBeNull();
    expect(monotony(days(7, 0.1), 'population')).toBeNull();
    expect(monotony([100], 'sample')).toBeNull();
    expect(strain(days(7, 200), 'population')).toBeNull();
  });
});

interface ScipyLog {
  readonly producer: string;
  readonly dailyLoads: readonly number[];
  readonly ewma: readonly { readonly days: number; readonly averages: readonly number[] }[];
  readonly monotony: readonly {
    readonly week: number;
    readonly sample: number;
    readonly population: number;
    readonly strainSample: number;
    readonly strainPopulation: number;
  }[];
}

const log = JSON.parse(readFileSync('tests/published/load-history-scipy.json', 'utf8')) as ScipyLog;

describe(`an invented log of six weeks against ${log.producer}`, () => {
  it.each(log.ewma)('moving average over $days days, every day', ({ days: window, averages }) => {
    const ours = ewma(log.dailyLoads, window);
    expect(ours).toHaveLength(averages.length);
    for (const [day, average] of averages.entries())
      expect(Math.abs(ours[day]! - average)).toBeLessThanOrEqual(1e-8);
  });

  it.each(log.monotony)('monotony and strain of week $week', (row) => {
    const week = log.dailyLoads.slice(7 * (row.week - 1), 7 * row.week);
    expect(monotony(week, 'sample')).toBeCloseTo(row.sample, 8);
    expect(monotony(week, 'population')).toBeCloseTo(row.population, 8);
    expect(strain(week, 'sample')).toBeCloseTo(row.strainSample, 5);
    expect(strain(week, 'population')).toBeCloseTo(row.strainPopulation, 5);
  });
});
