/** How many runs a week someone takes who did not say so. */
import { type Reason, reason, type Setting } from '../units/reason.ts';

export interface RunCountRules {
  readonly runsPerWeek: Setting;
  readonly otherRunShare: Setting;
}

export interface RunCount {
  readonly runs: number;
  /** `not-days-enough`: the runs beside the longest are still more than their share of it. */
  readonly because: Reason<'fewest-runs' | 'not-days-enough'>;
}

/**
 * Runs a week from the kilometres a week and the longest run of 30 days (km, above 0): the fewest, not below the
 * house's count, with which the runs beside the longest are each at most their share of it; not more than `days`
 * (0 to 7), but as many as keep each run within the longest. Too few would make each longer than the legs are used
 * to [choice].
 * @example estimatedRuns(70, 28, 7, rules).runs // => 4, as 28 and three times 14 km
 */
export function estimatedRuns(
  weeklyKm: number,
  longestKm: number,
  days: number,
  { runsPerWeek, otherRunShare }: RunCountRules,
): RunCount {
  const others = Math.ceil((weeklyKm - longestKm) / (otherRunShare.value * longestKm) - 1e-9);
  const wanted = Math.max(runsPerWeek.value, 1 + others);
  const withinLongest = Math.max(1, Math.ceil(weeklyKm / longestKm - 1e-9));
  const runs = Math.min(7, Math.max(withinLongest, Math.min(days, wanted)));
  return {
    runs,
    because: reason(
      1 + others > runs ? 'not-days-enough' : 'fewest-runs',
      { runs, weeklyKm, longestKm, days, share: otherRunShare.value },
      otherRunShare.mark,
    ),
  };
}
