/**
 * Printed tables from repetitions to percent of the one-repetition maximum, and effort scales.
 * Any percent is a first guess to be corrected by the reserve: trained people did 6 to 26 repetitions at 70 %
 * (Zourdos 2021, JSCR 35(S1), read).
 */

export type PercentTable = 'nscaHandout' | 'nscaTextbook';

// The two printings part at 12 repetitions; neither has 13 or 14, and the handout has no 11 or 15.
const PERCENT: Readonly<Record<PercentTable, Readonly<Record<number, number>>>> = {
  // NSCA training load chart, handout copy [read]
  nscaHandout: { 1: 100, 2: 95, 3: 93, 4: 90, 5: 87, 6: 85, 7: 83, 8: 80, 9: 77, 10: 75, 12: 70 },
  // NSCA Essentials of Strength Training and Conditioning; 11, 12 and 15 [memory]
  nscaTextbook: {
    ...{ 1: 100, 2: 95, 3: 93, 4: 90, 5: 87, 6: 85, 7: 83, 8: 80, 9: 77, 10: 75 },
    ...{ 11: 70, 12: 67, 15: 65 },
  },
};

// Percent by repetitions (rows) and effort rating (columns). Coach-made, not from a trial [secondary].
const RATINGS = [10, 9.5, 9, 8.5, 8, 7.5, 7, 6.5, 6] as const;
// prettier-ignore
const PERCENT_BY_RATING: Readonly<Record<number, readonly number[]>> = {
  1:  [100,  97.8, 95.5, 93.9, 92.2, 90.7, 89.2, 87.8, 86.3],
  2:  [95.5, 93.9, 92.2, 90.7, 89.2, 87.8, 86.3, 85.0, 83.7],
  3:  [92.2, 90.7, 89.2, 87.8, 86.3, 85.0, 83.7, 82.4, 81.1],
  4:  [89.2, 87.8, 86.3, 85.0, 83.7, 82.4, 81.1, 79.9, 78.6],
  5:  [86.3, 85.0, 83.7, 82.4, 81.1, 79.9, 78.6, 77.4, 76.2],
  6:  [83.7, 82.4, 81.1, 79.9, 78.6, 77.4, 76.2, 75.1, 73.9],
  8:  [78.6, 77.4, 76.2, 75.1, 73.9, 72.8, 71.7, 70.7, 69.6],
  10: [73.9, 72.8, 71.7, 70.7, 69.6, 68.6, 67.6, 66.6, 65.6],
  12: [69.6, 68.6, 67.6, 66.6, 65.6, 64.7, 63.7, 62.8, 61.8],
};

/** Percent of the maximum that can be lifted so many times; null where the table prints no row. @example percentOfMaximum(8, 'nscaHandout') // => 80 */
export function percentOfMaximum(repetitions: number, table: PercentTable): number | null {
  return PERCENT[table][repetitions] ?? null;
}

/**
 * The load (same unit as given) for `wanted` repetitions from one lifted `tested` times, by the ratio of the two
 * percents; null where either row is not printed.
 */
export function loadByPercent(
  load: number,
  tested: number,
  wanted: number,
  table: PercentTable,
): number | null {
  const [from, to] = [percentOfMaximum(tested, table), percentOfMaximum(wanted, table)];
  return from === null || to === null ? null : (load * to) / from;
}

/** Repetitions in reserve of a rating 6 to 10, half points allowed (Zourdos 2016, JSCR 30(1):267, read); null below 6, where the words are too loose. @example reserveFromRating(8) // => 2 */
export function reserveFromRating(rating: number): number | null {
  return rating >= 6 && rating <= 10 ? 10 - rating : null;
}

/**
 * Percent of the maximum for repetitions at a rating of 6 to 10. The table depends on repetitions plus reserve only,
 * so rows that are not printed (7, 9, 11) are read along the diagonal; null outside it.
 * @example percentByRating(7, 10) // => 81.1
 */
export function percentByRating(repetitions: number, rating: number): number | null {
  const reserve = reserveFromRating(rating);
  if (reserve === null) return null;
  for (const [row, percents] of Object.entries(PERCENT_BY_RATING)) {
    const column = RATINGS.findIndex((printed) => Number(row) + 10 - printed === repetitions + reserve);
    if (column >= 0) return percents[column] ?? null;
  }
  return null;
}
