/** The tendon as a belt over the sit bone: how far it bends over bone, and the squeeze that comes of it. */
import { toRadians } from '../units/angle.ts';
import { polynomial } from './polynomial.ts';

/** Radius of the bone the tendon bends over, metres, within 0.01-0.03 [choice]; the moment arm uses the same. */
export const BONE_RADIUS_M = 0.02;

/** Hip flexion at which the tendon meets bone, degrees: 0 takes every bend beyond standing as contact, the cautious side [choice]. */
export const ONSET_DEG = 0;

// Direction of the hamstring line in the pelvis, degrees from straight down, over hip flexion / 90; fit to gait2392, 1.3 deg.
const LINE_DEG = [1.1707, 96.2732, -8.3537];

/** Hip flexion in which the fits to gait2392 hold, degrees; beyond, the end value. */
export const HIP_FIT_DEG = [-15, 120] as const;

/** Direction of the hamstring line in the pelvis, degrees from straight down, forward positive. */
export function lineDeg(hipDeg: number): number {
  return polynomial(LINE_DEG, hipDeg, HIP_FIT_DEG);
}

/** Degrees by which the tendon bends over bone at this hip flexion; 0 up to the onset, never falling with the bend. */
export function wrapDeg(hipDeg: number, onsetDeg: number = ONSET_DEG): number {
  return Math.max(0, lineDeg(hipDeg) - lineDeg(onsetDeg));
}

/**
 * The resultant squeeze in newtons of a frictionless belt under `tensionN` bent by `bendDeg`: 2 T sin(bend / 2).
 * @example beltForceN(1, 180) // => 2
 */
export function beltForceN(tensionN: number, bendDeg: number): number {
  return 2 * tensionN * Math.sin(toRadians(bendDeg) / 2);
}
