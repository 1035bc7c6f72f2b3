/**
 * Change of load over days and weeks. It serves one plain sentence about change and nothing else: no ratio here
 * foretells anything (Impellizzeri et al. 2020, Sports Med, doi 10.1007/s40279-020-01378-6 [read]).
 */

/** Session load, arbitrary units: effort 0-10 times minutes. Foster's session RPE [secondary]. @example sessionLoad(7, 75) // => 525 */
export function sessionLoad(effort: number, minutes: number): number {
  return effort * minutes;
}

/** The share of the newest day, 2 / (N + 1). Williams et al. 2017, BJSM 51:209-210 [read]. @example smoothing(7) // => 0.25 */
export function smoothing(days: number): number {
  return 2 / (days + 1);
}

/** Days until a day's share has fallen to half. @example halfLifeDays(7) // => 2.409… */
export function halfLifeDays(days: number): number {
  return Math.log(0.5) / Math.log(1 - smoothing(days));
}

/**
 * Exponentially weighted moving average of daily loads (oldest first, 0 on rest days), one value a day, seeded with
 * the first day. Empty for no days. Williams et al. 2017 [read]; the seed [secondary].
 */
export function ewma(dailyLoads: readonly number[], days: number): number[] {
  const λ = smoothing(days);
  const averages: number[] = [];
  for (const load of dailyLoads) averages.push(λ * load + (1 - λ) * (averages.at(-1) ?? load));
  return averages;
}

/** A recent average over a longer one; null with the reason where it says nothing. */
export interface LoadRatio {
  readonly ratio: number | null;
  readonly recent: number | null;
  readonly longer: number | null;
  readonly because: 'enough-days' | 'too-few-days' | 'nothing-before';
}

/** The two windows compared, days: usually 7 and 28. */
export interface Windows {
  readonly recentDays: number;
  readonly longerDays: number;
}

/** EWMA of the recent over that of the longer window, hidden until the longer window is full and blank over 0. */
export function ewmaRatio(dailyLoads: readonly number[], { recentDays, longerDays }: Windows): LoadRatio {
  if (dailyLoads.length < longerDays) return HIDDEN;
  return ratioOf(ewma(dailyLoads, recentDays).at(-1) ?? 0, ewma(dailyLoads, longerDays).at(-1) ?? 0);
}

/**
 * Plain means instead: `coupled` sets the recent days against a longer window that holds them too, `uncoupled` against
 * the days before them. [secondary]
 */
export function rollingRatio(
  dailyLoads: readonly number[],
  { recentDays, longerDays }: Windows,
  kind: 'coupled' | 'uncoupled',
): LoadRatio {
  if (dailyLoads.length < longerDays) return HIDDEN;
  const recent = dailyLoads.slice(-recentDays);
  const longer = dailyLoads.slice(-longerDays, kind === 'coupled' ? undefined : -recentDays);
  return ratioOf(mean(recent), mean(longer));
}

/** Which standard deviation: `sample` divides by n - 1, `population` by n. The literature does not say; name it. */
export type Deviation = 'sample' | 'population';

/** Mean daily load over its standard deviation; null when all days are alike, or for fewer than two days. Foster 1998 [read in a review's table]. */
export function monotony(dailyLoads: readonly number[], deviation: Deviation): number | null {
  const spread = standardDeviation(dailyLoads, deviation);
  return spread === null || spread === 0 ? null : mean(dailyLoads) / spread;
}

/** Load of all days times monotony; null where monotony is. Foster 1998, MSSE 30:1164-1168 [memory]. */
export function strain(dailyLoads: readonly number[], deviation: Deviation): number | null {
  const factor = monotony(dailyLoads, deviation);
  return factor === null ? null : factor * dailyLoads.reduce((sum, load) => sum + load, 0);
}

/** This week beside the mean of the weeks before it, for one sentence. */
export interface WeekChange {
  readonly direction: 'more' | 'less' | 'same';
  readonly thisWeek: number;
  /** Mean of the whole weeks before. */
  readonly before: number;
  /** Per cent of `before`, signed; null when nothing was done before. */
  readonly changePct: number | null;
}

/** How the last seven days differ from the whole weeks before them; null with fewer than two weeks. */
export function weekChange(dailyLoads: readonly number[]): WeekChange | null {
  const weeksBefore = Math.floor(dailyLoads.length / 7) - 1;
  if (weeksBefore < 1) return null;
  const thisWeek = total(dailyLoads.slice(-7));
  const before = total(dailyLoads.slice(-7 * (weeksBefore + 1), -7)) / weeksBefore;
  return {
    direction: thisWeek > before ? 'more' : thisWeek < before ? 'less' : 'same',
    thisWeek,
    before,
    changePct: before === 0 ? null : (thisWeek / before - 1) * 100,
  };
}

const HIDDEN: LoadRatio = { ratio: null, recent: null, longer: null, because: 'too-few-days' };

function ratioOf(recent: number, longer: number): LoadRatio {
  if (longer === 0) return { ratio: null, recent, longer, because: 'nothing-before' };
  return { ratio: recent / longer, recent, longer, because: 'enough-days' };
}

// Equal days leave a spread of binary dust; two hundred and two hundred differ by nothing.
function standardDeviation(values: readonly number[], deviation: Deviation): number | null {
  if (values.length < 2) return null;
  if (values.every((value) => value === values[0])) return 0;
  const centre = mean(values);
  const squares = values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
  return Math.sqrt(squares / (deviation === 'sample' ? values.length - 1 : values.length));
}

function mean(values: readonly number[]): number {
  return total(values) / values.length;
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
