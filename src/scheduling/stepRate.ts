/** Step rate: only when over-striding was seen and the rate is low (house rules 7). */
import { roundDown, roundTo } from '../units/round.ts';
import { type Reason, reason, type Setting } from '../units/reason.ts';

export interface StepRateRules {
  readonly lowStepsPerMin: Setting;
  readonly stepRateGrowth: Setting;
}

export interface StepRateFacts {
  readonly stepsPerMin: number | null;
  readonly overStriding: 'yes' | 'no' | 'notSeen';
}

/** The one cue there is: the foot lands nearer under the body. */
export interface StepRateTarget {
  readonly fromStepsPerMin: number;
  /** Whole steps, rounded down. */
  readonly toStepsPerMin: number;
  readonly cue: 'foot-lands-nearer';
  /** Hip flexion in loading response before and after, degrees, the mean of 45 runners; null beyond what was measured. */
  readonly hipFlexionDeg: { readonly usual: number | null; readonly raised: number | null };
  readonly because: Reason<'over-striding-and-low-rate'>;
}

export type NoStepRateCode =
  'over-striding-not-seen' | 'no-over-striding' | 'rate-not-recorded' | 'rate-not-low';

/**
 * Peak hip flexion (pelvis to thigh) in loading response by change of step rate.
 * [read] Heiderscheit et al. 2011, MSSE 43:296-302, Table 3, n = 45.
 */
const HIP_FLEXION_BY_STEP_RATE = [
  // change, %       hip flexion, deg
  { changePct: -10, hipFlexionDeg: 30.7 },
  { changePct: -5, hipFlexionDeg: 27.9 },
  { changePct: 0, hipFlexionDeg: 26.7 },
  { changePct: 5, hipFlexionDeg: 25.3 },
  { changePct: 10, hipFlexionDeg: 23.6 },
] as const;

/** The first step up in step rate, or why there is none. */
export function stepRateTarget(
  facts: StepRateFacts,
  rules: StepRateRules,
): StepRateTarget | Reason<NoStepRateCode> {
  const { stepsPerMin, overStriding } = facts;
  const inputs = { stepsPerMin, lowStepsPerMin: rules.lowStepsPerMin.value };
  if (overStriding === 'notSeen') return reason('over-striding-not-seen', inputs);
  if (overStriding === 'no') return reason('no-over-striding', inputs);
  if (stepsPerMin === null) return reason('rate-not-recorded', inputs);
  if (stepsPerMin >= rules.lowStepsPerMin.value)
    return reason('rate-not-low', inputs, rules.lowStepsPerMin.mark);
  return {
    fromStepsPerMin: stepsPerMin,
    toStepsPerMin: roundDown(raisedStepRate(stepsPerMin, rules.stepRateGrowth.value), 1),
    cue: 'foot-lands-nearer',
    hipFlexionDeg: { usual: hipFlexionAt(0), raised: hipFlexionAt((rules.stepRateGrowth.value - 1) * 100) },
    because: reason('over-striding-and-low-rate', inputs, rules.lowStepsPerMin.mark),
  };
}

/** Steps a minute after a change by this factor. @example raisedStepRate(172, 1.05) // => 180.6 */
export function raisedStepRate(stepsPerMin: number, factor: number): number {
  return stepsPerMin * factor;
}

/** Metres a step at this speed: speed is step rate times step length. @example stepLengthM(3, 172) // => 1.0465… */
export function stepLengthM(speedMPerS: number, stepsPerMin: number): number {
  return (speedMPerS * 60) / stepsPerMin;
}

/** Hip flexion in loading response at a change of step rate (per cent), straight between the measured rates, to 0.1°; null outside -10 to 10. @example hipFlexionAt(5) // => 25.3 */
export function hipFlexionAt(changePct: number): number | null {
  const pct = roundTo(changePct, 0.01);
  const after = HIP_FLEXION_BY_STEP_RATE.findIndex((row) => pct <= row.changePct);
  const high = HIP_FLEXION_BY_STEP_RATE[after];
  const low = HIP_FLEXION_BY_STEP_RATE[Math.max(0, after - 1)];
  if (high === undefined || low === undefined || pct < low.changePct) return null;
  const share = high === low ? 0 : (pct - low.changePct) / (high.changePct - low.changePct);
  return roundTo(low.hipFlexionDeg + share * (high.hipFlexionDeg - low.hipFlexionDeg), 0.1);
}
