/** How far a run may grow, and how a jump in distance is called (house rules 7). */
import { roundDown } from '../units/round.ts';
import { type Reason, reason, type Setting } from '../units/reason.ts';

export interface GrowthRules {
  readonly longestGrowth: Setting;
  readonly fastGrowth: Setting;
}

export interface LongestRun {
  /** Kilometres, rounded down to 0.1; null where the walk-run ladder has to come first. */
  readonly atMostKm: number | null;
  readonly because: Reason<
    'longest-of-30-days' | 'no-run-in-30-days' | 'longest-not-recorded' | 'not-running-now'
  >;
}

/** The longest run allowed next. Nothing run in 30 days, or nothing recorded: no distance, the walk-run ladder seeds it. */
export function longestAllowed(longestIn30DaysKm: number | null, rules: GrowthRules): LongestRun {
  const inputs = { longestIn30DaysKm, growth: rules.longestGrowth.value };
  if (longestIn30DaysKm === null) return { atMostKm: null, because: reason('longest-not-recorded', inputs) };
  if (longestIn30DaysKm === 0) return { atMostKm: null, because: reason('no-run-in-30-days', inputs) };
  return {
    atMostKm: grownKm(longestIn30DaysKm, rules),
    because: reason('longest-of-30-days', inputs, rules.longestGrowth.mark),
  };
}

/** Kilometres after one step of growth, rounded down to 0.1. */
export function grownKm(km: number, rules: GrowthRules): number {
  return roundDown(km * rules.longestGrowth.value, 0.1);
}

export interface HardDose {
  /** Minutes of fast running in the run; null when nobody has set them. */
  readonly fastMinutes: number | null;
  readonly climbM: number | null;
}

/** One of the two grows, the other stays; rounded down to 0.1 min and 1 m. What is not set stays not set: a first dose is the clinician's. */
export function growFastOrClimb(last: HardDose, grows: keyof HardDose, rules: GrowthRules): HardDose {
  const amount = last[grows];
  if (amount === null) return last;
  const grain = grows === 'fastMinutes' ? 0.1 : 1;
  return { ...last, [grows]: roundDown(amount * rules.fastGrowth.value, grain) };
}

/**
 * Bands of one run against the longest of the 30 days before; the first is the reference.
 * [read] Frandsen et al. 2025, BJSM 59(17):1203-1210.
 */
const BANDS = [
  // over by at most, %   name
  { overPct: 10, band: 'reference' },
  { overPct: 30, band: 'small' },
  { overPct: 100, band: 'moderate' },
] as const;

export interface RunJump {
  readonly band: 'reference' | 'small' | 'moderate' | 'large';
  /** Per cent over the longest of 30 days, negative when shorter. */
  readonly overPct: number;
}

/** How a run compares with the longest of the 30 days before; null without one. A plain statement, no forecast. @example runJump(13.5, 10) // => { band: 'moderate', overPct: 35 } */
export function runJump(runKm: number, longestIn30DaysKm: number): RunJump | null {
  if (longestIn30DaysKm <= 0) return null;
  // Ten decimals: 11 km after 10 km must be 10 %, not a hair more.
  const overPct = Math.round((runKm / longestIn30DaysKm - 1) * 1e12) / 1e10;
  const band = BANDS.find((row) => overPct <= row.overPct)?.band ?? 'large';
  return { band, overPct };
}
